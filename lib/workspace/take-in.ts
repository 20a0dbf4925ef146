import type { AppError } from '../core/app-error';
import { backupErrors } from '../core/messages/en/backup-errors';
import { workspaceErrors as errors } from '../core/messages/en/workspace-errors';
import type { LongStep } from '../core/progress';
import { err, ok, type Result } from '../core/result';
import type { ClinicFile } from './clinic-file';
import type { BlobOf } from './clinic-inputs';
import type { ClinicBody, ClinicState } from './clinic-state';
import { erasedPeople } from './erased-people';
import { importAnswers } from './import-answers';
import type { BlobToKeep } from './keep-blobs';
import { stateWithout } from './state-without';
import { withoutErased } from './without-erased';

/** The files of a clinic file by their SHA-256, verified when they are opened. */
export const filesOf = async (
  { files }: ClinicFile,
  wanted: ReadonlySet<string>,
  step: LongStep,
): Promise<Result<ReadonlyMap<string, Blob>, AppError>> => {
  const blobs = new Map<string, Blob>();
  for (const file of files) {
    if (!wanted.has(file.sha256)) continue;
    const blob = await file.open(step.signal);
    if (!blob.ok) return err(backupErrors.damaged);
    blobs.set(file.sha256, blob.value);
  }
  return ok(blobs);
};

/** Whether an id is that of an erased person, as it stands or as a state's answers say whose it is. */
export const erasedIn = (
  erased: Pick<ClinicBody, 'tombstones' | 'tombstoneKey'>,
  state: ClinicState,
): ((clientId: string) => boolean) => {
  const people = erasedPeople(erased);
  if (people === null) return () => false;
  const aliases = new Map(importAnswers(state.settings).aliases.map(({ id, client }) => [id, client]));
  return (id) => people.isErased(id) || people.isErased(aliases.get(id) ?? id);
};

/** A state that came from outside, as it may be kept: without the people who were erased here. */
export interface TakenIn {
  readonly state: ClinicState;
  readonly files: ReadonlyMap<string, BlobToKeep>;
}

/**
 * Makes a state with files from outside ready to be kept.
 *
 * @param came the files that came with it
 * @param keptHere the files that the clinic holds already
 * @param erased who was erased, on either side
 */
export const takeIn = async (
  state: ClinicState,
  came: ReadonlyMap<string, Blob>,
  keptHere: BlobOf,
  erased: Pick<ClinicBody, 'tombstones' | 'tombstoneKey'>,
  at: string,
  step: LongStep,
): Promise<Result<TakenIn, AppError>> => {
  const blobOf: BlobOf = async (file) => came.get(file.sha256) ?? keptHere(file);
  const isGone = erasedIn(erased, state);
  const without =
    erased.tombstones.length === 0
      ? ok({ state, blobs: new Map<string, Blob>() })
      : await withoutErased(state, isGone, blobOf, at, step);
  if (!without.ok) return without;
  const cleaned = stateWithout(without.value.state, isGone);
  const files = new Map<string, BlobToKeep>();
  for (const file of cleaned.imports.flatMap((entry) => entry.files)) {
    const blob = without.value.blobs.get(file.sha256) ?? came.get(file.sha256);
    if (blob !== undefined) files.set(file.sha256, { blob, name: file.name });
    else if ((await keptHere(file)) === undefined) return err(errors.fileMissing(file.name));
  }
  return ok({ state: cleaned, files });
};
