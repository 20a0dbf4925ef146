import type { Settings } from '../../../lib/cohort/settings';
import type { AppError } from '../../../lib/core/app-error';
import type { Mapping } from '../../../lib/import/mapping';
import type { ReadTable } from '../../../lib/import/plan';
import type { GivenFile, ImportDraft, ReadFiles } from '../../../lib/workspace/workspace';
import { isCanonical } from './mapping-view';

/** A table of the given files with what was decided about it so far. */
export interface WorkTable {
  /** Which of the given files. */
  readonly file: number;
  /** As it is called on screen: the file, and the table where the file holds several. */
  readonly name: string;
  readonly table: ReadTable;
  readonly mapping: Mapping;
  readonly questions: ReadTable['questions'];
  readonly used: boolean;
}

/** An import that is being prepared. */
export interface ImportWork {
  readonly given: readonly GivenFile[];
  readonly read: ReadFiles;
  readonly tables: readonly WorkTable[];
  readonly settings: Settings;
  /** An own clinic's id, or `new`. */
  readonly into: string;
}

/** A table that names nobody is not used by itself where the file holds others. */
const usedByItself = (table: ReadTable, among: number): boolean =>
  among === 1 || table.mapping.columns.some(({ to }) => to === 'client_id');

const nameOf = (file: string, table: string): string => (table === '' ? file : `${file} (${table})`);

/** What was read, as the first draft: every suggestion taken, nothing decided. */
export const startWork = (
  given: readonly GivenFile[],
  read: ReadFiles,
  settings: Settings,
  into: string,
): ImportWork => ({
  given,
  read,
  settings,
  into,
  tables: read.files.flatMap((file, index) =>
    file.tables.map((table) => ({
      file: index,
      name: nameOf(file.name, table.table),
      table,
      mapping: table.mapping,
      questions: table.questions,
      used: usedByItself(table, file.tables.length),
    })),
  ),
});

/** What the use cases plan and commit: the used tables alone. */
export const toDraft = (work: ImportWork): ImportDraft => ({
  given: work.given,
  read: work.read,
  settings: work.settings,
  into: work.into,
  tables: work.tables
    .filter(({ used }) => used)
    .map(({ file, table, mapping }) => ({ file, table: table.table, mapping })),
});

const sameHeader = (one: readonly string[], other: readonly string[]): boolean =>
  one.length === other.length && one.every((cell, place) => cell === other[place]);

/** Freshly read tables with what a person had decided about the same tables before. */
export const withEditsOf = (fresh: ImportWork, before: ImportWork): ImportWork => ({
  ...fresh,
  tables: fresh.tables.map((table) => {
    const earlier = before.tables.find((one) => one.file === table.file && one.table.table === table.table.table);
    const decided =
      earlier !== undefined &&
      earlier.mapping !== earlier.table.mapping &&
      sameHeader(earlier.mapping.header, table.mapping.header);
    return decided
      ? { ...table, mapping: earlier.mapping, questions: earlier.questions, used: earlier.used }
      : { ...table, used: earlier?.used ?? table.used };
  }),
});

export const withTable = (work: ImportWork, index: number, change: Partial<WorkTable>): ImportWork => ({
  ...work,
  tables: work.tables.map((table, place) => (place === index ? { ...table, ...change } : table)),
});

/** Why nothing of what was given could be read; undefined where something could. */
export const unreadError = (read: ReadFiles): AppError | undefined => {
  const errors = read.files.map(({ error }) => error);
  return errors.includes(null) ? undefined : (errors[0] ?? undefined);
};

export const openColumnQuestions = (work: ImportWork): number =>
  work.tables.reduce((sum, { used, questions }) => sum + (used ? questions.length : 0), 0);

/** Whether a person has to look at the columns: something is open, or a header is new and worded in its own way. */
export const needsMapping = (work: ImportWork): boolean =>
  work.tables.every(({ used }) => !used) ||
  openColumnQuestions(work) > 0 ||
  work.tables.some(({ used, table, mapping }) => used && !table.remembered && !isCanonical(table, mapping));
