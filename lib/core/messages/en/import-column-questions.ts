import type { Formatters } from '../../formatters';

/** Words of the questions about a file's columns. */
export const importColumnQuestions = (f: Formatters) => ({
  title: 'Question about the columns',
  progress: (p: { at: number; of: number }) => `Question ${f.number(p.at)} of ${f.number(p.of)}`,
  of: (p: { name: string }) => `· ${p.name}`,
  answer: 'Use this answer',
  later: 'Another question first',
  choose: 'choose',
  missing: {
    ask: (p: { target: string }) => `Which column holds the ${p.target}?`,
    why: {
      client_id: 'Without it no two visits can be known to be of one person.',
      visit_date: 'Without it no change can be placed in time.',
      program: 'An enrolment without its program says nothing.',
      frequency_khz: 'A heading names another frequency than 50 kHz. Vectors and equations hold at 50 kHz alone.',
    } as Readonly<Record<string, string>>,
    column: 'Column',
    joined: 'and a second column, joined by a space',
    or: 'or the same for every row',
    constant: 'The same for every row',
    wrong: 'Choose a column, or give one value for every row.',
    wrongDate: 'Write the date as YYYY-MM-DD.',
  },
  dateOrder: {
    ask: (p: { column: string; sample: string }) => `What does “${p.sample}” in ${p.column} mean?`,
    why: 'Which comes first, the day or the month, is not certain from the values. Every date of the column is read in the same order; in the wrong one, visits land on other days.',
    reading: (p: { order: string; date: string }) => `${p.date} (${p.order})`,
    unreadable: (p: { order: string }) => `no date in this order (${p.order})`,
    all: 'Use it for every date of this table that leaves the same open',
  },
  decimal: {
    ask: (p: { column: string; sample: string }) => `How large is “${p.sample}” in ${p.column}?`,
    why: 'The mark can be a decimal mark or a thousands mark. Every number of the column is read the same way; the wrong one makes a value a thousand times too large or too small.',
    reading: (p: { value: string; mark: string }) => `${p.value}: the decimal mark is a ${p.mark}`,
    mark: { '.': 'point', ',': 'comma' },
    unreadable: (p: { mark: string }) => `no number, where the decimal mark is a ${p.mark}`,
    all: 'Use it for every number of this table that leaves the same open',
  },
  words: {
    ask: (p: { column: string; target: string }) => `What do the words in ${p.column} mean as ${p.target}?`,
    askCode: (p: { column: string; target: string }) =>
      `Do these in ${p.column} give the ${p.target}, or stand for a missing one?`,
    whyCode:
      'They often stand for a missing value. Read as they stand, they are calculated with; unknown leaves the cell empty.',
    asItStands: 'as it stands',
    askSex: (p: { column: string }) => `How is sex coded in ${p.column}?`,
    why: 'These words are not known here, and a code is never guessed. What you say holds for every row of the column.',
    count: (p: { n: number }) => f.plural(p.n, 'in one row', 'in # rows'),
    word: (p: { word: string }) => `“${p.word}”`,
    needed: 'Say for each word what it means; “unknown” is an answer too.',
  },
  unit: {
    ask: (p: { column: string; target: string }) => `In which unit is the column ${p.column} (${p.target})?`,
    why: 'Neither the name nor the values say it for sure. Every number of the column is converted from the unit you choose.',
    reading: (p: { unit: string; values: string }) => `${p.unit}: ${p.values}`,
    same: (p: { unit: string }) => `${p.unit}: as they stand`,
  },
  several: {
    ask: (p: { target: string }) => `Which of these columns is the ${p.target}?`,
    why: 'More than one could be. The one you choose is calculated with; the others are kept as they are and not used.',
    option: (p: { name: string; samples: string }) => `${p.name}: ${p.samples}`,
    empty: 'empty in every row',
    place: (p: { name: string; place: number }) => `${p.name} (column ${f.number(p.place)})`,
    none: 'none of them',
  },
  sameHeader: {
    ask: (p: { name: string; n: number }) => `${f.number(p.n)} columns are named “${p.name}”. Which one counts?`,
    why: 'The others are kept, not used.',
  },
});
