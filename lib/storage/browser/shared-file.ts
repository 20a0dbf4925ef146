import type { Database } from './database';

type Permission = 'granted' | 'denied' | 'prompt';

/** The parts of the File System Access draft (WICG) that the type library does not know. */
interface PermittedHandle extends FileSystemFileHandle {
  queryPermission(options: { readonly mode: 'read' | 'readwrite' }): Promise<Permission>;
  requestPermission(options: { readonly mode: 'read' | 'readwrite' }): Promise<Permission>;
}

interface Pickers {
  showOpenFilePicker(options: object): Promise<readonly PermittedHandle[]>;
  showSaveFilePicker(options: object): Promise<PermittedHandle>;
}

/** Why a workspace file was not reached. `unsupported`: the browser knows up- and download alone. */
export type SharedFileFault = 'unsupported' | 'dismissed' | 'not_permitted' | 'gone' | 'failed';

export type SharedFileAnswer<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: SharedFileFault };

/** The workspace file of a clinic in a shared folder. Every function has to be called by a person's click. */
export interface SharedFiles {
  /** Whether this browser opens and saves files in place. */
  readonly supported: boolean;
  /** Name of the remembered file; undefined where there is none. */
  remembered(clinicId: string): Promise<string | undefined>;
  /** Reads the remembered file, or asks for one and remembers it. */
  open(clinicId: string, ask: boolean): Promise<SharedFileAnswer<File>>;
  /** Writes the remembered file as a whole, or asks where to and remembers it. */
  save(clinicId: string, content: Blob, askWithName: string | null): Promise<SharedFileAnswer<string>>;
  forget(clinicId: string): Promise<void>;
}

const key = (clinicId: string): string => `shared-file:${clinicId}`;

const TYPES = [{ description: 'Driftline', accept: { 'application/octet-stream': ['.driftline'] } }];

const faults: Readonly<Record<string, SharedFileFault>> = {
  AbortError: 'dismissed',
  NotAllowedError: 'not_permitted',
  SecurityError: 'not_permitted',
  NotFoundError: 'gone',
};

const faultOf = (error: unknown): SharedFileFault =>
  (error instanceof Error ? faults[error.name] : undefined) ?? 'failed';

const isHandle = (value: unknown): value is PermittedHandle =>
  typeof FileSystemFileHandle !== 'undefined' && value instanceof FileSystemFileHandle;

const pickers = (): Pickers | undefined =>
  'showOpenFilePicker' in globalThis && 'showSaveFilePicker' in globalThis
    ? (globalThis as unknown as Pickers)
    : undefined;

const mayUse = async (handle: PermittedHandle, mode: 'read' | 'readwrite'): Promise<boolean> =>
  (await handle.queryPermission({ mode })) === 'granted' || (await handle.requestPermission({ mode })) === 'granted';

/** Workspace files by File System Access; the handles stay in the database, the permission is asked for again. */
export const sharedFiles = (database: Database): SharedFiles => {
  const find = async (clinicId: string): Promise<PermittedHandle | undefined> => {
    const kept = await database.use((places) => places.get('places', key(clinicId)));
    return isHandle(kept) ? kept : undefined;
  };
  const remember = (clinicId: string, handle: PermittedHandle) =>
    database.use((places) => places.put('places', handle, key(clinicId)));

  const answer = async <T>(task: (picker: Pickers) => Promise<SharedFileAnswer<T>>): Promise<SharedFileAnswer<T>> => {
    const picker = pickers();
    if (picker === undefined) return { ok: false, error: 'unsupported' };
    try {
      return await task(picker);
    } catch (error) {
      return { ok: false, error: faultOf(error) };
    }
  };

  return {
    supported: pickers() !== undefined,
    remembered: async (clinicId) => (await find(clinicId))?.name,
    open: (clinicId, ask) =>
      answer(async (picker) => {
        const asked = ask ? (await picker.showOpenFilePicker({ types: TYPES, multiple: false }))[0] : undefined;
        const handle = asked ?? (await find(clinicId));
        if (handle === undefined) return { ok: false, error: 'gone' };
        if (!(await mayUse(handle, 'read'))) return { ok: false, error: 'not_permitted' };
        const file = await handle.getFile();
        if (asked !== undefined) await remember(clinicId, asked);
        return { ok: true, value: file };
      }),
    save: (clinicId, content, askWithName) =>
      answer(async (picker) => {
        const asked =
          askWithName === null
            ? undefined
            : await picker.showSaveFilePicker({ types: TYPES, suggestedName: askWithName });
        const handle = asked ?? (await find(clinicId));
        if (handle === undefined) return { ok: false, error: 'gone' };
        if (!(await mayUse(handle, 'readwrite'))) return { ok: false, error: 'not_permitted' };
        const writable = await handle.createWritable();
        await content.stream().pipeTo(writable);
        if (asked !== undefined) await remember(clinicId, asked);
        return { ok: true, value: handle.name };
      }),
    forget: async (clinicId) => {
      await database.use((places) => places.delete('places', key(clinicId)));
    },
  };
};
