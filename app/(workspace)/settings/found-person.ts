import type { Session, Workspace } from '../../../lib/workspace/workspace';

type Row = Awaited<ReturnType<Workspace['rowsOf']>>[number];

/** A person of the open clinic and where the rows stand. */
export interface FoundPerson {
  readonly client: string;
  readonly rows: readonly Pick<Row, 'row' | 'file'>[];
}

/** What erasing a person takes along, counted. */
export interface ErasureCounts {
  readonly rows: number;
  readonly files: number;
  readonly notes: number;
  readonly corrections: number;
}

const keyOf = ({ source, line, part }: Row['row']): string => JSON.stringify([source, line, part]);

/** Counts what the open clinic holds about a person. */
export const erasureCounts = (
  person: FoundPerson,
  { notes, marks, corrections, setAside }: Pick<Session, 'notes' | 'marks' | 'corrections' | 'setAside'>,
): ErasureCounts => {
  const own = new Set(person.rows.map(({ row }) => keyOf(row)));
  const isOwn = ({ row }: { readonly row: Row['row'] }): boolean => own.has(keyOf(row));
  const about = ({ client }: { readonly client: string }): boolean => client === person.client;
  return {
    rows: person.rows.length,
    files: new Set(person.rows.map(({ file }) => file)).size,
    notes: notes.filter(about).length + marks.filter(about).length,
    corrections: corrections.filter(isOwn).length + setAside.filter(isOwn).length,
  };
};
