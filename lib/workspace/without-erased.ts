import type { AppError } from '../core/app-error';
import type { LongStep } from '../core/progress';
import { workspaceErrors } from '../core/messages/en/workspace-errors';
import { err, ok, type Result } from '../core/result';
import type { ImportInput } from '../import/import-input';
import { withoutPeople, type FileWithoutPeople } from '../import/without-people';
import { sha256OfBlob } from '../storage/sha256-of-blob';
import { fileInputs, type BlobOf } from './clinic-inputs';
import { contentOf, type ClinicState, type ImportedFile, type ImportRecord } from './clinic-state';

/** A state whose files were written anew without some people. */
export interface StateWithoutErased {
  readonly state: ClinicState;
  /** The files written anew, by their SHA-256. */
  readonly blobs: ReadonlyMap<string, Blob>;
  /** Rows that are gone. */
  readonly rows: number;
}

const lineOf = ({ source, line }: { readonly source: string; readonly line: number }): string =>
  `${source}\u0000${String(line)}`;

const rewritten = (
  file: ImportedFile,
  inputs: readonly ImportInput[],
  written: FileWithoutPeople,
  place: string,
  anew: { readonly sha256: string; readonly at: string },
): ImportedFile => ({
  ...file,
  sha256: anew.sha256,
  bytes: written.blob.size,
  tables: inputs.map(({ source, mapping }) => ({
    table: source.slice(place.length + 1),
    mapping,
    rows: written.rows.get(source) ?? 0,
  })),
  rewrittenAt: anew.at,
  givenAs: contentOf(file),
});

/**
 * Writes those files of a state anew that hold rows of erased people; corrections and rows set aside go with them. Files
 * without such rows stay byte for byte.
 *
 * @param isGone whether an id, as corrected or as it stands in the file, is that of an erased person
 */
export const withoutErased = async (
  state: ClinicState,
  isGone: (clientId: string) => boolean,
  blobOf: BlobOf,
  at: string,
  step: LongStep = {},
): Promise<Result<StateWithoutErased, AppError>> => {
  const { corrections } = state;
  const blobs = new Map<string, Blob>();
  const [gone, settled] = [new Set<string>(), new Set<string>()];

  const fileWithout = async (
    file: ImportedFile,
    place: string,
    on: string,
  ): Promise<Result<ImportedFile, AppError>> => {
    const blob = await blobOf(file);
    if (blob === undefined) return err(workspaceErrors.fileMissing(file.name));
    const inputs = await fileInputs(file, blob, { place, on, isNew: false }, step);
    if (!inputs.ok) return inputs;
    const written = await withoutPeople(inputs.value, { isGone, corrections, signal: step.signal });
    if (written === undefined) return ok(file);
    const sha256 = await sha256OfBlob(written.blob, step.signal);
    blobs.set(sha256, written.blob);
    for (const row of written.gone) gone.add(lineOf(row));
    for (const row of written.settled) settled.add(lineOf(row));
    return ok(rewritten(file, inputs.value, written, place, { sha256, at }));
  };

  const imports: ImportRecord[] = [];
  for (const entry of state.imports) {
    const files: ImportedFile[] = [];
    for (const [number, file] of entry.files.entries()) {
      const without = await fileWithout(file, `${entry.id}/${String(number)}`, entry.on).catch((reason: unknown) => {
        if (reason instanceof Error && reason.name === 'DamagedFile')
          return err(workspaceErrors.fileUnreadable(file.name));
        throw reason;
      });
      if (!without.ok) return without;
      files.push(without.value);
    }
    imports.push({ ...entry, files });
  }
  return ok({
    blobs,
    rows: gone.size,
    state: {
      ...state,
      imports,
      corrections: corrections.filter(
        ({ row, column }) => !gone.has(lineOf(row)) && !(column === 'client_id' && settled.has(lineOf(row))),
      ),
      setAside: state.setAside.filter(({ row }) => !gone.has(lineOf(row))),
    },
  });
};
