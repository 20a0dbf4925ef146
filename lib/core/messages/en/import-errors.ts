const few = (names: readonly string[]): string =>
  names
    .slice(0, 6)
    .map((name) => `“${name.slice(0, 30)}”`)
    .join(', ') + (names.length > 6 ? ' …' : '');

/** Words about a file that cannot be read as a visit export. */
export const importErrors = {
  empty: (name: string) => `${name} is empty.`,
  emptyRemedy: 'Export the visits again and check that the file has a size. Nothing was changed.',
  zip: (name: string) => `${name} is a spreadsheet workbook or a zip archive, not a CSV file.`,
  zipRemedy: 'Open it and save the sheet with the visits as CSV (UTF-8), then choose that file. Nothing was changed.',
  binary: (name: string) => `${name} is not text: it cannot be a CSV file.`,
  binaryRemedy: 'Choose the CSV file that the export wrote. Nothing was changed.',
  headerOnly: (name: string) => `${name} has a header line and no rows below it.`,
  headerOnlyRemedy: 'Check the period that was chosen for the export. Nothing was changed.',
  wrongColumns: (name: string, missing: readonly string[], found: readonly string[]) =>
    `${name} has no column ${missing.map((column) => `“${column}”`).join(' and no column ')}. Its first line holds ${few(found)}.`,
  wrongColumnsRemedy:
    'The first line must name the columns of the visit export: client_id and visit_date are always needed. The list stands in the README. Nothing was changed.',
  duplicateColumns: (name: string, column: string) => `${name} has the column “${column}” twice.`,
  duplicateColumnsRemedy: 'Rename or remove one of the two, so that it is clear which one counts. Nothing was changed.',
  damaged: (name: string) => `${name} breaks off or is damaged in the middle: none of its rows was taken.`,
  damagedRemedy: 'Copy or export the file again, whole. Nothing was changed.',
  mappingNeeded: (name: string, columns: readonly string[]) =>
    `${name} can be read in more than one way: ${few(columns)} must be decided by a person.`,
  mappingNeededRemedy:
    'Import the file on the Import screen, answer its questions and save the mapping; on the command line give it with --mapping FILE.json. Nothing was changed.',
} as const;
