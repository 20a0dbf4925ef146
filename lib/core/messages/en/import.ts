import type { Formatters } from '../../formatters';

/** Words of the Import screen. */
export const importScreen = (f: Formatters) => ({
  title: 'Import',
  heading: {
    idle: 'Drop the visit export here.',
    reading: 'Reading the files…',
    planned: (p: { accepted: number; rows: number; questions: number }) =>
      `${f.number(p.accepted)} of ${f.plural(p.rows, '# row', '# rows')} can be used as they are` +
      (p.questions === 0 ? '.' : `; ${f.plural(p.questions, 'one question is', '# questions are')} open.`),
    failed: 'These files cannot be read as a visit export.',
    keeping: 'Keeping the files…',
    done: (p: { clinic: string }) => `${p.clinic} is open with these files.`,
  },
  lead: {
    idle: 'One row per reading, as CSV. Nothing is sent anywhere: the file is read in this browser and stays on this machine.',
    reading: 'Nothing is kept before you say so.',
    planned: 'This is what would happen. Nothing is kept yet; the import does exactly what stands here.',
    failed: 'Nothing was changed and nothing was lost.',
    keeping: 'The files are written, read back and checked before they count.',
    done: 'The files are kept unchanged in this browser. Every screen now shows them.',
  },
  zone: {
    text: 'Drop CSV files here, or anywhere on this window',
    or: 'or',
    choose: 'Choose files',
    columns: 'Needed: client_id and visit_date. Everything else decides only what can be computed.',
  },
  windowDrop: 'Drop the files to see what would be imported. Nothing is kept before you say so.',
  progress: (p: { files: number; kilobytes: number }) =>
    `${f.plural(p.files, '# file', '# files')}, ${f.number(p.kilobytes)} kB`,
  discard: 'Discard this plan',
  commit: (p: { rows: number }) => `Import ${f.plural(p.rows, '# row', '# rows')}`,
  clinicName: 'Name of your clinic',
  commitNothing: 'There is no row to import.',
  commitNote: (p: { demo: boolean; held: number }) =>
    (p.demo ? 'The demo clinic stays as it is; this opens your own clinic. ' : '') +
    (p.held === 0
      ? ''
      : `${f.plural(p.held, '# row waits', '# rows wait')} for an answer and can be decided later; nothing is lost.`),
  counts: {
    planned: 'What becomes of the rows',
    current: 'What the files of this clinic hold',
    accepted: 'accepted',
    held: 'with a question',
    refused: 'not accepted',
    duplicates: 'the same reading twice',
    warnings: 'warnings',
    of: (p: { n: number; of: number }) => `${f.number(p.n)} of ${f.number(p.of)}`,
    warningsNote: 'accepted, with a remark',
  },
  period: (p: { clients: number; first: string; last: string }) =>
    `${f.plural(p.clients, '# person', '# people')}, visits from ${p.first} to ${p.last}.`,
  files: {
    title: 'The files, as understood',
    current: 'Files of this clinic',
    name: 'File',
    rows: 'Rows',
    size: 'Size, kB',
    encoding: 'Encoding',
    delimiter: 'Delimiter',
    used: 'Columns used',
    kept: 'Kept, not used',
    noneKept: 'none',
    delimiterName: { ',': 'comma', ';': 'semicolon', '\t': 'tab', '|': 'bar' } as Readonly<Record<string, string>>,
    usedCount: (p: { used: number; of: number }) => `${f.number(p.used)} of ${f.number(p.of)}`,
    columnsOf: (p: { name: string }) => `Columns of ${p.name}`,
    rowsWord: (p: { n: number }) => f.plural(p.n, 'file', 'files'),
    fileName: 'files',
  },
  findings: {
    title: 'Row by row',
    none: 'Nothing to remark on any row.',
    filterLabel: 'Show',
    all: 'All',
    kind: { refused: 'not accepted', question: 'question', warning: 'warning', duplicate: 'same reading twice' },
    kinds: { refused: 'Not accepted', question: 'Questions', warning: 'Warnings', duplicate: 'Same reading twice' },
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
    note: 'Line 1 is the header. The files stay as they are: correct a value where it was recorded, export again, and import again; equal rows count once.',
    rowsWord: (p: { n: number }) => f.plural(p.n, 'remark', 'remarks'),
    search: 'Search the remarks',
    fileName: 'import-findings',
  },
  questions: {
    title: 'Questions',
    progress: (p: { at: number; of: number }) => `Question ${f.number(p.at)} of ${f.number(p.of)}`,
    farOffBefore: (p: { column: string }) => `Is ${p.column} = `,
    farOffAfter: ' what was measured?',
    where: (p: { client: string; date: string; file: string; line: number }) =>
      `${p.client}, visit of ${p.date}; ${p.file}, line ${f.number(p.line)}.`,
    keep: 'Yes, keep it',
    refuse: 'No, do not accept the row',
    later: 'Decide later',
    kept: 'Answered: keep it.',
    refused: 'Answered: do not accept the row.',
    change: 'Change the answer',
    open: 'Not answered: the row is set aside until then.',
    allAnswered: 'Every question is answered.',
  },
  procedure: {
    title: 'Conditions',
    question: 'Do you measure by a written procedure?',
    missing: (p: { columns: readonly string[] }) =>
      `The files do not say under which conditions people were measured: ${f.list(p.columns)} ${
        p.columns.length === 1 ? 'is' : 'are'
      } missing or empty in every row.`,
    explanation:
      'If your clinic keeps a written procedure, declare what it requires. These conditions then count as met by procedure, every n says so, and a recorded “no” still beats it. Without one they stay unknown.',
    conditionsLabel: 'The procedure requires',
    all: 'All of these',
    initials: 'Your initials',
    initialsNote: 'Stored with the declaration.',
    declare: 'Declare the procedure',
    without: 'There is no written procedure',
    declared: (p: { n: number; site: string | null; from: string | null; to: string | null; initials: string }) => {
      const where = p.site === null ? 'all sites' : p.site;
      const since = p.from === null ? '' : ` from ${p.from}`;
      const until = p.to === null ? '' : ` to ${p.to}`;
      const when = p.from === null && p.to === null ? ', all dates' : `,${since}${until}`;
      return `${f.plural(p.n, '# condition counts', '# conditions count')} as met by procedure: ${where}${when}${
        p.initials === '' ? '' : ` (declared by ${p.initials})`
      }.`;
    },
    withoutAnswered: 'Answered: no written procedure. The conditions stay unknown.',
    needsInitials: 'Write your initials, so that it is known who declared it.',
    needsCondition: 'Choose at least one condition.',
    change: 'Change the answer',
    condition: {
      fasting: 'fasting for 8 hours or more',
      contact: 'contact of the electrodes checked',
      exercise: 'no exercise for 12 hours',
      alcohol: 'no alcohol for 12 hours',
      large_drink: 'no large drink before',
      bladder: 'bladder emptied',
      rested: 'rested before measuring',
      acute_illness: 'not during acute illness',
      medication: 'after a change of medication the visit is postponed',
    } as Readonly<Record<string, string>>,
  },
  clinics: {
    title: 'Which clinic is open',
    open: (p: { name: string }) => `Open: ${p.name}.`,
    demo: 'Open the demo clinic',
    demoPlain: 'Open the demo without condition columns',
    own: 'Open your own clinic',
    defaultName: 'Your clinic',
    noOwn: 'Your own clinic begins with the first import.',
    demoNote: 'Invented people, invented programs; every screen is full.',
    demoPlainNote: 'As most first exports look: nothing about the conditions is recorded.',
  },
  done: {
    imported: (p: { rows: number; files: number }) =>
      `${f.plural(p.rows, '# row', '# rows')} from ${f.plural(p.files, '# file', '# files')}.`,
    waiting: (p: { n: number }) => f.plural(p.n, '# row waits for an answer.', '# rows wait for an answer.'),
    data: (p: { version: string; asOf: string }) => `Data to ${p.asOf}, version ${p.version}.`,
    toFirst: 'See this week',
    more: 'Import more files',
  },
  error: {
    unreadable: (p: { name: string }) => `${p.name} could not be read from the disk.`,
    unreadableRemedy:
      'It may have been moved, or another program holds it. Close it there and choose it again. Nothing was changed.',
  },
});
