import type { StorageRoom } from './clinic-store';

// The browser counts its own books too; a disk filled to the last byte is one that fails at the next change.
const MARGIN = 1.05;
const SPARE_BYTES = 4 * 1024 * 1024;

/** Whether so many more bytes fit; `unknown` where the browser does not say how much room there is. */
export const fits = (room: StorageRoom, bytes: number): 'yes' | 'no' | 'unknown' => {
  if (room.usedBytes === null || room.quotaBytes === null) return 'unknown';
  return room.usedBytes + bytes * MARGIN + SPARE_BYTES <= room.quotaBytes ? 'yes' : 'no';
};
