/** Words in the file about one person. */
export const personFile = {
  readme: (about: { readonly clinic: string; readonly client: string; readonly at: string; readonly rows: number }) =>
    [
      `Everything that the clinic “${about.clinic}” keeps in Driftline about the client ${about.client}, made ${about.at}.`,
      '',
      `rows.csv         ${String(about.rows)} rows of the imported files, as they stand: accepted, waiting, refused, set aside and`,
      '                 duplicate ones, each with its file and line. Columns that Driftline does not use are kept.',
      'corrections.csv  cells that the clinic reads differently from the file.',
      'set-aside.csv    rows that the clinic left out, with the reason.',
      'notes.csv        what the clinic wrote down.',
      'marks.csv        marks on lists, such as what came of a call.',
      'enrolments.csv   programs that the clinic entered, with start, end and reason.',
      'answers.csv      what was answered to questions about this client.',
      'log.csv          what was done with these rows, when, and by whom (initials).',
      '',
      'Backups and exports that were made before may hold more copies; the clinic has a list of them.',
      '',
    ].join('\r\n'),
} as const;
