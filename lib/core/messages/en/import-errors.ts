const few = (names: readonly string[]): string =>
  names
    .slice(0, 6)
    .map((name) => `“${name.slice(0, 30)}”`)
    .join(', ') + (names.length > 6 ? ' …' : '');

const megabytes = (bytes: number): string => `${String(Math.max(1, Math.round(bytes / 1024 ** 2)))} MB`;

/** Words about a file that cannot be read as a visit export. */
export const importErrors = {
  empty: (name: string) => `${name} is empty.`,
  emptyRemedy: 'Export the visits again and check that the file has a size. Nothing was changed.',
  binary: (name: string) => `${name} is no table that can be read: it holds neither text nor a known format.`,
  binaryRemedy:
    'Choose the file that the export wrote: CSV, XLSX, Parquet, SAS transport, FHIR, or a zip of these. Nothing was changed.',
  headerOnly: (name: string) => `${name} has a header line and no rows below it.`,
  headerOnlyRemedy: 'Check the period that was chosen for the export. Nothing was changed.',
  wrongColumns: (name: string, missing: readonly string[], found: readonly string[]) =>
    `${name} has no column ${missing.map((column) => `“${column}”`).join(' and no column ')}. Its header holds ${few(found)}.`,
  wrongColumnsRemedy:
    'Say on the Import screen which column holds the client and which the day of the visit, or give a mapping on the command line with --mapping FILE.json. Nothing was changed.',
  duplicateColumns: (name: string, column: string) => `${name} has the column “${column}” twice.`,
  duplicateColumnsRemedy: 'Say in the mapping which one counts, or rename one of the two. Nothing was changed.',
  damaged: (name: string) => `${name} breaks off or is damaged in the middle: none of its rows was taken.`,
  damagedRemedy: 'Copy or export the file again, whole. Nothing was changed.',
  mappingNeeded: (name: string, columns: readonly string[]) =>
    `${name} can be read in more than one way: ${few(columns)} must be decided by a person.`,
  mappingNeededRemedy:
    'Import the file on the Import screen, answer its questions and save the mapping; on the command line give it with --mapping FILE.json. Nothing was changed.',
  oldWorkbook: (name: string) => `${name} is a workbook of the old kind (.xls), or one locked with a password.`,
  oldWorkbookRemedy:
    'Open it, take the password off where it has one, and save it as XLSX or CSV. Nothing was changed.',
  otherWorkbook: (name: string) => `${name} is a workbook or document of a kind that is not read.`,
  otherWorkbookRemedy: 'Open it and save the sheet with the visits as XLSX or CSV. Nothing was changed.',
  pdf: (name: string) => `${name} is a PDF document: its numbers cannot be read reliably.`,
  pdfRemedy: 'Export the visits as CSV or XLSX instead. Nothing was changed.',
  picture: (name: string) => `${name} is a picture.`,
  pictureRemedy: 'Export the visits as CSV or XLSX instead. Nothing was changed.',
  packed: (name: string) => `${name} is packed in a way that is not read.`,
  packedRemedy: 'Unpack it first, or pack the files as a zip. Nothing was changed.',
  otherProgram: (name: string) => `${name} is a file that only the program which wrote it can read.`,
  otherProgramRemedy:
    'Export the table from that program as CSV, XLSX, Parquet or SAS transport version 5. Nothing was changed.',
  newerTransport: (name: string) => `${name} is a SAS transport file of another version than 5.`,
  newerTransportRemedy: 'Write it again as transport version 5 (engine XPORT), or as CSV. Nothing was changed.',
  webPage: (name: string) => `${name} is a web page, whatever its name says.`,
  webPageRemedy: 'Open it in a spreadsheet program and save it as XLSX or CSV. Nothing was changed.',
  xml: (name: string) => `${name} is an XML file of a kind that is not read.`,
  xmlRemedy:
    'Open it in a spreadsheet program and save it as XLSX or CSV; FHIR resources are read as JSON. Nothing was changed.',
  json: (name: string) => `${name} is JSON of a kind that is not read.`,
  jsonRemedy:
    'FHIR R4 Observations are read, as NDJSON or as a Bundle; other data as CSV or XLSX. Nothing was changed.',
  locked: (name: string) => `${name} is locked with a password.`,
  lockedRemedy: 'Unlock it and save it without a password, or unpack it first. Nothing was changed.',
  nestedZip: (name: string) => `${name} is an archive inside an archive.`,
  nestedZipRemedy: 'Unpack the outer archive and choose what is inside. Nothing was changed.',
  zipNothing: (name: string) => `${name} holds no file that can be read as a table.`,
  zipNothingRemedy:
    'Check what was packed: CSV, XLSX, Parquet, SAS transport and FHIR files are read. Nothing was changed.',
  tooLarge: (name: string, gigabytes: number) =>
    `${name} is too large to be opened at once: the limit is ${String(gigabytes)} GB, unpacked.`,
  tooLargeRemedy: 'Divide it into several files, or unpack it first. Nothing was changed.',
  tooLargeJson: (name: string, limitBytes: number) =>
    `${name} is one JSON text of more than ${megabytes(limitBytes)}: that is the most that is read in one piece.`,
  tooLargeJsonRemedy:
    'Save it as NDJSON, one resource a line, which is read piece by piece; or divide it into several files. Nothing was changed.',
  tooLargeWorkbook: (name: string, limitBytes: number) =>
    `A part of the workbook ${name} unpacks to more than ${megabytes(limitBytes)}: that is the most that is read in one piece.`,
  tooLargeWorkbookRemedy:
    'Save the sheet as CSV, which is read piece by piece; or divide it into several workbooks. Nothing was changed.',
  tooManyObservations: (name: string, limit: number) =>
    `${name} holds more than ${limit.toLocaleString('en')} Observations: that is the most that is read of one file.`,
  tooManyObservationsRemedy: 'Divide it into several files, by client or by date. Nothing was changed.',
  tooTight: (name: string) =>
    `${name} holds a file that is unpacked to more than five hundred times its packed size: no table is like that.`,
  tooTightRemedy: 'Look at what was packed, or export the visits again. Nothing was changed.',
  tooWide: (name: string, columns: number, limit: number) =>
    `${name} has ${columns.toLocaleString('en')} columns; up to ${limit.toLocaleString('en')} are read.`,
  tooWideRemedy:
    'Check that the file is the visit export and that its lines end, or leave out columns that hold no visits. Nothing was changed.',
  fhirNothing: (name: string) => `${name} holds FHIR resources, but no Observation.`,
  fhirNothingRemedy: 'Export the Observations of the visits, as NDJSON or as a Bundle. Nothing was changed.',
  fhirUnit: (name: string, observation: string, unit: string, column: string) =>
    `${name}: the observation ${observation} gives ${column} in ${unit === '' ? 'no unit' : `“${unit.slice(0, 30)}”`}, which cannot be converted.`,
  fhirUnitRemedy: 'Write the unit as a UCUM code (kg, cm, Ohm, deg, L …) and export again. Nothing was changed.',
} as const;
