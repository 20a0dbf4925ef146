import { detectDelimiter } from '../formats/csv/detect-delimiter';
import { recordCutter } from '../formats/csv/record-cutter';
import { referenceErrors as words } from '../core/messages/en/reference-errors';
import { err, ok, type Result } from '../core/result';
import { isReferenceComment } from './own-reference-comments';
import { PLAIN_NUMBER, readNumber } from './read-number';

/** Where a cell is wrong, and why. */
export interface CellFailure {
  readonly line: number;
  readonly column: string;
  readonly found: string;
  readonly inHeader: boolean;
}

export type OwnReferenceKind = 'vector' | 'indices' | 'phase-angle';

/** The strata as plain data, not yet checked, each with its line in the file. */
export interface ReferenceLines {
  readonly kind: OwnReferenceKind;
  readonly lines: readonly number[];
  readonly strata: readonly Readonly<Record<string, unknown>>[];
}

const REQUIRED = ['kind', 'sex', 'age_from', 'n'] as const;

/** Each kind's columns and where their numbers belong in a stratum; a correlation may be left out. */
const PLACES: Readonly<Record<OwnReferenceKind, Readonly<Record<string, string>>>> = {
  vector: { mean_r_h: 'rh.mean', sd_r_h: 'rh.sd', mean_xc_h: 'xch.mean', sd_xc_h: 'xch.sd', r: 'r' },
  indices: { mean_fmi: 'fmi.mean', sd_fmi: 'fmi.sd', mean_ffmi: 'ffmi.mean', sd_ffmi: 'ffmi.sd', r_fmi_ffmi: 'r' },
  'phase-angle': { mean_phase_angle: 'mean', sd_phase_angle: 'spread.sd' },
};
const COMMON: Readonly<Record<string, string>> = { sex: 'sex', age_from: 'ageFrom', age_below: 'ageBelow', n: 'n' };
const COLUMNS: ReadonlySet<string> = new Set([
  'kind',
  ...Object.keys(COMMON),
  ...Object.values(PLACES).flatMap((columns) => Object.keys(columns)),
]);

const isKind = (text: string): text is OwnReferenceKind => Object.hasOwn(PLACES, text);

/** The column of the file in which a place of a stratum (`rh.sd`) was written; the place itself where there is none. */
export const columnOfPlace = (kind: OwnReferenceKind, place: string): string =>
  Object.entries({ ...COMMON, ...PLACES[kind] }).find(([, at]) => at === place)?.[0] ?? place;

const isOptional = (column: string): boolean => column === 'age_below' || column === 'r' || column === 'r_fmi_ffmi';

interface Header {
  readonly line: number;
  readonly columns: readonly string[];
}

const headerFailure = ({ line, columns }: Header): CellFailure | undefined => {
  const failure = (column: string, found: string): CellFailure => ({ line, column, found, inHeader: true });
  const unknown = columns.find((column) => column !== '' && !COLUMNS.has(column));
  if (unknown !== undefined) return failure(unknown.slice(0, 30), words.unknownColumn);
  const twice = columns.find((column, place) => column !== '' && columns.indexOf(column) !== place);
  if (twice !== undefined) return failure(twice, words.twice);
  const missing = REQUIRED.find((column) => !columns.includes(column));
  return missing === undefined ? undefined : failure(missing, words.missingColumn);
};

interface Line {
  readonly line: number;
  readonly cells: ReadonlyMap<string, string>;
}

const valueOf = (column: string, text: string, decimal: '.' | ','): Result<unknown, string> => {
  if (column === 'sex') {
    const sex = text.toUpperCase();
    return sex === 'F' || sex === 'M' ? ok(sex) : err(words.unknownSex(text));
  }
  // A mean of 6.123 is no thousands: only a count of people may have a thousands mark.
  const signed = text.replace('\u2212', '-');
  const plain = decimal === ',' && !signed.includes('.') ? signed.replace(',', '.') : signed;
  const number = column === 'n' ? readNumber(text, decimal) : PLAIN_NUMBER.test(plain) ? plain : undefined;
  return number === undefined ? err(words.noNumber(text)) : ok(Number(number));
};

const stratumOf = (
  kind: OwnReferenceKind,
  { line, cells }: Line,
  header: Header,
  decimal: '.' | ',',
): Result<Readonly<Record<string, unknown>>, CellFailure> => {
  const failure = (column: string, found: string) => err({ line, column, found, inHeader: false });
  const places = { ...COMMON, ...PLACES[kind] };
  const missing = Object.keys(places).find((column) => !cells.has(column) && !isOptional(column));
  if (missing !== undefined)
    return err({ line: header.line, column: missing, found: words.missingColumn, inHeader: true });
  const foreign = [...cells].find(([column, text]) => column !== 'kind' && !(column in places) && text !== '');
  if (foreign?.[0] === '') return failure(String(header.columns.indexOf('') + 1), words.unknownColumn);
  if (foreign !== undefined) return failure(foreign[0], words.otherKind(kind));
  const stratum: Record<string, unknown> = {};
  for (const [column, place] of Object.entries(places)) {
    const text = cells.get(column) ?? '';
    if (text === '' && isOptional(column)) continue;
    if (text === '') return failure(column, words.emptyCell);
    const value = valueOf(column, text, decimal);
    if (!value.ok) return failure(column, value.error);
    const [outer = '', inner] = place.split('.');
    stratum[outer] = inner === undefined ? value.value : { ...(stratum[outer] as object), [inner]: value.value };
  }
  if (kind === 'phase-angle') stratum['spread'] = { kind: 'sd', ...(stratum['spread'] as object) };
  return ok(stratum);
};

/**
 * The table of a clinic's own reference: one line for each sex and age band, all of one kind. Lines that begin with # are
 * left out. A decimal comma is read where the separator is another character, a decimal point everywhere; thousands marks
 * in counts of people alone.
 */
export const readReferenceLines = (text: string): Result<ReferenceLines, CellFailure> => {
  const table = text
    .split(/\r\n?|\n/)
    .map((line) => (isReferenceComment(line) ? '' : line))
    .join('\n');
  const delimiter = detectDelimiter(table, true);
  const decimal = delimiter === ',' ? '.' : ',';
  const [first, ...rows] = [...recordCutter(delimiter).push(table, true)].filter(({ cells }) =>
    cells.some((cell) => String(cell).trim() !== ''),
  );
  const header = {
    line: first?.line ?? 1,
    columns: (first?.cells ?? []).map((cell) => String(cell).trim().toLowerCase()),
  };
  const wrongHeader = headerFailure(header);
  if (wrongHeader !== undefined) return err(wrongHeader);

  let kind: OwnReferenceKind | undefined;
  const strata: Readonly<Record<string, unknown>>[] = [];
  for (const row of rows) {
    const failure = (column: string, found: string) => err({ line: row.line, column, found, inHeader: false });
    if (row.trouble !== undefined) return failure(header.columns[0] ?? '', words.brokenQuote);
    if (row.cells.slice(header.columns.length).some((cell) => String(cell).trim() !== ''))
      return failure(String(header.columns.length + 1), words.tooManyCells);
    const cells = new Map(header.columns.map((column, place) => [column, String(row.cells[place] ?? '').trim()]));
    const given = (cells.get('kind') ?? '').toLowerCase();
    if (!isKind(given)) return failure('kind', words.unknownKind(given));
    kind ??= given;
    if (given !== kind) return failure('kind', words.twoKinds(kind));
    const stratum = stratumOf(kind, { line: row.line, cells }, header, decimal);
    if (!stratum.ok) return stratum;
    strata.push(stratum.value);
  }
  if (kind === undefined) return err({ line: header.line, column: 'kind', found: words.noStratum, inHeader: true });
  return ok({ kind, lines: rows.map(({ line }) => line), strata });
};
