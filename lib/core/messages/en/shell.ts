import type { Formatters } from '../../formatters';

/** The frame around every screen: navigation, banner, opening, failing, keys. */
export const shell = (f: Formatters) => ({
  skip: 'Skip to the content',
  navigation: 'Screens',
  screens: {
    thisWeek: 'This week',
    contact: 'To contact',
    programs: 'Programs',
    vectors: 'Vectors',
    indices: 'Indices',
    clients: 'Clients',
    repeatability: 'Repeatability',
    import: 'Import',
    methods: 'Methods',
    settings: 'Settings',
  },
  dataLine: (p: { asOf: string; version: string }) => `Data to ${p.asOf} · version ${p.version}`,
  opening: 'Opening the clinic',
  openingDetail: 'Reading the visits on this machine. Nothing is sent anywhere.',
  openingLong: 'Still reading. A large file takes longer; this page answers as soon as it is done.',
  retry: 'Try again',
  nothingLost: 'Nothing was lost: what was imported is kept unchanged.',
  failedTitle: 'The clinic could not be opened',
  unexpected: 'Something failed that should not.',
  unexpectedRemedy: 'Try again; if it stays, reload the page. The imported files are untouched.',
  loading: 'Calculating',
  loadingRows: (p: { visits: number }) => f.plural(p.visits, 'Reading # visit', 'Reading # visits'),
  loadingLong: 'This takes longer than usual. You may wait or cancel.',
  cancel: 'Cancel',
  cancelled: 'Cancelled before it was done.',
  cancelledRemedy: 'Try again when you like; nothing was changed.',
  notFound: 'There is no such page',
  notFoundDetail: 'The address leads nowhere in this app. Nothing was lost.',
  toThisWeek: 'Go to This week',
  preferences: 'Display',
  theme: 'Theme',
  themes: { auto: 'As the system', light: 'Light', dark: 'Dark' },
  mass: 'Mass',
  length: 'Height',
  dates: 'Dates',
  massUnits: { kg: 'kilograms', lb: 'pounds' },
  lengthUnits: { cm: 'centimetres', 'ft-in': 'feet and inches' },
  dateForms: { 'en-GB': '4 March 2025', 'en-US': 'March 4, 2025' },
  keys: 'Keys',
  keysTitle: 'What the keys do',
  close: 'Close',
  keyList: [
    { keys: 'Tab', does: 'to the next control, table or figure' },
    { keys: '↑ ↓', does: 'along the rows of a table' },
    { keys: '← → ↑ ↓', does: 'along the points of a figure' },
    { keys: 'Home, End', does: 'to the first or last row or point' },
    { keys: 'Enter', does: 'opens what the active row or point stands for' },
    { keys: '/', does: 'to the search of the table' },
    { keys: 'Ctrl Z, ⌘ Z', does: 'undoes the last change, outside a text field' },
    { keys: 'Ctrl Shift Z', does: 'does again what was undone' },
    { keys: '?', does: 'this list' },
    { keys: 'Esc', does: 'closes it' },
  ],
  print: 'Print this page',
  acts: 'Undo and redo',
  dismiss: 'Close this line',
  changedByPeople: (p: { corrections: number; setAside: number }) =>
    [
      ...(p.corrections === 0
        ? []
        : [f.plural(p.corrections, '# value was corrected by the clinic', '# values were corrected by the clinic')]),
      ...(p.setAside === 0
        ? []
        : [f.plural(p.setAside, '# reading was set aside by the clinic', '# readings were set aside by the clinic')]),
    ].join('; '),
  byProcedure: (p: { visits: number; all: number; pairs: number; comparable: number }) =>
    `By procedure: at ${f.number(p.visits)} of ${f.number(p.all)} visits a declared procedure stands for conditions that were not recorded, and ${f.number(p.pairs)} of the clinic’s ${f.number(p.comparable)} comparable pairs of baseline and latest visit rest on it.`,
  leftOut: (p: { setAside: number }) =>
    f.plural(
      p.setAside,
      '# reading is set aside by the clinic and stands in no count here.',
      '# readings are set aside by the clinic and stand in no count here.',
    ),
  exportNotListed: 'The file was saved, but it could not be entered in the list of exports.',
  firstStart: {
    label: 'Where the data lies',
    text: 'What you import lies in this browser profile on this machine, and nowhere else. Another log-in on this PC does not see it, and clearing the browser’s data deletes it: make backups. If you have read and closed this line here before, this browser forgets its data when it closes.',
    more: 'Keeping, in Settings',
    close: 'Understood',
  },
  clearedSince: {
    label: 'This browser cleared data',
    gone: (p: { date: string | null }) =>
      `The clinics that were kept here are gone: the browser’s data was cleared${p.date === null ? '' : ` since the last visit on ${p.date}`}. Restore the last backup.`,
    partly: (p: { date: string | null }) =>
      `A part of this page’s data was cleared${p.date === null ? '' : ` since the last visit on ${p.date}`}; the clinics are here. It may be a browser that clears when it closes: make a backup.`,
  },
  reader: {
    label: 'This tab reads only',
    text: 'Another tab of this browser writes to this clinic. This tab follows what is done there.',
    takeOver: 'Take over',
  },
  locked: {
    title: 'The clinic is locked',
    lead: 'It is sealed with a passphrase. Without it nobody can read the clinic, and there is no other key.',
    unlock: 'Unlock',
    unlocking: 'Unlocking',
  },
  /** By the error's code: what the page says in the place of the clinic, what is true of the data, what to try beside the error's own remedy. */
  gate: {
    newer_manifest: {
      title: 'A newer Driftline wrote this clinic',
      data: 'The clinic was left as it is: an older app would not understand all of it.',
      tries: ['Load the page again: the server may hold the newer version already.'],
    },
    newer_app: {
      title: 'This tab is older than another one',
      data: 'This tab stopped, so that it does not write what the newer one would not understand.',
      tries: [],
    },
    denied: {
      title: 'This browser keeps nothing for this page',
      data: 'Nothing can be kept, so nothing was opened. What was kept earlier is not touched.',
      tries: ['Leave a private window, or another strict mode.', 'Use another browser or another browser profile.'],
    },
    cleared: {
      title: 'The clinic’s data was cleared from this browser',
      data: 'What was kept here is gone from this browser profile. Backups and shared files elsewhere are not touched.',
      tries: [
        'Load the page again: it then starts anew, and a backup can be restored under Settings.',
        'Look whether this browser clears site data when it closes, and allow this address to keep it.',
      ],
    },
    damaged: {
      title: 'What is kept in this browser is damaged',
      data: 'Nothing was written over it.',
      tries: [],
    },
    engine_not_started: {
      title: 'The clinic could not be opened',
      data: 'Nothing was lost: what was imported is kept unchanged.',
      tries: [
        'Load the page again, after closing tabs and programs that are not needed.',
        'If it stays, tell whoever looks after this installation: the folder “duckdb-…” beside this page may be missing or incomplete.',
        'Use a current version of the browser: an old one cannot run this database.',
      ],
    },
    unreadable_manifest: {
      title: 'This clinic cannot be read',
      data: 'Nothing was written over it.',
      tries: [],
    },
    file_missing: {
      title: 'A kept file of this clinic is damaged',
      data: 'Nothing was written over it. The other files of the clinic are whole.',
      tries: [],
    },
    empty_clinic: {
      title: 'This clinic holds no file',
      data: 'Its settings and its log are kept.',
      remedy: 'Undo the last step, or open another clinic; Import begins a new one from there.',
      tries: [],
    },
    no_clinic: {
      title: 'No clinic is kept in this browser',
      data: 'A clinic begins with its first file, with a backup, or with the demo.',
      remedy: 'Restore a backup, or open the demo: Import begins a clinic of your own from there.',
      tries: [],
    },
  } as Readonly<
    Record<
      string,
      { readonly title: string; readonly data: string; readonly remedy?: string; readonly tries: readonly string[] }
    >
  >,
  withoutImport: (p: { file: string }) => `Open the clinic without ${p.file}`,
  undoLast: 'Undo the last step',
  otherClinics: 'Clinics in this browser',
  openDemo: 'Open the demo',
  tryThis: 'What to try',
});
