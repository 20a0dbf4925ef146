import type { DueRow } from '../cohort/types/due-lists';
import { tableFile, type MadeFile } from './table-file';

type Column = 'client' | 'familyName' | 'givenName' | 'program' | 'what' | 'week' | 'due' | 'windowTo' | 'last';

interface Words {
  readonly columns: Readonly<Record<Column, string>>;
  readonly review: string;
  readonly visit: string;
}

/** Whom to invite, for a letter system: ids and names, so the file's own name says nobody's. */
export const invitationsFile = (rows: readonly DueRow[], words: Words, dataVersion: string): MadeFile =>
  tableFile(
    'invitations',
    dataVersion,
    (['client', 'familyName', 'givenName', 'program', 'what', 'week', 'due', 'windowTo', 'last'] as const).map(
      (column) => ({ title: words.columns[column] }),
    ),
    rows.map((row) => [
      row.client,
      row.familyName,
      row.givenName,
      row.program,
      row.windowTo === null ? words.visit : words.review,
      row.week,
      row.due,
      row.windowTo,
      row.last?.date ?? null,
    ]),
  );
