import type { AppError } from '../core/app-error';
import { workspaceErrors } from '../core/messages/en/workspace-errors';
import { err, ok, type Result } from '../core/result';
import type { ClinicStorage } from '../storage/clinic-storage';
import type { ImportedFile } from './manifest';
import type { GivenFile } from './session';

/** The kept bytes of imported files, each verified against its hash. */
export const keptFiles = async (
  storage: ClinicStorage,
  files: readonly ImportedFile[],
): Promise<Result<readonly GivenFile[], AppError>> => {
  const kept: GivenFile[] = [];
  for (const file of files) {
    const bytes = await storage.getBlob(file.sha256);
    if (bytes === undefined) return err(workspaceErrors.fileMissing(file.name));
    kept.push({ name: file.name, bytes });
  }
  return ok(kept);
};
