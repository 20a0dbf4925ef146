import { StorageError, type StorageFault } from './clinic-store';

const FAULTS: Readonly<Record<string, StorageFault>> = {
  QuotaExceededError: 'full',
  SecurityError: 'denied',
  NotAllowedError: 'denied',
  VersionError: 'newer',
  NoModificationAllowedError: 'failed',
};

/**
 * What a failure of the browser's storage means. The names are those of the DOMExceptions in the standards IndexedDB,
 * File System and Storage.
 *
 * @param unknown what an error without a telling name means here
 */
export const storageErrorFrom = (error: unknown, unknown: StorageFault = 'failed'): StorageError => {
  if (error instanceof StorageError) return error;
  const name = error instanceof Error ? error.name : '';
  const message = error instanceof Error ? error.message : String(error);
  return new StorageError(FAULTS[name] ?? unknown, name === '' ? message : `${name}: ${message}`);
};
