import type { AppError } from '../core/app-error';
import type { LongStep } from '../core/progress';
import { err, ok, type Result } from '../core/result';
import { workspaceErrors } from '../core/messages/en/workspace-errors';
import { fileErrors } from '../import/file-errors';
import type { ImportInput } from '../import/import-input';
import type { Mapping } from '../import/mapping';
import { mappingQuestions } from '../import/mapping-questions';
import { openTables } from '../import/open-tables';
import type { ReadTable } from '../import/plan';
import { profileTable } from '../import/profile-table';
import { suggestMapping } from '../import/suggest-mapping';
import { tooWide } from '../import/too-wide';
import { sha256OfBlob } from '../storage/sha256-of-blob';
import type { GivenFile, ReadFiles } from './workspace';

type Table = ImportInput['table'];

const FIRST_ROWS = 20;

const firstRows = async (table: Table, signal?: AbortSignal): Promise<ReadTable['firstRows']> => {
  const rows: ReadTable['firstRows'][number][] = [];
  for await (const batch of table.rows({ signal })) {
    rows.push(...batch.slice(0, FIRST_ROWS - rows.length));
    if (rows.length >= FIRST_ROWS) break;
  }
  return rows;
};

const reads = (file: GivenFile, step: LongStep) => ({
  signal: step.signal,
  onBytes: (bytes: number): void => {
    step.onProgress?.({ step: 'reading', file: file.name, bytes, totalBytes: file.blob.size, rows: 0 });
  },
});

/** A table as it is, with the mapping that its headings and values suggest, or that was decided for its header before. */
const readTable = async (
  file: GivenFile,
  table: Table,
  remembered: readonly Mapping[],
  step: LongStep,
  headerLine?: number,
): Promise<Result<ReadTable, AppError>> => {
  const profile = await profileTable(table, { ...reads(file, step), headerLine });
  const wide = tooWide(file.name, profile);
  if (wide !== undefined) return err(wide);
  const { mapping, suggestions, remembered: isRemembered } = suggestMapping(profile, remembered);
  return ok({
    table: table.name,
    format: table.format,
    encoding: table.encoding,
    delimiter: table.delimiter,
    profile,
    firstRows: await firstRows(table, step.signal),
    mapping,
    suggestions,
    questions: mappingQuestions(mapping, profile),
    remembered: isRemembered,
  });
};

/** Where the bytes break off or are gone from under the page, the file is at fault and not the program. */
const fileFault = (name: string, reason: unknown): AppError => {
  const fault = reason instanceof Error ? reason.name : '';
  if (fault === 'DamagedFile') return fileErrors.damaged(name);
  if (fault === 'NotReadableError' || fault === 'NotFoundError') return workspaceErrors.fileChanged(name);
  throw reason;
};

const readFile = async (
  file: GivenFile,
  remembered: readonly Mapping[],
  step: LongStep,
): Promise<ReadFiles['files'][number]> => {
  const { name, blob } = file;
  const about = { name, sha256: '', bytes: blob.size, tables: [], error: null };
  try {
    const sha256 = await sha256OfBlob(blob, step.signal, (bytes) => {
      step.onProgress?.({ step: 'hashing', file: name, bytes, totalBytes: blob.size, rows: 0 });
    });
    const opened = await openTables(name, blob, { signal: step.signal });
    if (!opened.ok) return { ...about, sha256, error: opened.error };
    const tables: ReadTable[] = [];
    for (const table of opened.value) {
      const read = await readTable(file, table, remembered, step);
      if (!read.ok) return { ...about, sha256, error: read.error };
      tables.push(read.value);
    }
    return { ...about, sha256, tables };
  } catch (reason) {
    return { ...about, error: fileFault(name, reason) };
  }
};

/** Reads files of any format: their hashes, their tables as they are, and what their columns may be. */
export const readGiven = async (
  given: readonly GivenFile[],
  remembered: readonly Mapping[],
  step: LongStep,
): Promise<Result<ReadFiles, AppError>> => {
  if (given.length === 0) return err(workspaceErrors.noFiles);
  const files: ReadFiles['files'][number][] = [];
  for (const file of given) files.push(await readFile(file, remembered, step));
  return ok({ files });
};

/** One table of a file again, with another line as its header. */
export const readTableAgain = async (
  file: GivenFile,
  name: string,
  headerLine: number,
  remembered: readonly Mapping[],
  step: LongStep,
): Promise<Result<ReadTable, AppError>> => {
  try {
    const opened = await openTables(file.name, file.blob, { signal: step.signal });
    if (!opened.ok) return opened;
    const table = opened.value.find((candidate) => candidate.name === name);
    if (table === undefined) return err(workspaceErrors.fileChanged(file.name));
    return await readTable(file, table, remembered, step, headerLine);
  } catch (reason) {
    return err(fileFault(file.name, reason));
  }
};
