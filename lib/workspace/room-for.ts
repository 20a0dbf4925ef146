import type { AppError } from '../core/app-error';
import { workspaceErrors } from '../core/messages/en/workspace-errors';
import type { BlobStore, ClinicStore } from '../storage/clinic-store';
import { fits } from '../storage/room';

/** Whether so many more bytes can be kept; the error where the browser says that they cannot. */
export const roomForBytes = async (store: Pick<ClinicStore, 'room'>, bytes: number): Promise<AppError | undefined> => {
  if (bytes === 0) return undefined;
  const room = await store.room();
  if (fits(room, bytes) !== 'no') return undefined;
  return workspaceErrors.noRoom(bytes, Math.max(0, (room.quotaBytes ?? 0) - (room.usedBytes ?? 0)));
};

/** Whether kept files can be kept once more, under other names. */
export const roomFor = async (
  store: Pick<ClinicStore, 'room'>,
  blobs: BlobStore,
  names: readonly string[],
): Promise<AppError | undefined> => {
  const wanted = new Set(names);
  const kept = await blobs.blobs();
  return roomForBytes(
    store,
    kept.reduce((sum, { name, bytes }) => (wanted.has(name) ? sum + bytes : sum), 0),
  );
};
