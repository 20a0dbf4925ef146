import { recordCutter } from './record-cutter';

const DELIMITERS = [',', ';', '\t', '|'] as const;
const RECORDS = 50;
const NUMBER_WITH_COMMA = /^[+-]?[\d.' \u00A0\u202F]*,\d+$/;

interface Fit {
  readonly delimiter: string;
  /** The commonest number of cells above one, and the share of the records that have it. */
  readonly cells: number;
  readonly share: number;
  readonly records: readonly (readonly string[])[];
}

const fitOf = (sample: string, whole: boolean, delimiter: string): Fit => {
  const records: (readonly string[])[] = [];
  for (const { cells, trouble } of recordCutter(delimiter).push(sample, whole)) {
    if (trouble === undefined) records.push(cells.map(String));
    if (records.length === RECORDS) break;
  }
  const counts = new Map<number, number>();
  for (const { length } of records) if (length > 1) counts.set(length, (counts.get(length) ?? 0) + 1);
  const [cells, times] = [...counts].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0] ?? [1, 0];
  return { delimiter, cells, share: records.length === 0 ? 0 : times / records.length, records };
};

/** Whether the commas inside the cells of this cut are decimal or thousands marks. */
const commasAreNumbers = ({ records }: Fit): boolean => {
  const withComma = records.flat().filter((cell) => cell.includes(','));
  return withComma.filter((cell) => NUMBER_WITH_COMMA.test(cell.trim())).length > 0.8 * withComma.length;
};

/** A cut into many cells counts little more than one into three; one that fits few records counts little. */
const score = ({ cells, share }: Fit): number => share * (1 - 1 / cells);

/**
 * The separator of a text table, from its first records: the one that cuts most of them into the same number of cells,
 * quotes respected, so that lines above the header do not mislead it. A comma inside numbers does not win over another
 * separator that fits. `,` where nothing fits.
 */
export const detectDelimiter = (sample: string, whole: boolean): string => {
  const fits = DELIMITERS.map((delimiter) => fitOf(sample, whole, delimiter)).filter(({ cells }) => cells > 1);
  const others = fits.filter(({ delimiter, share }) => delimiter !== ',' && share >= 0.5);
  const commaIsMark = others.some((fit) => commasAreNumbers(fit));
  const left = commaIsMark ? fits.filter(({ delimiter }) => delimiter !== ',') : fits;
  return [...left].sort((a, b) => score(b) - score(a))[0]?.delimiter ?? ',';
};

/** The separator that a first line `sep=;` names, for spreadsheets; null where there is none. */
export const namedDelimiter = (sample: string): string | null =>
  /^"?sep=([^\r\n"])"?(?=[\r\n])/i.exec(sample)?.[1] ?? null;
