import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import type { AppError } from '../core/app-error';
import type { IsoDate } from '../core/iso-date';
import type { LongStep } from '../core/progress';
import { err, ok, type Result } from '../core/result';
import type { RawTable } from '../formats/raw-table';
import { fileErrors } from './file-errors';
import type { ImportInput } from './import-input';
import type { Mapping, MappingQuestion, TableProfile } from './mapping';
import { mappingQuestions } from './mapping-questions';
import { openTables } from './open-tables';
import { profileTable } from './profile-table';
import { suggestMapping } from './suggest-mapping';
import { tooWide } from './too-wide';

const PIECE = 4_194_304;

const hashOf = async (blob: Blob, signal: AbortSignal | undefined): Promise<string> => {
  const hash = sha256.create();
  for (let start = 0; start < blob.size; start += PIECE) {
    signal?.throwIfAborted();
    hash.update(new Uint8Array(await blob.slice(start, start + PIECE).arrayBuffer()));
  }
  return bytesToHex(hash.digest());
};

export interface InputsOptions extends LongStep {
  readonly importedOn: IsoDate;
  /** Mappings that were decided before: used where the header is theirs. */
  readonly mappings?: readonly Mapping[];
  /** Default: the name of the table where the file holds several. */
  readonly sourceOf?: (file: number, table: string) => string;
}

/** Files that can be judged, and those that cannot, each with its reason. */
export interface OpenedInputs {
  readonly inputs: readonly ImportInput[];
  readonly failedFiles: readonly { readonly name: string; readonly error: AppError }[];
}

const columnName = (question: MappingQuestion, profile: TableProfile): string =>
  question.kind === 'same-header'
    ? question.name
    : question.kind === 'several-columns' || question.kind === 'missing-column'
      ? question.to
      : (profile.header[question.place] ?? question.to);

/** Why a table cannot be read without a person's decision. */
const undecided = (
  name: string,
  questions: readonly MappingQuestion[],
  profile: TableProfile,
): AppError | undefined => {
  const missing = questions.flatMap((question) => (question.kind === 'missing-column' ? [question.to] : []));
  if (missing.length > 0) return fileErrors.wrong_columns(name, missing, profile.header);
  const twice = questions.find((question) => question.kind === 'same-header');
  if (twice !== undefined) return fileErrors.duplicate_columns(name, columnName(twice, profile));
  if (questions.length === 0) return undefined;
  return fileErrors.mapping_needed(
    name,
    questions.map((question) => columnName(question, profile)),
  );
};

const mappedTable = async (
  name: string,
  table: RawTable,
  options: InputsOptions,
): Promise<Result<Mapping, AppError>> => {
  const profile = await profileTable(table, { signal: options.signal });
  if (profile.header.every((cell) => cell === '')) return err(fileErrors.empty(name));
  const wide = tooWide(name, profile);
  if (wide !== undefined) return err(wide);
  const { mapping } = suggestMapping(profile, options.mappings ?? []);
  const why = undecided(name, mappingQuestions(mapping, profile), profile);
  if (why !== undefined) return err(why);
  return profile.rows === 0 ? err(fileErrors.header_only(name)) : ok(mapping);
};

/**
 * Opens files of any format and maps them as their headers suggest, without asking anybody. What only a person can
 * decide is a failure that names the columns (`mapping_needed`, `wrong_columns`, `duplicate_columns`), beside
 * `header_only`, `empty`, `too_wide` and what opening may say. In a file of several tables those that are no visits are left out.
 */
export const inputsOf = async (
  files: readonly { readonly name: string; readonly blob: Blob }[],
  options: InputsOptions,
): Promise<OpenedInputs> => {
  const inputs: ImportInput[] = [];
  const failedFiles: { readonly name: string; readonly error: AppError }[] = [];
  for (const [index, { name: file, blob }] of files.entries()) {
    const opened = await openTables(file, blob);
    if (!opened.ok) {
      failedFiles.push({ name: file, error: opened.error });
      continue;
    }
    const several = opened.value.length > 1;
    const hash = await hashOf(blob, options.signal);
    const failed: AppError[] = [];
    const before = inputs.length;
    for (const table of opened.value) {
      const name = several && table.name !== '' ? `${file} (${table.name})` : file;
      const mapping = await mappedTable(name, table, options);
      if (!mapping.ok) {
        failed.push(mapping.error);
        continue;
      }
      inputs.push({
        source: options.sourceOf?.(index, table.name) ?? `given/${String(index)}/${table.name}`,
        name,
        sha256: hash,
        bytes: blob.size,
        table,
        mapping: mapping.value,
        isNew: true,
        importedOn: options.importedOn,
      });
    }
    const [first] = failed;
    if (inputs.length === before && first !== undefined) failedFiles.push({ name: file, error: first });
    for (const error of inputs.length === before
      ? failed.slice(1)
      : failed.filter(({ code }) => code === 'mapping_needed'))
      failedFiles.push({ name: file, error });
  }
  return { inputs, failedFiles };
};
