import type { ColumnMapping, DateOrder, Mapping } from '../../../lib/import/mapping';

type Column = ColumnMapping;

/**
 * Which entry of a mapping: by its target, in the wide shape the reading it belongs to, and its first source column where
 * two columns stand for one target.
 */
export interface EntryKey {
  readonly to: string;
  readonly reading?: number | undefined;
  readonly place?: number | undefined;
}

const isEntry = (column: Column, key: EntryKey): boolean =>
  column.to === key.to && column.reading === key.reading && (key.place === undefined || column.from[0] === key.place);

export const keyOf = ({ to, reading, from }: Column): EntryKey => ({ to, reading, place: from[0] });

const entryOf = (mapping: Mapping, key: EntryKey): Column | undefined =>
  mapping.columns.find((column) => isEntry(column, key));

const withoutConstant = (mapping: Mapping, to: string): Mapping['constants'] =>
  mapping.constants.filter((constant) => constant.to !== to);

/** An entry as it would be made anew: what was decided about the column before does not speak for another one. */
const fresh = (key: EntryKey, from: readonly number[]): Column => ({
  to: key.to,
  from: [...from],
  ...(key.reading === undefined ? {} : { reading: key.reading }),
});

/** Fills a target from source columns (none: the target is not filled). A constant of the target gives way. */
export const withSource = (mapping: Mapping, key: EntryKey, from: readonly number[]): Mapping => {
  if (from.length === 0) return withoutEntry(mapping, key);
  const before = entryOf(mapping, key);
  const first = before?.from[0];
  const entry = before !== undefined && first === from[0] ? { ...before, from: [...from] } : fresh(key, from);
  const columns =
    before === undefined
      ? [...mapping.columns, entry]
      : mapping.columns.map((column) => (column === before ? entry : column));
  return { ...mapping, columns, constants: withoutConstant(mapping, key.to) };
};

export const withoutEntry = (mapping: Mapping, key: EntryKey): Mapping => ({
  ...mapping,
  columns: mapping.columns.filter((column) => !isEntry(column, key)),
});

/** Changes how one entry's cells are read. */
export const withReadingOf = (
  mapping: Mapping,
  key: EntryKey,
  change: Partial<Pick<Column, 'unit' | 'dateOrder' | 'decimal' | 'words'>>,
): Mapping => ({
  ...mapping,
  columns: mapping.columns.map((column) => (isEntry(column, key) ? { ...column, ...change } : column)),
});

/** Gives an entry another reading number (none: the column holds the row's own reading). */
export const withReadingNumber = (mapping: Mapping, key: EntryKey, reading: number | undefined): Mapping => {
  if (mapping.columns.some((column) => isEntry(column, { to: key.to, reading }))) return mapping;
  return {
    ...mapping,
    columns: mapping.columns.map((column) => {
      if (!isEntry(column, key)) return column;
      const { reading: _before, ...rest } = column;
      return reading === undefined ? rest : { ...rest, reading };
    }),
  };
};

/** The target's entries as numbered readings, with room for one more from a source column. */
export const withFurtherReading = (mapping: Mapping, to: string, place: number): Mapping => {
  const numbered = mapping.columns.map((column) =>
    column.to === to && column.reading === undefined ? { ...column, reading: 1 } : column,
  );
  const last = Math.max(0, ...numbered.flatMap((column) => (column.to === to ? [column.reading ?? 1] : [])));
  const model = numbered.find((column) => column.to === to);
  const next: Column = { ...(model ?? { to }), from: [place], reading: last + 1 };
  return { ...mapping, columns: [...numbered, next], constants: withoutConstant(mapping, to) };
};

/** One value for every row; '' takes it back. A source column of the target gives way. */
export const withConstant = (mapping: Mapping, to: string, value: string): Mapping => ({
  ...mapping,
  columns: value === '' ? mapping.columns : mapping.columns.filter((column) => column.to !== to),
  constants:
    value === ''
      ? withoutConstant(mapping, to)
      : mapping.constants.some((constant) => constant.to === to)
        ? mapping.constants.map((constant) => (constant.to === to ? { to, value } : constant))
        : [...mapping.constants, { to, value }],
});

const readsFrom = (column: Column, places: readonly number[]): boolean =>
  column.from.some((place) => places.includes(place));

/** The date order of every date that is read from one of these source columns. */
export const withDateOrder = (mapping: Mapping, places: readonly number[], dateOrder: DateOrder): Mapping => ({
  ...mapping,
  columns: mapping.columns.map((column) => (readsFrom(column, places) ? { ...column, dateOrder } : column)),
});

/** The decimal mark of every number that is read from one of these source columns. */
export const withDecimal = (mapping: Mapping, places: readonly number[], decimal: '.' | ','): Mapping => ({
  ...mapping,
  columns: mapping.columns.map((column) => (readsFrom(column, places) ? { ...column, decimal } : column)),
});

/** The words of a source column for a target: earlier words stay, those named here win. */
export const withWords = (
  mapping: Mapping,
  to: string,
  place: number,
  words: Readonly<Record<string, string>>,
): Mapping => ({
  ...mapping,
  columns: mapping.columns.map((column) =>
    column.to === to && column.from.includes(place) ? { ...column, words: { ...column.words, ...words } } : column,
  ),
});

/** Of several source columns that could be meant, only this one is used (null: none of them). */
export const withOnly = (mapping: Mapping, places: readonly number[], chosen: number | null, to?: string): Mapping => {
  const others = places.filter((place) => place !== chosen);
  const cleared = {
    ...mapping,
    columns: mapping.columns.filter((column) => !readsFrom(column, others) || column.from.includes(chosen ?? -1)),
  };
  if (to === undefined || chosen === null) return cleared;
  return cleared.columns.some((column) => column.to === to && column.from.includes(chosen))
    ? cleared
    : withSource(cleared, { to }, [chosen]);
};
