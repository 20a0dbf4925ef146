import { chooseColumns, type ColumnChoice } from './choose-columns';
import { COLUMN_BY_NAME, VALUE_COLUMNS } from './columns';
import { completeColumn, wordsOf } from './complete-column';
import { fitsHeader } from './fits-header';
import type { ColumnMapping, ColumnProfile, ColumnSuggestion, Mapping, TableProfile } from './mapping';
import { readDate } from './read-date';
import { decimalEvidence } from './settled-decimal';

/** A mapping for a table, and how sure each of its columns is. */
export interface MappingSuggestion {
  readonly mapping: Mapping;
  readonly suggestions: readonly ColumnSuggestion[];
  /** The mapping was used before for the same header. */
  readonly remembered: boolean;
}

const holdsTime = ({ samples }: ColumnProfile): boolean =>
  samples.some((sample) => {
    const time = (readDate(sample, 'dmy') ?? readDate(sample, 'mdy'))?.time ?? '';
    return time !== '' && time !== '00:00';
  });

const timeBesideDate = (profile: TableProfile, { chosen }: ColumnChoice): readonly ColumnMapping[] => {
  if (chosen.some(({ to }) => to === 'visit_time')) return [];
  return chosen.flatMap(({ to, guess }) => {
    const column = to === 'visit_date' ? profile.columns[guess.place] : undefined;
    return column !== undefined && holdsTime(column) ? [{ to: 'visit_time', from: [column.place] }] : [];
  });
};

const roleOf = (columns: readonly ColumnMapping[]): Mapping['role'] => {
  const has = new Set(columns.map(({ to }) => to));
  const isEnrolment = has.has('client_id') && has.has('program') && !has.has('visit_date');
  return isEnrolment && !VALUE_COLUMNS.some((name) => has.has(name)) ? 'enrolment' : 'visits';
};

const fresh = (profile: TableProfile, choice: ColumnChoice): Mapping => {
  const numbers = choice.chosen.filter(({ to }) => COLUMN_BY_NAME.get(to)?.type === 'number');
  const table = decimalEvidence(numbers.flatMap(({ guess }) => profile.columns[guess.place] ?? []));
  const columns = choice.chosen.flatMap(({ to, reading, guess }) => {
    const column = profile.columns[guess.place];
    if (column === undefined) return [];
    const bare = { to, from: [guess.place], ...(reading === undefined ? {} : { reading }) };
    return [completeColumn(bare, column, { exact: guess.sure === 1, unit: guess.unit }, table)];
  });
  const all = [...columns, ...timeBesideDate(profile, choice)];
  return {
    version: 1,
    role: roleOf(all),
    header: [...profile.header],
    headerLine: profile.headerLine,
    columns: all,
    constants: choice.frequencyKHz === null ? [] : [{ to: 'frequency_khz', value: String(choice.frequencyKHz) }],
  };
};

const renewed = (known: Mapping, profile: TableProfile): Mapping => ({
  ...known,
  header: [...profile.header],
  headerLine: profile.headerLine,
  columns: known.columns.map((mapped) => {
    const column = profile.columns[mapped.from[0] ?? -1];
    const plain = column === undefined ? {} : wordsOf(mapped.to, column);
    return Object.keys(plain).length === 0 ? mapped : { ...mapped, words: { ...plain, ...mapped.words } };
  }),
});

/**
 * Suggests how a table's columns become the canonical ones. A remembered mapping for exactly this header wins; words
 * that it does not know yet are added where their meaning is plain. What is in doubt is asked (see `mappingQuestions`):
 * two columns that look alike both stand for the target until a person took one away.
 */
export const suggestMapping = (profile: TableProfile, remembered: readonly Mapping[]): MappingSuggestion => {
  const choice = chooseColumns(profile);
  const known = remembered.find((mapping) => fitsHeader(mapping, profile.header));
  return {
    mapping: known === undefined ? fresh(profile, choice) : renewed(known, profile),
    suggestions: choice.guesses.map(({ to, place, sure }) => ({ to, from: [place], confidence: sure })),
    remembered: known !== undefined,
  };
};
