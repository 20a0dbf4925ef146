import type { ClinicStore } from '../clinic-store';
import type { SeenAtStart } from '../keeping-signs';
import type { Database } from './database';

const SMALL_KEY = 'driftline-last-visit';
const DATABASE_KEY = 'last-visit';

const smallMarker = (): string | null => {
  try {
    return localStorage.getItem(SMALL_KEY);
  } catch {
    return null;
  }
};

const setSmallMarker = (day: string): void => {
  try {
    localStorage.setItem(SMALL_KEY, day);
  } catch {
    // A browser without the small storage may still keep the clinics; the next start then finds no marker and says so.
  }
};

/**
 * What is left of an earlier visit: to be asked before the first clinic is made.
 *
 * @throws StorageError where the storage cannot be opened
 */
export const lookAtStart = async (database: Database, store: ClinicStore): Promise<SeenAtStart> => {
  const day = await database.use((kept) => kept.get('places', DATABASE_KEY));
  const begunAt = await store.begunAt();
  const [clinics, blobs, room] = await Promise.all([store.list(), store.blobs(), store.room()]);
  return {
    smallMarker: smallMarker(),
    databaseMarker: typeof day === 'string' ? day : null,
    clinics: clinics.length,
    olderFiles: blobs.filter(({ keptAt }) => keptAt < begunAt).length,
    persisted: room.persisted,
    quotaBytes: room.quotaBytes,
  };
};

/** Leaves the mark of this visit in both places. */
export const markVisit = async (database: Database, day: string): Promise<void> => {
  setSmallMarker(day);
  await database.use((kept) => kept.put('places', day, DATABASE_KEY));
};
