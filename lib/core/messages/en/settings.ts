import type { Formatters } from '../../formatters';

/** Settings: clinics, who is here, words and units; the list of exports. */
export const settings = (f: Formatters) => ({
  title: 'Settings',
  headline: (p: { clinic: string }) => `How ${p.clinic} is kept, and who may read it`,
  lead: 'Everything here stays in this browser. Nothing is sent anywhere, and every change is in the log with its initials.',
  index: 'On this page',
  readerOnly: 'This tab reads only: changes are made in the tab that writes, or after taking over.',
  sections: {
    clinics: 'Clinics',
    who: 'Who is here',
    words: 'Words, units, level',
    programs: 'Programs',
    lean: 'Lean tissue',
    comparability: 'Rules, settings file',
    keeping: 'Keeping',
    passphrase: 'Passphrase',
    privacy: 'Privacy',
    exports: 'Exports',
    log: 'Log',
  },
  working: 'Working',
  done: 'Done.',
  cancelled: 'Stopped before it was done. The clinic is as it was.',
  clinics: {
    lead: 'Each clinic has its own files, settings and log. One is open at a time.',
    list: 'Clinics kept in this browser',
    isOpen: 'open',
    invented: 'invented data',
    sealed: 'sealed with a passphrase',
    open: 'Open',
    openNamed: (p: { name: string }) => `Open ${p.name}`,
    opened: (p: { name: string }) => `${p.name} is open.`,
    rename: 'Rename the open clinic',
    renameLabel: 'Name of the open clinic',
    renameAct: 'Rename',
    renamed: 'The clinic has its new name.',
    deleteAct: 'Delete …',
    deleteNamed: (p: { name: string }) => `Delete ${p.name}`,
    deleteTitle: (p: { name: string }) => `Delete ${p.name}?`,
    deleteWhat:
      'Its files, settings, notes and log are removed from this browser. Undo does not bring them back; only a backup file does.',
    deleteBackup: (p: { when: string | null }) =>
      p.when === null
        ? 'No backup of it is known to this browser.'
        : `The last backup that this browser knows of was made ${p.when}.`,
    deleteDemo: 'The demo is part of this app and can be put back at any time.',
    deleteConfirm: (p: { name: string }) => `Delete ${p.name} for good`,
    deleted: (p: { name: string }) => `${p.name} was deleted.`,
    newTitle: 'A new clinic',
    newLead: 'A clinic begins with its first file.',
    newLink: 'Import files as a new clinic',
    demoTitle: 'The demo clinic',
    demoLead: 'An invented clinic to look around in. Opening it here puts it back as it was delivered.',
    demoOpen: 'Put the demo back',
    demoPlain: 'Put it back without condition columns',
    demoPlainNote: 'Without condition columns it shows what most first files look like.',
    demoBack: 'The demo is open, as it was delivered.',
  },
  typed: (p: { text: string }) => `To confirm, type: ${p.text}`,
  who: {
    lead: 'Initials are written beside every change, export and backup, so that a colleague can ask. There are no accounts and no passwords here: whoever sits at this machine can write any initials.',
    label: 'Your initials',
    hint: 'Kept on this machine for this browser. Up to six letters.',
    save: 'Keep',
    saved: (p: { initials: string }) => `Changes are now signed ${p.initials}.`,
    none: 'No initials yet: changes are kept unsigned.',
    askTitle: 'Who is doing this?',
    askLead:
      'Your initials stand beside it in the log, and beside a file in the list of exports. They are kept on this machine and asked once; Settings changes them.',
    askSave: 'Sign and go on',
    askSkip: 'Go on without',
    askCancel: 'Do nothing',
  },
  words: {
    lead: 'The first two belong to this clinic and change what everyone reads; the others belong to you on this machine.',
    clinic: 'For this clinic',
    person: 'The people who are measured are called',
    personWord: { client: 'clients', patient: 'patients', participant: 'participants' },
    level: 'Level of the error',
    levels: { 80: '80 %', 90: '90 %', 95: '95 %' },
    levelNote:
      'How sure a change has to be before it counts as more than error. At 80 % more changes are called, and more of them by error alone.',
    saved: 'The clinic’s settings were changed.',
    mine: 'For you on this machine',
    mineNote: 'These change what you read, no number and no file.',
  },
  exports: {
    lead: 'Every file that left this clinic through the app, newest first. The hash tells whether a file was changed since.',
    none: 'Nothing was exported yet.',
    caption: 'Exported files',
    word: (p: { n: number }) => f.plural(p.n, 'export', 'exports'),
    when: 'When',
    what: 'What',
    file: 'File',
    rows: 'Rows',
    hash: 'SHA-256, first 12',
    initials: 'Initials',
    whatWord: {
      table: 'a table',
      figure: 'a figure',
      rows: 'all rows',
      report: 'report of rows',
      person: 'everything about one person',
      log: 'the log',
      mapping: 'a mapping',
      equation: 'an equation of the clinic',
      references: 'references of the methods',
      invitations: 'invitations, with names',
      settings: 'the settings',
      workspace: 'the whole clinic, for a shared folder',
    } as Readonly<Record<string, string>>,
    all: 'Save all rows as CSV',
    allNote: 'All accepted rows in this app’s columns with the columns it does not know, corrections marked.',
    saved: 'The file was handed to the browser’s downloads.',
  },
  size: (p: { bytes: number }) => sizeWords(p.bytes, f),
});

const STEPS = ['kB', 'MB', 'GB', 'TB'] as const;

const sizeWords = (bytes: number, f: Formatters): string => {
  let size = bytes / 1000;
  let step = 0;
  while (size >= 1000 && step < STEPS.length - 1) {
    size /= 1000;
    step += 1;
  }
  return `${f.number(size, size < 10 ? 1 : 0)}\u00A0${STEPS[step] ?? 'TB'}`;
};
