import type { Formatters } from '../../formatters';

/** Settings › Privacy: retention, erasing one person, everything about one person. */
export const settingsPrivacy = (f: Formatters) => ({
  retention: {
    title: 'How long the clinic keeps its visits',
    label: 'Months after the last visit',
    hint: 'What applies is the law of your place and your profession. Empty: no date is set.',
    save: 'Set',
    until: (p: { date: string }) => `Kept until ${p.date}.`,
    none: 'No date is set.',
    overdue: (p: { date: string }) =>
      `The date has passed: ${p.date}. Look whether this clinic still has to keep these visits; erase people one by one, or delete the clinic above.`,
    saved: 'The retention date was changed.',
    invalid: 'Write a whole number of months, 1 to 600, or leave it empty.',
  },
  person: {
    title: 'One person',
    lead: 'Find the person by id. What is found is shown here only; it enters no address, no title and no log.',
    label: 'Id of the person, as in the files',
    find: 'Find',
    notFound: 'Nobody with this id is in the open clinic. Capitals and hyphens count.',
    found: (p: { rows: number; files: number }) =>
      `${f.plural(p.rows, 'One row', '# rows')} in ${f.plural(p.files, 'one file', '# files')}.`,
  },
  everything: {
    title: 'Everything about this person',
    lead: 'One file with all rows, corrections, notes and marks, as a person may ask for. It holds identities: hand it to the right one.',
    act: 'Save everything about this person',
    saved: 'The file was handed to the browser’s downloads.',
  },
  erase: {
    title: 'Erase this person',
    will: 'What happens',
    rows: (p: { rows: number; files: number }) =>
      `${f.plural(p.rows, 'One row is', '# rows are')} removed from ${f.plural(p.files, 'one kept file', '# kept files')}; the files are written anew without them.`,
    notes: (p: { n: number }) =>
      p.n === 0
        ? 'There are no notes or marks about the person.'
        : `${f.plural(p.n, 'One note or mark is', '# notes and marks are')} removed.`,
    corrections: (p: { n: number }) =>
      p.n === 0
        ? 'No reading of the person was corrected or set aside.'
        : `${f.plural(p.n, 'One correction or reading set aside is', '# corrections and readings set aside are')} removed.`,
    undo: 'Undo no longer reaches back to a state that held the person. Erasing itself cannot be undone.',
    again:
      'When a file with this id is imported again, the rows stay out, and the import says so. For that, a keyed fingerprint of the id is kept, from which the id cannot be read.',
    others:
      'The results of other people are calculated anew; thresholds can move a little where the person was in the error study.',
    backups:
      'These backups were made before and may still hold the person. This app cannot change them: erase or replace them where they lie.',
    noBackups: 'No backup made from here holds the person.',
    backup: (p: { name: string; when: string }) => `${p.name}, made ${p.when}`,
    confirm: 'Erase for good',
    done: 'The person was erased from this clinic.',
  },
  past: {
    title: 'Erased so far',
    none: 'Nobody was erased.',
    line: (p: { when: string; by: string }) => `${p.when}${p.by === '' ? '' : `, by ${p.by}`}`,
    backups: (p: { names: string }) => `Backups that may still hold the person: ${p.names}.`,
    noBackups: 'No backup held the person.',
  },
});
