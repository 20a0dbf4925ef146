import type { AppError } from '../core/app-error';
import { err, ok, type Result } from '../core/result';
import { blobBytes } from '../formats/blob-chunks';
import { csvTable, textSample } from '../formats/csv/csv-table';
import { detectEncoding } from '../formats/csv/detect-encoding';
import { parquetTable } from '../formats/parquet/parquet-table';
import { DamagedFile, type RawTable, type ReadOptions } from '../formats/raw-table';
import { rowsTable } from '../formats/rows/rows-table';
import { SNIFFED, sniff, sniffMarkup, type FileKind, type MarkupKind } from '../formats/sniff';
import { xportTables } from '../formats/xport/xport-tables';
import { fhirTable } from './fhir-table';
import { fileErrors } from './file-errors';

/** What can be opened: bytes, the name for messages, the path inside an archive ('' = the file itself). */
export interface OpenedFile {
  readonly label: string;
  readonly path: string;
  readonly blob: Blob;
}

export type Tables = Result<readonly RawTable[], AppError>;

const REFUSED: Readonly<Partial<Record<FileKind, (label: string) => AppError>>> = {
  empty: fileErrors.empty,
  'sealed-parquet': fileErrors.locked,
  'xport-newer': fileErrors.newer_transport,
  'old-workbook': fileErrors.old_workbook,
  pdf: fileErrors.pdf,
  picture: fileErrors.picture,
  packed: fileErrors.packed,
  'other-program': fileErrors.other_program,
};

const REFUSED_TEXT: Readonly<Partial<Record<MarkupKind, (label: string) => AppError>>> = {
  'web-page': fileErrors.web_page,
  xml: fileErrors.xml,
  json: fileErrors.json,
};

const hasRows = async (table: RawTable, options: ReadOptions): Promise<boolean> => {
  for await (const batch of table.rows({ signal: options.signal })) if (batch.length > 0) return true;
  return false;
};

/** Tables under the path of their file, without those that hold nothing. */
export const namedTables = async (
  { label, path }: OpenedFile,
  tables: readonly RawTable[],
  options: ReadOptions,
): Promise<Tables> => {
  const filled: RawTable[] = [];
  for (const table of tables) if (await hasRows(table, options)) filled.push(table);
  if (filled.length === 0) return err(fileErrors.empty(label));
  const several = tables.length > 1;
  return ok(
    filled.map((table) => ({
      ...table,
      name: [path, several ? table.name : ''].filter((part) => part !== '').join('/'),
    })),
  );
};

const openText = async (file: OpenedFile, options: ReadOptions): Promise<Tables> => {
  const { label, blob } = file;
  const encoding = await detectEncoding(blob, options);
  if (encoding === null) return err(fileErrors.binary(label));
  const markup = sniffMarkup(await textSample(blob, encoding));
  if (markup === 'rows') return namedTables(file, [rowsTable('', blob)], options);
  if (markup === 'fhir') {
    const table = await fhirTable(label, blob, options);
    return table.ok ? namedTables(file, [table.value], options) : table;
  }
  const refused = markup === null ? undefined : REFUSED_TEXT[markup];
  if (refused !== undefined) return err(refused(label));
  return namedTables(file, [await csvTable('', blob, encoding)], options);
};

/** The tables of a file that is no archive. Rejects with an AbortError or a `DamagedFile`. */
export const openSingle = async (file: OpenedFile, options: ReadOptions): Promise<Tables> => {
  const { label, blob } = file;
  const kind = sniff(await blobBytes(blob, 0, SNIFFED));
  const refused = REFUSED[kind];
  if (refused !== undefined) return err(refused(label));
  if (kind === 'parquet') return namedTables(file, [await parquetTable('', blob)], options);
  if (kind === 'xport') return namedTables(file, await xportTables(blob, options), options);
  if (kind === 'text') return openText(file, options);
  throw new DamagedFile('An archive is opened elsewhere.');
};
