interface PickedHandle {
  readonly name: string;
  getFile(): Promise<File>;
  createWritable(): Promise<{ write(data: Blob): Promise<void>; close(): Promise<void> }>;
}

interface PickerWindow {
  showOpenFilePicker?: () => Promise<readonly PickedHandle[]>;
  showSaveFilePicker?: (options: { suggestedName: string }) => Promise<PickedHandle>;
}

/** A file that was picked on this machine and can be written again. */
export type SharedHandle = PickedHandle;

const pickers = (): PickerWindow => window as unknown as PickerWindow;

/** Whether this browser can open a file and write it again (File System Access, WICG). */
export const canPickFiles = (): boolean =>
  pickers().showOpenFilePicker !== undefined && pickers().showSaveFilePicker !== undefined;

const isLeft = (reason: unknown): boolean => reason instanceof DOMException && reason.name === 'AbortError';

/** What the person picked; undefined where the picker was closed without. */
const picked = async <T>(pick: () => Promise<T>): Promise<T | undefined> => {
  try {
    return await pick();
  } catch (reason) {
    if (isLeft(reason)) return undefined;
    throw reason;
  }
};

export const pickSharedFile = async (): Promise<SharedHandle | undefined> =>
  (await picked(async () => pickers().showOpenFilePicker?.()))?.[0];

export const pickSharedPlace = (suggestedName: string): Promise<SharedHandle | undefined> =>
  picked(async () => pickers().showSaveFilePicker?.({ suggestedName }));

/** Writes a file whole: the browser swaps it in when it is closed. */
export const writeShared = async (handle: SharedHandle, blob: Blob): Promise<void> => {
  const writable = await handle.createWritable();
  await writable.write(blob);
  await writable.close();
};
