import type { AppError } from '../core/app-error';
import { err, ok, type Result } from '../core/result';
import { decodeText } from '../formats/csv/decode-text';
import { readCsv, type CsvRecord } from '../formats/csv/read-csv';
import { COLUMNS, COLUMN_BY_NAME } from './columns';
import { fileErrors } from './file-errors';
import { holdsMarks, withoutMarks } from './without-marks';

/** A record that cannot be a row: its fields do not fit the header, its quotes or its length are out of order. */
export interface RaggedRecord {
  readonly line: number;
  readonly code: 'ragged' | 'broken_quote' | 'too_long';
  readonly fields: number;
  readonly excerpt: string;
}

/** A visit export as text, laid onto the canonical columns. */
export interface ReadFile {
  readonly name: string;
  readonly encoding: string;
  readonly delimiter: string;
  readonly columns: readonly string[];
  readonly unknownColumns: readonly string[];
  /** Per row: line, the canonical columns in catalogue order ('' where absent), the unknown ones as one text. */
  readonly rows: readonly { readonly line: number; readonly cells: readonly string[]; readonly extra: string }[];
  readonly ragged: readonly RaggedRecord[];
}

const REQUIRED = ['client_id', 'visit_date'];
const EXCERPT = 80;
/** The database takes no line of more than 16 MiB. */
const LONGEST_ROW = 1_000_000;

/**
 * Reads one file. `ignored` names columns that are treated as absent.
 * Fails with `empty`, `zip`, `binary`, `header_only`, `wrong_columns` or `duplicate_columns`.
 */
export const readFile = (
  name: string,
  bytes: Uint8Array,
  ignored: ReadonlySet<string> = new Set(),
): Result<ReadFile, AppError> => {
  const decoded = decodeText(bytes);
  if (!decoded.ok) return err(fileErrors[decoded.error](name));
  if (decoded.value.text.trim() === '') return err(fileErrors.empty(name));
  const table = readCsv(decoded.value.text.replace(/^\uFEFF/, ''));
  const [header, ...records] = table.records;
  if (header === undefined) return err(fileErrors.empty(name));
  const names = header.fields.map((field) => field.trim().toLowerCase());
  const missing = REQUIRED.filter((required) => !names.includes(required));
  if (missing.length > 0) return err(fileErrors.wrong_columns(name, missing, header.fields));
  const twice = names.find((column, index) => COLUMN_BY_NAME.has(column) && names.indexOf(column) !== index);
  if (twice !== undefined) return err(fileErrors.duplicate_columns(name, twice));
  if (records.length === 0) return err(fileErrors.header_only(name));
  const places = COLUMNS.map((column) => (ignored.has(column.name) ? -1 : names.indexOf(column.name)));
  const unknown = names.flatMap((column, index) => (COLUMN_BY_NAME.has(column) ? [] : [index]));
  const marked = holdsMarks(decoded.value.text);
  const cellAt = (fields: readonly string[], place: number, index: number): string => {
    const cell = fields[place] ?? '';
    const column = COLUMNS[index];
    return marked && column !== undefined ? withoutMarks(column, cell) : cell;
  };
  const broken = new Set(table.brokenQuotes);
  const troubleOf = ({ line, fields }: CsvRecord): RaggedRecord['code'] | undefined => {
    if (broken.has(line)) return 'broken_quote';
    if (fields.length !== names.length) return 'ragged';
    return fields.reduce((total, field) => total + field.length, 0) > LONGEST_ROW ? 'too_long' : undefined;
  };
  const ragged: RaggedRecord[] = [];
  const rows: { line: number; cells: readonly string[]; extra: string }[] = [];
  for (const record of records) {
    const code = troubleOf(record);
    if (code !== undefined) {
      const excerpt = record.fields
        .map((field) => field.slice(0, EXCERPT))
        .join(table.delimiter)
        .slice(0, EXCERPT);
      ragged.push({ line: record.line, code, fields: record.fields.length, excerpt });
      continue;
    }
    rows.push({
      line: record.line,
      cells: places.map((place, index) => cellAt(record.fields, place, index)),
      extra: unknown.map((place) => record.fields[place] ?? '').join('\u001F'),
    });
  }
  return ok({
    name,
    encoding: decoded.value.encoding,
    delimiter: table.delimiter,
    columns: names,
    unknownColumns: unknown.map((place) => header.fields[place] ?? ''),
    rows,
    ragged,
  });
};
