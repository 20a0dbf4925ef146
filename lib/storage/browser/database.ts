import { openDB, type DBSchema, type IDBPDatabase, type IDBPTransaction, type StoreNames } from 'idb';
import { StorageError, type StoredClinic } from '../clinic-store';
import { storageErrorFrom } from '../storage-error-from';

export const DATABASE_NAME = 'driftline';
export const DATABASE_VERSION = 2;

export interface Kept extends DBSchema {
  clinics: { key: string; value: StoredClinic };
  places: { key: string; value: unknown };
}

/** What version 1 kept, as version 2 keeps it. */
export interface Migrated {
  readonly clinics: readonly StoredClinic[];
  readonly lastOpen: string | undefined;
}

/** Turns the manifest of version 1 (as it was kept, unread) into clinics; it throws where it cannot read it. */
export type MigrateVersionOne = (manifest: unknown) => Migrated;

interface VersionOne extends DBSchema {
  manifest: { key: 'current'; value: unknown };
}

type Upgrade = IDBPTransaction<Kept, StoreNames<Kept>[], 'versionchange'>;

// A migration that throws aborts the upgrade: version 1 then stays as it was, whole.
const upgradeFromOne = async (transaction: Upgrade, migrate: MigrateVersionOne): Promise<void> => {
  const old = transaction as unknown as IDBPTransaction<VersionOne, ['manifest'], 'versionchange'>;
  const manifest = await old.objectStore('manifest').get('current');
  if (manifest !== undefined) {
    const { clinics, lastOpen } = migrate(manifest);
    for (const clinic of clinics) await transaction.objectStore('clinics').put(clinic, clinic.id);
    if (lastOpen !== undefined) await transaction.objectStore('places').put(lastOpen, 'last-open');
  }
  old.db.deleteObjectStore('manifest');
};

/** How long a tab with the older layout may take to let go of it. */
const BLOCKED_LIMIT_MS = 5000;

const migrationError = (error: unknown): StorageError =>
  new StorageError('damaged', `the older clinic cannot be read: ${error instanceof Error ? error.message : ''}`);

/** The connection of one page to the browser's database. */
export interface Database {
  /** Runs with an open connection; rejects with a `StorageError`. */
  use<T>(task: (database: IDBPDatabase<Kept>) => Promise<T>): Promise<T>;
  close(): Promise<void>;
}

/**
 * Opens the database at the first use. The connection closes when a newer version of the app wants to open it (`newer`
 * from then on), and it is told when the browser takes the storage away (`cleared` from then on): a page that had a
 * clinic must not find itself in an empty one.
 */
export const createDatabase = (migrate: MigrateVersionOne): Database => {
  let opening: Promise<IDBPDatabase<Kept>> | undefined;
  let over: StorageError | undefined;
  let wasOpen = false;

  const end = (error: StorageError) => {
    over = error;
    opening = undefined;
  };

  const open = async (): Promise<IDBPDatabase<Kept>> => {
    let failure: StorageError | undefined;
    let madeAnew = false;
    let giveUp: ReturnType<typeof setTimeout> | undefined;
    let refuse: (error: StorageError) => void = () => undefined;
    const blockedTooLong = new Promise<never>((_resolve, reject) => {
      refuse = reject;
    });
    const request = openDB<Kept>(DATABASE_NAME, DATABASE_VERSION, {
      upgrade: (fresh, oldVersion, _newVersion, transaction) => {
        madeAnew = oldVersion === 0;
        fresh.createObjectStore('clinics');
        fresh.createObjectStore('places');
        // The books of version 1 began at a time that nobody noted: no kept file is older.
        void transaction.objectStore('places').put(oldVersion === 0 ? Date.now() : 0, 'begun-at');
        if (oldVersion !== 1) return;
        upgradeFromOne(transaction, migrate).catch((error: unknown) => {
          failure = migrationError(error);
          transaction.abort();
        });
      },
      blocked: () => {
        giveUp = setTimeout(() => {
          refuse(new StorageError('failed', 'another tab holds an older version of the storage open'));
          void request.then((late) => {
            late.close();
          });
        }, BLOCKED_LIMIT_MS);
      },
      blocking: (_currentVersion, blockedVersion, event) => {
        (event.target as IDBDatabase).close();
        end(
          blockedVersion === null
            ? new StorageError('cleared', 'the storage was deleted while the page was open')
            : new StorageError('newer', 'a newer version of the app has opened the storage'),
        );
      },
      terminated: () => {
        opening = undefined;
      },
    });
    const database = await Promise.race([request, blockedTooLong])
      .catch((error: unknown) => {
        throw failure ?? storageErrorFrom(error, 'denied');
      })
      .finally(() => {
        clearTimeout(giveUp);
      });
    if (madeAnew && wasOpen) {
      database.close();
      end(new StorageError('cleared', 'the storage was cleared while the page was open'));
      throw over ?? new StorageError('cleared', 'the storage was cleared');
    }
    wasOpen = true;
    return database;
  };

  const connection = (): Promise<IDBPDatabase<Kept>> => {
    if (over !== undefined) return Promise.reject(over);
    if (typeof indexedDB === 'undefined')
      return Promise.reject(new StorageError('denied', 'this browser has no database for pages'));
    opening ??= open().catch((error: unknown) => {
      opening = undefined;
      throw storageErrorFrom(error, 'denied');
    });
    return opening;
  };

  return {
    use: async (task) => {
      const database = await connection();
      try {
        return await task(database);
      } catch (error) {
        if (over !== undefined) throw over;
        if (!(error instanceof DOMException) || error.name !== 'InvalidStateError') throw storageErrorFrom(error);
      }
      // The connection went away under this task; opening it again tells why.
      opening = undefined;
      try {
        return await task(await connection());
      } catch (error) {
        throw storageErrorFrom(error);
      }
    },
    close: async () => {
      const database = await opening?.catch(() => undefined);
      opening = undefined;
      database?.close();
    },
  };
};
