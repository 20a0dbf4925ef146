import type { DueRow } from '../../../lib/cohort/types/due-lists';
import type { Formatters } from '../../../lib/core/formatters';
import type { Messages } from '../../../lib/core/messages/en';
import { sheetFacts } from './sheet-facts';

export interface SheetPage {
  readonly title: string;
  readonly rows: readonly DueRow[];
}

/** What an A4 page surely holds in the print style: lines, and letters on a line. */
const LINES = 58;
const LETTERS = 112;
/** The line between two clients and the room around it. */
const BETWEEN = 0.7;

type Words = Messages['visitSheet'];

/** How many printed lines a client takes: the name, then each fact. */
const linesOf = (row: DueRow, words: Words, f: Formatters): number =>
  sheetFacts(row, words, f).reduce(
    (lines, [term, fact]) => lines + Math.ceil((term.length + 2 + fact.length) / LETTERS),
    1 + BETWEEN,
  );

const cut = (rows: readonly DueRow[], words: Words, f: Formatters): readonly (readonly DueRow[])[] => {
  const pages: DueRow[][] = [];
  let left = 0;
  for (const row of rows) {
    const lines = linesOf(row, words, f);
    const page = pages.at(-1);
    if (page === undefined || lines > left) {
      pages.push([row]);
      left = LINES - lines;
    } else {
      page.push(row);
      left -= lines;
    }
  }
  return pages;
};

/** A page a day, numbered where a day has more people than fit on one; who is overdue has no day and stands together. */
export const sheetPages = (rows: readonly DueRow[], words: Words, f: Formatters): readonly SheetPage[] => {
  const days = new Map<string, DueRow[]>();
  for (const row of rows) {
    const title = row.when === 'overdue' ? words.overdue : f.weekday(row.due);
    days.set(title, [...(days.get(title) ?? []), row]);
  }
  return [...days].flatMap(([title, ofDay]) => {
    const pages = cut(ofDay, words, f);
    return pages.map((ofPage, at) => ({
      title: words.pageOf({ title, page: at + 1, pages: pages.length }),
      rows: ofPage,
    }));
  });
};
