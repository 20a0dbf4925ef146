import type { StorageRoom } from '../../../lib/storage/clinic-store';

/** Room below which a profile on a usual disk is unlikely. A private window gets a part of the memory, not of the disk. */
const SMALL_QUOTA_BYTES = 4e9;

export type ClearingSign = 'small-quota' | 'no-storage';

/** What hints at a browser that forgets the clinic when it closes. A promise not to clear stands against it. */
export const clearingSign = (room: StorageRoom): ClearingSign | undefined => {
  if (room.persisted) return undefined;
  if (room.quotaBytes === null) return 'no-storage';
  return room.quotaBytes < SMALL_QUOTA_BYTES ? 'small-quota' : undefined;
};
