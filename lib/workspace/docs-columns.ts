import type { Column, ColumnType, Limits } from '../import/column';
import { COLUMNS } from '../import/columns';
import { docsTable } from './docs-table';

const TYPE: Readonly<Record<ColumnType, string>> = {
  text: 'text',
  date: 'date, YYYY-MM-DD',
  time: 'time, HH:MM',
  integer: 'whole number',
  number: 'number',
  flag: 'y or n',
  choice: 'one of the words',
};

const ROLE: Readonly<Record<Column['role'], string>> = {
  identity: 'who',
  enrolment: 'program',
  visit: 'visit',
  body: 'body',
  impedance: 'impedance',
  condition: 'condition of the visit',
  caution: 'caution',
  exported: 'as exported',
  other: 'other',
};

const range = ([low, high]: readonly [number, number]): string => `${String(low)}–${String(high)}`;

const said = (limits: Limits | undefined): string =>
  [
    limits?.positive === true ? 'refused at 0 and below' : '',
    limits?.ask === undefined ? '' : `set aside with a question outside ${range(limits.ask)}`,
    limits?.warn === undefined ? '' : `warning outside ${range(limits.warn)}`,
    limits?.rareAbove === undefined ? '' : `called rare above ${String(limits.rareAbove)}`,
  ]
    .filter((text) => text !== '')
    .join('; ');

const words = ({ choices, lenient }: Column): string =>
  choices === undefined
    ? ''
    : `${choices.join(', ')}${lenient === true ? ' (another word: unknown, with a warning)' : ''}`;

/** The columns of the visit export as a short table: name, type and unit, notes. */
export const docsColumns = (): string =>
  docsTable(
    ['column', 'type, unit', 'notes'],
    COLUMNS.map((column) => [
      `\`${column.name}\``,
      [
        column.choices === undefined ? TYPE[column.type] : column.choices.join(', '),
        column.unit === '1' ? '' : column.unit,
      ]
        .filter((text) => text !== undefined && text !== '')
        .join('; '),
      column.notes,
    ]),
  );

/** The codebook of the visit export: every column with its type, UCUM unit, words and limits. */
export const docsCodebook = (): string =>
  docsTable(
    ['column', 'about', 'type', 'unit (UCUM)', 'words', 'limits', 'notes'],
    COLUMNS.map((column) => [
      `\`${column.name}\``,
      ROLE[column.role],
      TYPE[column.type],
      column.unit ?? '',
      words(column),
      said(column.limits),
      column.notes,
    ]),
  );
