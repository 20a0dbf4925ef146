import type { AppError } from '../core/app-error';
import { err, ok, type Result } from '../core/result';
import { blobBytes } from '../formats/blob-chunks';
import { DamagedFile, TooLargeFile, type RawTable, type ReadOptions } from '../formats/raw-table';
import { SNIFFED, sniff } from '../formats/sniff';
import { workbookPath } from '../formats/xlsx/read-workbook';
import { xlsxTables } from '../formats/xlsx/xlsx-tables';
import { readDirectory } from '../formats/zip/read-directory';
import { unpackToBlob } from '../formats/zip/unpack';
import type { ZipEntry } from '../formats/zip/zip-entry';
import { fileErrors } from './file-errors';
import { namedTables, openSingle, type OpenedFile, type Tables } from './open-single';

const GIGABYTE = 1024 ** 3;
const MOST_UNPACKED = GIGABYTE;
/** No table is packed to less than this; deflate at its limit packs to a thousandth. */
const TIGHTEST = 500;
const LARGE = 16 * 1024 ** 2;
const LARGEST_SHEET = 8 * GIGABYTE;

/** Members of an archive that systems leave there, or that are written for people. */
const isBeside = ({ path }: ZipEntry): boolean =>
  path.endsWith('/') ||
  /(^|\/)(__MACOSX\/|\.|thumbs\.db$|desktop\.ini$|(readme|licen[cs]e)(\.(txt|md))?$)/i.test(path) ||
  /\.(md|html?|css|js)$/i.test(path);

/** What may lie beside the tables of an archive without being one. */
const NO_TABLE: readonly string[] = ['empty', 'pdf', 'picture', 'binary'];

const isDocument = (entries: readonly ZipEntry[]): boolean =>
  entries.some(({ path }) => path === '[Content_Types].xml' || path === 'mimetype');

const isTooTight = ({ bytes, packedBytes }: ZipEntry): boolean => bytes > LARGE && bytes > TIGHTEST * packedBytes;

const openWorkbook = async (file: OpenedFile, entries: readonly ZipEntry[], options: ReadOptions): Promise<Tables> => {
  if (entries.some(({ isEncrypted }) => isEncrypted)) return err(fileErrors.locked(file.label));
  if (entries.some(({ bytes }) => bytes > LARGEST_SHEET))
    return err(fileErrors.too_large(file.label, LARGEST_SHEET / GIGABYTE));
  if (entries.some(isTooTight)) return err(fileErrors.too_tight(file.label));
  const tables = await xlsxTables(file.blob, entries, options);
  return namedTables(file, tables, options);
};

const openMember = async (archive: OpenedFile, entry: ZipEntry, options: ReadOptions): Promise<Tables> => {
  const blob = await unpackToBlob(archive.blob, entry, { signal: options.signal });
  const member = { label: `${archive.label} › ${entry.path}`, path: entry.path, blob };
  if (sniff(await blobBytes(blob, 0, SNIFFED)) !== 'zip') return openSingle(member, options);
  const entries = await readDirectory(blob);
  if (workbookPath(entries) !== null) return openWorkbook(member, entries, options);
  return err((isDocument(entries) ? fileErrors.other_workbook : fileErrors.nested_zip)(member.label));
};

const openArchive = async (file: OpenedFile, options: ReadOptions): Promise<Tables> => {
  const entries = await readDirectory(file.blob);
  if (workbookPath(entries) !== null) return openWorkbook(file, entries, options);
  if (isDocument(entries)) return err(fileErrors.other_workbook(file.label));
  const members = entries.filter((entry) => !isBeside(entry));
  if (members.some(({ isEncrypted }) => isEncrypted)) return err(fileErrors.locked(file.label));
  if (members.some(({ method }) => method !== 0 && method !== 8)) return err(fileErrors.packed(file.label));
  if (members.reduce((total, { bytes }) => total + bytes, 0) > MOST_UNPACKED)
    return err(fileErrors.too_large(file.label, MOST_UNPACKED / GIGABYTE));
  if (members.some(isTooTight)) return err(fileErrors.too_tight(file.label));
  const tables: RawTable[] = [];
  for (const entry of members) {
    const opened = await openMember(file, entry, options);
    if (opened.ok) tables.push(...opened.value);
    else if (!NO_TABLE.includes(opened.error.code)) return opened;
  }
  return tables.length === 0 ? err(fileErrors.zip_nothing(file.label)) : ok(tables);
};

/**
 * The tables of a file, by its bytes and never by its name: CSV and its dialects, XLSX, Parquet, SAS transport, FHIR
 * JSON, rows of our own, or a zip of these. A table's name is '' where the file is one table. Only the beginning of each
 * table is read here, a text file once for its encoding. Rejects with an AbortError when the signal fires; all else is
 * an error that names the file.
 */
export const openTables = async (
  name: string,
  blob: Blob,
  options: ReadOptions = {},
): Promise<Result<readonly RawTable[], AppError>> => {
  const file = { label: name, path: '', blob };
  try {
    const isArchive = sniff(await blobBytes(blob, 0, SNIFFED)) === 'zip';
    return await (isArchive ? openArchive(file, options) : openSingle(file, options));
  } catch (error) {
    if (error instanceof TooLargeFile) return err(fileErrors.too_large_whole(name, error.what, error.limitBytes));
    if (error instanceof DamagedFile) return err(fileErrors.damaged(name));
    throw error;
  }
};
