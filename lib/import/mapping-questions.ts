import { COLUMN_BY_NAME } from './columns';
import type { Column } from './column';
import { guessColumn, isByFrequency } from './guess-column';
import type { ColumnMapping, ColumnProfile, Mapping, MappingQuestion, TableProfile } from './mapping';
import { lookupWord } from './plain-text';
import { plainWords } from './plain-words';
import { possibleOrders, settledDateOrder } from './settled-date-order';
import { decimalEvidence, settledDecimal, type DecimalEvidence } from './settled-decimal';
import { settledUnit } from './settled-unit';
import { acceptedUnits } from './units';

const REQUIRED: Readonly<Record<Mapping['role'], readonly string[]>> = {
  visits: ['client_id', 'visit_date'],
  enrolment: ['client_id', 'program'],
};

/** Rows without a frequency are taken for measured at this one, kHz. */
const USUAL_FREQUENCY = 50;

const unitQuestion = (
  column: Column,
  mapped: ColumnMapping,
  profile: ColumnProfile,
  table: DecimalEvidence,
): readonly MappingQuestion[] => {
  const fromHeader = guessColumn(profile.name)?.unit ?? null;
  const units = acceptedUnits(column);
  const heading = units.find((unit) => unit === fromHeader) ?? null;
  if (mapped.unit !== undefined || settledUnit(column, profile, heading, table) === column.unit) return [];
  return [{ kind: 'unit', to: column.name, place: profile.place, units, samples: profile.samples }];
};

const wordQuestion = (column: Column, mapped: ColumnMapping, profile: ColumnProfile): readonly MappingQuestion[] => {
  const told = new Set(Object.keys(mapped.words ?? {}));
  const open = plainWords(column, profile).open.filter(({ word }) => !told.has(lookupWord(word)));
  const choices = column.type === 'flag' ? ['y', 'n'] : (column.choices ?? []);
  return open.length === 0 ? [] : [{ kind: 'words', to: column.name, place: profile.place, words: open, choices }];
};

/** Codes of a column of numbers that may stand for a missing value, where they come more than once. */
const codeQuestion = (column: Column, mapped: ColumnMapping, profile: ColumnProfile): readonly MappingQuestion[] => {
  const [low, high] = column.limits?.warn ?? column.limits?.ask ?? [0, 0];
  const isValue = (word: string): boolean => Number(word) >= low && Number(word) <= high;
  const words = (profile.codes ?? []).filter(
    ({ word, count }) => count > 1 && !isValue(word) && mapped.words?.[lookupWord(word)] === undefined,
  );
  const choices = words.map(({ word }) => word);
  return words.length === 0 ? [] : [{ kind: 'words', to: column.name, place: profile.place, words, choices }];
};

/** Ids that may be initials or words for a missing one. */
const idQuestion = (column: Column, mapped: ColumnMapping, profile: ColumnProfile): readonly MappingQuestion[] => {
  const words = (profile.missing ?? []).filter(({ word }) => mapped.words?.[lookupWord(word)] === undefined);
  const choices = words.map(({ word }) => word);
  return words.length === 0 ? [] : [{ kind: 'words', to: column.name, place: profile.place, words, choices }];
};

const columnQuestions = (
  mapped: ColumnMapping,
  profile: ColumnProfile,
  table: DecimalEvidence,
): readonly MappingQuestion[] => {
  const column = COLUMN_BY_NAME.get(mapped.to);
  const { place, samples } = profile;
  switch (column?.type) {
    case 'number': {
      const isSettled = mapped.decimal !== undefined || settledDecimal(profile, table) === '.';
      const decimal: readonly MappingQuestion[] = isSettled ? [] : [{ kind: 'decimal', to: mapped.to, place, samples }];
      return [...unitQuestion(column, mapped, profile, table), ...decimal, ...codeQuestion(column, mapped, profile)];
    }
    case 'date': {
      const orders = possibleOrders(profile);
      const isSettled = mapped.dateOrder !== undefined || settledDateOrder(profile) === 'ymd';
      return isSettled ? [] : [{ kind: 'date-order', to: mapped.to, place, orders, samples }];
    }
    case 'flag':
    case 'choice':
      return wordQuestion(column, mapped, profile);
    case 'text':
      return column.name === 'client_id' ? idQuestion(column, mapped, profile) : [];
    default:
      return [];
  }
};

const targetOf = ({ to, reading }: ColumnMapping): string => `${to} ${String(reading ?? '')}`;

/** Columns of which each fills the same place: only one of them can. */
const rivalsOf = ({ columns }: Mapping): ReadonlyMap<string, readonly ColumnMapping[]> => {
  const groups = new Map<string, ColumnMapping[]>();
  for (const mapped of columns) groups.set(targetOf(mapped), [...(groups.get(targetOf(mapped)) ?? []), mapped]);
  return new Map([...groups].filter(([, rivals]) => rivals.length > 1));
};

const rivalQuestion = (rivals: readonly ColumnMapping[], header: readonly string[]): MappingQuestion => {
  const places = rivals.flatMap(({ from }) => from[0] ?? []);
  const names = places.map((place) => header[place] ?? '');
  const [name = ''] = names;
  return new Set(names.map((one) => one.toLowerCase())).size === 1
    ? { kind: 'same-header', places, name }
    : { kind: 'several-columns', to: rivals[0]?.to ?? '', places };
};

/** Whether the heading of an impedance column names another frequency than the one that stands for an unknown one. */
const namesOtherFrequency = ({ columns }: Mapping, { header }: TableProfile): boolean =>
  columns.some(({ to, from }) => {
    const frequency = isByFrequency(to) ? guessColumn(header[from[0] ?? -1] ?? '')?.frequencyKHz : undefined;
    return frequency !== undefined && frequency !== null && frequency !== USUAL_FREQUENCY;
  });

/**
 * What has to be decided before a mapping can be used, in the order in which it is asked. Each question goes away by a
 * change of the mapping: only one of several columns for one target (or none), a column or a constant for what is
 * missing, the column's `dateOrder`, `decimal` or `unit`, an entry for every word in its `words`.
 */
export const mappingQuestions = (mapping: Mapping, profile: TableProfile): readonly MappingQuestion[] => {
  const rivals = rivalsOf(mapping);
  const contests = [...rivals.values()].map((group) => rivalQuestion(group, profile.header));
  const given = new Set([
    ...mapping.columns.map(({ to }) => to),
    ...mapping.constants.filter(({ value }) => value.trim() !== '').map(({ to }) => to),
  ]);
  const missing = [
    ...REQUIRED[mapping.role].filter((to) => !given.has(to)),
    ...(given.has('frequency_khz') || !namesOtherFrequency(mapping, profile) ? [] : ['frequency_khz']),
  ];
  const numbers = mapping.columns.filter(({ to }) => COLUMN_BY_NAME.get(to)?.type === 'number');
  const table = decimalEvidence(numbers.flatMap(({ from }) => profile.columns[from[0] ?? -1] ?? []));
  const settled = mapping.columns.filter((mapped) => !rivals.has(targetOf(mapped)));
  const keys = contests.map((question) => JSON.stringify(question));
  return [
    ...contests.filter((_, index) => keys.indexOf(keys[index] ?? '') === index),
    ...missing.map((to): MappingQuestion => ({ kind: 'missing-column', to })),
    ...settled.flatMap((mapped) => {
      const column = profile.columns[mapped.from[0] ?? -1];
      return column === undefined ? [] : columnQuestions(mapped, column, table);
    }),
  ];
};
