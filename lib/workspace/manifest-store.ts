import type { AppError } from '../core/app-error';
import { workspaceErrors } from '../core/messages/en/workspace-errors';
import { err, ok, type Result } from '../core/result';
import type { ClinicStorage } from '../storage/clinic-storage';
import { EMPTY_MANIFEST, MANIFEST_VERSION, manifestSchema, type Manifest } from './manifest';

/** The kept manifest; the empty one at the very first start. One of a newer app is never touched. */
export const readManifest = async (storage: ClinicStorage): Promise<Result<Manifest, AppError>> => {
  const kept = await storage.readManifest();
  if (kept === undefined) return ok(EMPTY_MANIFEST);
  const version = typeof kept === 'object' && kept !== null && 'version' in kept ? kept.version : undefined;
  if (typeof version === 'number' && version > MANIFEST_VERSION) return err(workspaceErrors.newerManifest);
  const parsed = manifestSchema.safeParse(kept);
  return parsed.success ? ok(parsed.data) : err(workspaceErrors.unreadableManifest);
};

/** Puts the next manifest in the place of the one it was made from. */
export const swapManifest = async (
  storage: ClinicStorage,
  from: Manifest,
  next: Manifest,
): Promise<Result<true, AppError>> => {
  const swapped = await storage.swapManifest(from.revision, { ...next, revision: from.revision + 1 });
  return swapped ? ok(true) : err(workspaceErrors.otherTab);
};
