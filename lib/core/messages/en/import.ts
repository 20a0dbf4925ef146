import type { Formatters } from '../../formatters';
import { importClinic } from './import-clinic';
import { importColumnQuestions } from './import-column-questions';
import { importConditions } from './import-conditions';
import { importErrorSource } from './import-error-source';
import { importFindings } from './import-findings';
import { importMapping } from './import-mapping';
import { importStack } from './import-stack';

/** Words of the Import screen. */
export const importScreen = (f: Formatters) => {
  const size = (bytes: number): string =>
    bytes < 1_000_000
      ? `${f.number(Math.max(1, Math.ceil(bytes / 1000)))}\u00A0kB`
      : `${f.number(bytes / 1_000_000, 1)}\u00A0MB`;
  return {
    title: 'Import',
    heading: {
      idle: 'Drop the visit export here.',
      reading: 'Reading the files…',
      judging: 'Judging the rows…',
      planned: (p: { accepted: number; rows: number; questions: number }) =>
        `${f.number(p.accepted)} of ${f.plural(p.rows, '# row', '# rows')} can be used as they are` +
        (p.questions === 0 ? '.' : `; ${f.plural(p.questions, 'one question is', '# questions are')} open.`),
      failed: 'These files cannot be read as a visit export.',
      keeping: 'Keeping the files…',
      done: (p: { clinic: string }) => `${p.clinic} is open with these files.`,
    },
    compositionOnly:
      'These files hold exported values without resistance and reactance. Changes of the exported values are judged all the same; vectors need R and Xc at 50 kHz, and computed fat-free mass needs them with height, weight, age and sex.',
    columnsRead: 'How the columns were read',
    lead: {
      idle: 'One row per reading or per visit, in any wording: what is not clear is asked. Nothing is sent anywhere: the file is read in this browser and stays on this machine.',
      reading: 'Nothing is kept before you say so.',
      judging:
        'Every row is read with your answers and checked. A large file takes some minutes; Cancel changes nothing.',
      planned: 'This is what would happen. Nothing is kept yet; the import does exactly what stands here.',
      failed: 'Nothing was changed and nothing was lost.',
      keeping: 'The files are written, read back and checked before they count.',
      done: 'The files are kept unchanged in this browser. Every screen now shows them.',
    },
    zone: {
      text: 'Drop files or a folder here, or anywhere on this window',
      or: 'or',
      choose: 'Choose files',
      chooseFolder: 'Choose a folder',
      formats:
        'CSV and other text tables, XLSX, Parquet, SAS transport files, FHIR observations, or a zip of them; many at once.',
      columns: 'Needed: who was measured, and when. Everything else decides only what can be computed.',
      nothing: 'The folder holds no file.',
    },
    windowDrop: 'Drop the files to see what would be imported. Nothing is kept before you say so.',
    progress: {
      label: 'How much is read',
      cancel: 'Cancel',
      starting: 'Starting',
      bytes: (p: { done: number; total: number | null }) =>
        p.total === null ? `${size(p.done)}` : `${size(p.done)} of ${size(p.total)}`,
      rows: (p: { rows: number }) => f.plural(p.rows, '# row', '# rows'),
      files: (p: { files: number; bytes: number }) => `${f.plural(p.files, '# file', '# files')}, ${size(p.bytes)}`,
      step: {
        reading: 'Reading',
        hashing: 'Checking the bytes',
        judging: 'Judging the rows',
        keeping: 'Writing and reading back',
        building: 'Building the tables',
        sealing: 'Sealing',
        packing: 'Packing',
      },
    },
    discard: 'Discard this plan',
    commit: (p: { rows: number }) => `Import ${f.plural(p.rows, '# row', '# rows')}`,
    clinicName: 'Name of your clinic',
    into: { label: 'Import into', new: 'a new clinic' },
    settled: 'The plan is up to date.',
    updating: 'Working the plan out again…',
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
      setAside: 'set aside by a person',
      erased: 'of people who were erased',
      warnings: 'warnings',
      corrected: 'corrected cells',
      enrolments: 'enrolments joined',
      of: (p: { n: number; of: number }) => `${f.number(p.n)} of ${f.number(p.of)}`,
      warningsNote: 'accepted, with a remark',
      withKept: (p: { rows: number }) =>
        `Counted with the ${f.plural(p.rows, 'row', '# rows')} that the clinic’s files hold already.`,
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
      withdrawn: (p: { name: string; n: number }) =>
        `${p.name}: ${f.plural(p.n, '# record', '# records')} that the file itself marks as withdrawn or entered in error stayed out.`,
      rowsWord: (p: { n: number }) => f.plural(p.n, 'file', 'files'),
      fileName: 'files',
      table: 'Format',
      enrolment: 'enrolment',
      conversionsTitle: 'Converted and read another way',
      conversionsNote: 'In brackets: how many cells. The files keep what they say.',
      converted: (p: { from: string; to: string; columns: readonly string[] }) =>
        p.to === ''
          ? `“${p.from}” read as unknown: ${f.list(p.columns)}.`
          : `Converted from ${p.from} to ${p.to}: ${f.list(p.columns)}.`,
      orderRead: (p: { order: string; columns: readonly string[] }) =>
        `Dates read as ${p.order}: ${f.list(p.columns)}.`,
      commaRead: (p: { columns: readonly string[] }) => `Decimal comma read as a decimal point: ${f.list(p.columns)}.`,
      readAsUnknown: (p: { word: string; columns: readonly string[] }) =>
        `“${p.word}” read as unknown: ${f.list(p.columns)}.`,
      withCells: (p: { column: string; cells: number }) => `${p.column} (${f.number(p.cells)})`,
    },
    findings: importFindings(f),
    mapping: importMapping(f),
    columnQuestions: importColumnQuestions(f),
    questions: importStack(f),
    procedure: importConditions(f),
    errorSource: importErrorSource(f),
    clinic: importClinic(f),
    clinics: {
      title: 'Which clinic is open',
      open: (p: { name: string }) => `Open: ${p.name}.`,
      settings: 'Open, rename or delete a clinic in Settings',
      demo: 'Open the demo clinic',
      demoPlain: 'Open the demo without condition columns',
      defaultName: 'Your clinic',
      noOwn: 'Your own clinic begins with the first import.',
      demoNote: 'Invented people, invented programs; every screen is full.',
      demoPlainNote: 'As most first exports look: nothing about the conditions is recorded.',
    },
    done: {
      imported: (p: { rows: number; files: number; held: number }) =>
        `${f.plural(p.rows, '# row', '# rows')} from ${f.plural(p.files, '# file', '# files')}.` +
        (p.held === p.rows ? '' : ` The clinic now holds ${f.number(p.held)}.`),
      nothingAdded: 'The clinic held these files already, so no row was added.',
      waiting: (p: { n: number }) => f.plural(p.n, '# row waits for an answer.', '# rows wait for an answer.'),
      answer: 'Answer the questions',
      notBackedUp: 'This clinic lies in this browser profile alone.',
      backUp: 'Back it up',
      data: (p: { version: string; asOf: string }) => `Data to ${p.asOf}, version ${p.version}.`,
      changedTitle: 'What changed since last time',
      visits: (p: { n: number }) => f.plural(p.n, '# visit came in', '# visits came in'),
      newClients: (p: { n: number }) => f.plural(p.n, '# person is new', '# people are new'),
      changedResults: (p: { n: number }) =>
        f.plural(p.n, '# comparison changed its result', '# comparisons changed their result'),
      toTalkTo: (p: { n: number }) => f.plural(p.n, '# person to talk to', '# people to talk to'),
      newToTalkTo: 'Newly among them',
      nothingNew: 'Nobody is newly to talk to.',
      undo: 'Take this import out again',
      undone: 'The import was taken out again. The files on your disk are untouched.',
      toFirst: 'See this week',
      more: 'Import more files',
    },
    error: {
      unreadable: (p: { name: string }) => `${p.name} could not be read from the disk.`,
      unreadableRemedy:
        'It may have been moved, or another program holds it. Close it there and choose it again. Nothing was changed.',
    },
  };
};
