import type { AppError } from '../core/app-error';
import { workspaceErrors } from '../core/messages/en/workspace-errors';
import { StorageError, type StorageFault } from '../storage/clinic-store';

const WORDS: Readonly<Record<Exclude<StorageFault, 'changed'>, AppError>> = {
  denied: workspaceErrors.storageDenied,
  full: workspaceErrors.noRoom(null, null),
  damaged: workspaceErrors.storageDamaged,
  cleared: workspaceErrors.storageCleared,
  newer: workspaceErrors.newerApp,
  failed: workspaceErrors.notKept,
};

/** What a failure of a step means to a person; undefined where it is a bug. `fileName`: the file that was being kept. */
export const storageWords = (reason: unknown, fileName = ''): AppError | undefined => {
  if (reason instanceof StorageError)
    return reason.fault === 'changed' ? workspaceErrors.fileChanged(fileName) : WORDS[reason.fault];
  if (reason instanceof Error && reason.name === 'AbortError') return workspaceErrors.cancelled;
  return undefined;
};
