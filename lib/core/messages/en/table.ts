import type { Formatters } from '../../formatters';

/** Tables and figures of every screen. */
export const table = (f: Formatters) => ({
  search: 'Search',
  shown: (p: { shown: number; all: number; rows: string }) =>
    p.shown === p.all ? `${f.number(p.all)} ${p.rows}` : `${f.number(p.shown)} of ${f.number(p.all)} ${p.rows}`,
  rows: 'rows',
  sortBy: (p: { column: string }) => `Sort by ${p.column}`,
  none: 'No row fits.',
  noneRemedy: 'Shorten the search.',
  nothing: 'Nothing to list.',
  nothingRemedy: 'Show all people again in the bar above, or choose another value.',
  printedPart: (p: { printed: number; all: number }) =>
    `Printed: the first ${f.number(p.printed)} of ${f.number(p.all)} rows. The CSV file holds all of them.`,
  headerWithUnit: (p: { title: string; unit: string }) => (p.unit === '' ? p.title : `${p.title}, ${p.unit}`),
  behind: 'The table behind this figure',
  inWords: 'In words',
  saveFigure: 'Save figure as SVG',
  pointsHint: 'Arrow keys move along the points.',
  empty: '–',
  /** Columns that only a file holds: what stands beside the table on screen. */
  facts: {
    value: 'Value',
    equation: 'Equation',
    visits: 'Visits with the value',
    inside: 'Visits inside the group of the equation',
  },
});
