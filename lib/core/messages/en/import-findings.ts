import type { Formatters } from '../../formatters';

/** Words of the table of everything that import has to say about a row or a cell. */
export const importFindings = (f: Formatters) => ({
  title: 'Row by row',
  none: 'Nothing to remark on any row.',
  filterLabel: 'Show',
  all: 'All',
  kind: {
    refused: 'not accepted',
    question: 'question',
    warning: 'warning',
    duplicate: 'same reading twice',
    changed: 'read as something else',
    'set-aside': 'set aside',
    erased: 'erased person',
  },
  kinds: {
    refused: 'Not accepted',
    question: 'Questions',
    warning: 'Warnings',
    duplicate: 'Same reading twice',
    changed: 'Read as something else',
    'set-aside': 'Set aside',
    erased: 'Erased people',
  },
  columns: {
    kind: 'Verdict',
    file: 'File',
    line: 'Line',
    column: 'Column',
    value: 'Value',
    message: 'What was found',
    remedy: 'What to do',
  },
  shortened: (p: { text: string; length: number }) => `${p.text}… (${f.number(p.length)} characters)`,
  emptyValue: 'empty',
  note: 'The files stay as they are. Correct a value where it was recorded, export again, and import again: equal rows count once.',
  report: 'Save the report as CSV',
  reportNote:
    'The report holds every row that was not accepted or that changed, with its reason. Corrected there, the same file can be imported again and completes this import; nothing comes in twice.',
  reportFailed: 'The report could not be made.',
  part: (p: { shown: number; of: number }) =>
    `The first ${f.number(p.shown)} of ${f.number(p.of)} remarks stand here; the report holds them all.`,
  rowsWord: (p: { n: number }) => f.plural(p.n, 'remark', 'remarks'),
  search: 'Search the remarks',
  fileName: 'import-findings',
});
