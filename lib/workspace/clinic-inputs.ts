import type { AppError } from '../core/app-error';
import type { IsoDate } from '../core/iso-date';
import { workspaceErrors } from '../core/messages/en/workspace-errors';
import type { LongStep } from '../core/progress';
import { err, ok, type Result } from '../core/result';
import type { ImportInput } from '../import/import-input';
import { inputsOf } from '../import/inputs-of';
import { openTables } from '../import/open-tables';
import { contentOf, type ImportedFile, type ImportRecord } from './clinic-state';

/** Where the bytes of an imported file come from. */
export type BlobOf = (file: ImportedFile) => Promise<Blob | undefined>;

/** The tables of one file as the judgement takes them; those without a decided mapping as their headings suggest. */
export const fileInputs = async (
  file: ImportedFile,
  blob: Blob,
  where: { readonly place: string; readonly on: string; readonly isNew: boolean },
  step: LongStep,
): Promise<Result<readonly ImportInput[], AppError>> => {
  const importedOn = where.on as IsoDate;
  if (file.tables.length === 0) {
    const sourceOf = (_: number, table: string): string => `${where.place}/${table}`;
    const suggested = await inputsOf([{ name: file.name, blob }], { ...step, importedOn, sourceOf });
    const [failed] = suggested.failedFiles;
    return failed === undefined
      ? ok(suggested.inputs.map((input) => ({ ...input, sha256: contentOf(file), isNew: where.isNew })))
      : err(failed.error);
  }
  const tables = await openTables(file.name, blob);
  if (!tables.ok) return tables;
  const inputs: ImportInput[] = [];
  for (const { table: name, mapping } of file.tables) {
    const [only, ...others] = tables.value;
    const table = tables.value.find((candidate) => candidate.name === name) ?? (others.length === 0 ? only : undefined);
    if (table === undefined) return err(workspaceErrors.fileMissing(file.name));
    inputs.push({
      source: `${where.place}/${name}`,
      name: name === '' || tables.value.length === 1 ? file.name : `${file.name} (${name})`,
      sha256: contentOf(file),
      bytes: file.bytes,
      table,
      mapping,
      isNew: where.isNew,
      importedOn,
    });
  }
  return ok(inputs);
};

/** The tables of imports, in their order. Fails with `file_missing` where the bytes of a file are not at hand. */
export const clinicInputs = async (
  imports: readonly ImportRecord[],
  blobOf: BlobOf,
  isNew: boolean,
  step: LongStep,
): Promise<Result<readonly ImportInput[], AppError>> => {
  const inputs: ImportInput[] = [];
  for (const entry of imports) {
    for (const [number, file] of entry.files.entries()) {
      const blob = await blobOf(file);
      step.signal?.throwIfAborted();
      if (blob === undefined) return err(workspaceErrors.fileMissing(file.name));
      const where = { place: `${entry.id}/${String(number)}`, on: entry.on, isNew };
      const read = await fileInputs(file, blob, where, step);
      if (!read.ok) return read;
      inputs.push(...read.value);
    }
  }
  return ok(inputs);
};
