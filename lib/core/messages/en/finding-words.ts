const text = (message: string, remedy: string) => ({ message, remedy });
const range = ([low, high]: readonly [number, number], unit: string) => `${String(low)}–${String(high)} ${unit}`.trim();

/** What import says about a row or a cell, and the remedy. */
export const findingWords = {
  noClient: text('The row names no client.', 'Fill in client_id.'),
  noDate: text('The row has no visit date.', 'Fill in visit_date as YYYY-MM-DD.'),
  afterImport: text('The visit lies after the day of this import.', 'Correct visit_date.'),
  beforeBirth: text('The visit lies before the birth of the client.', 'Correct visit_date or the birth date.'),
  noValue: text('The row holds no measured or exported value.', 'Add a value, or leave the row out.'),
  notPositive: (column: string) => text(`${column} must be above zero.`, `Correct ${column}, or leave it empty.`),
  farOff: (column: string, limits: readonly [number, number], unit: string) =>
    text(
      `${column} lies far outside ${range(limits, unit)}. The row is set aside until someone says whether it is right.`,
      'Look it up: keep it as it is, or correct it in the export and import again.',
    ),
  aboveResistance: text(
    'Reactance is larger than resistance. The row is set aside until someone says whether it is right.',
    'Check whether the two were exchanged: keep it as it is, or correct it in the export and import again.',
  ),
  missingCode: (column: string) =>
    text(
      `${column} holds a number that often stands for a missing one. The row is set aside until someone says whether it is right.`,
      'Keep it where it was measured; else say in the mapping of this column that the number means unknown.',
    ),
  summaryRow: text(
    'The row has the name of a sum or a mean in place of a client. The row is set aside until someone says whether it is a client.',
    'Refuse it where it is a line of totals; keep it where a client has this id.',
  ),
  earlyVisit: text(
    'The visit lies on the day of birth or before 1990. The row is set aside until someone says whether the date is right.',
    'Check whether a birth date stands in place of the visit date: choose another column in the mapping, or keep it as it is.',
  ),
  idAsNumber: text(
    'The id is written as a power of ten, as a spreadsheet shortens long ids: several clients may look like one. The row is set aside until someone says whether it is right.',
    'Export the ids as text, or write them in full, and import again; keep it only where the id really reads so.',
  ),
  idLikeDate: text(
    'The id reads like a date, as a spreadsheet makes of ids such as MAR-2; accepted as it stands.',
    'Check it against the visit’s record; export the ids as text where it is wrong.',
  ),
  shortYear: (column: string) =>
    text(
      `${column} has a year of two digits, which may belong to either century.`,
      'Export dates with four digits of the year, or write them as YYYY-MM-DD, for example 2025-03-04.',
    ),
  otherCalendar: (column: string) =>
    text(
      `The year of ${column} is none of the Gregorian calendar: dates of other calendars are not converted.`,
      'Export dates in the Gregorian calendar, as YYYY-MM-DD, for example 2025-03-04.',
    ),
  headingAgain: text('The line repeats the headings: it is no reading.', 'Nothing to do.'),
  otherHeading: text(
    'Above this row the headings come again in another order or with other names: what its cells mean is not known.',
    'Split the file at that line and import each part by itself.',
  ),
  textLine: text(
    'The line holds a single text and no reading.',
    'Nothing to do where it is a comment or the end of a report.',
  ),
  keptByAnswer: (column: string) =>
    text(`${column} is unusual and was kept as it is, by an answer.`, 'Change the answer if that was wrong.'),
  refusedByAnswer: (column: string) =>
    text(`${column} is not what was measured, by an answer.`, 'Correct it in the export and import again.'),
  implausible: (column: string, limits: readonly [number, number], unit: string) =>
    text(`${column} lies outside ${range(limits, unit)}: unusual, accepted.`, 'Check it against the visit’s record.'),
  rare: (column: string, limit: number, unit: string) =>
    text(`${column} above ${String(limit)} ${unit} is rare; accepted.`, 'Check it against the visit’s record.'),
  unknownWord: (column: string, choices: readonly string[]) =>
    text(`${column} is none of ${choices.join(', ')}: read as unknown.`, `Write one of ${choices.join(', ')}.`),
  unreadableChoice: (column: string, choices: readonly string[]) =>
    text(`${column} is none of ${choices.join(', ')}.`, `Write one of ${choices.join(', ')}, or leave it empty.`),
  unreadableDate: (column: string) =>
    text(
      `${column} is not a date of the form YYYY-MM-DD, from 1800 on.`,
      'Say in the mapping of this column in which order day and month stand, or write dates as YYYY-MM-DD, for example 2025-03-04.',
    ),
  unreadableTime: (column: string) => text(`${column} is not a time.`, 'Write times as HH:MM, for example 08:30.'),
  unreadableFlag: (column: string) =>
    text(`${column} is neither y nor n.`, 'Write y or n, or leave it empty for unknown.'),
  unreadableInteger: (column: string) =>
    text(`${column} is not a whole number.`, 'Write up to four digits and nothing else, or leave it empty.'),
  unreadableNumber: (column: string) =>
    text(
      `${column} is not a number.`,
      'Say in the mapping of this column which decimal mark and unit it has, or write digits with a decimal point and no unit, for example 512.4.',
    ),
  ragged: text(
    'The row has another number of cells than the header.',
    'Check for a missing or an unquoted separator in this row.',
  ),
  brokenQuote: text(
    'A quotation mark opens in this row and is never closed.',
    'Close the quotation mark, or double it inside a text.',
  ),
  tooLong: text(
    'The row holds more than a million characters.',
    'Look for a quotation mark that is missing in an earlier row, or shorten the text.',
  ),
  noProgram: text('The row names no program.', 'Fill in program, or leave the row out.'),
  endBeforeStart: text('The program ends before it starts.', 'Correct program_start or program_end.'),
  sameFigures: text(
    'An earlier row of this file holds the same figures for this client and day. The row waits until someone says whether the two are one reading.',
    'Say which counts; two readings are told apart for good by a number in the column reading.',
  ),
  sameNumber: text(
    'This reading number was given twice for this client and day, with different figures. The row waits until someone says which counts.',
    'Say which counts, or number the readings anew and import again.',
  ),
  notThisOne: text(
    'Another row stands for this reading, by an answer.',
    'Nothing to do; change the answer if that was wrong.',
  ),
  superseded: text(
    'Another file holds the same reading: it is taken once.',
    'Nothing to do. The later file counts, unless the clinic corrected or set aside the earlier row.',
  ),
  replaced: text('A corrected row stands for this one.', 'Nothing to do.'),
  setAside: text('The row was set aside by the clinic.', 'Bring it back where that was wrong.'),
  erased: text('The person of this row was erased: the row stays out.', 'Nothing to do.'),
  corrected: (column: string, became: string) =>
    text(
      `${column} was corrected by the clinic${became === '' ? ' to unknown' : `: read as “${became}”`}. The file keeps what it says.`,
      'Remove the correction where that was wrong.',
    ),
  changed: (column: string, became: string) =>
    text(
      `${column} is read as ${became === '' ? 'unknown' : `“${became}”`}.`,
      'Check the mapping of this column where that is wrong.',
    ),
  duplicate: text(
    'The row equals an earlier row in every column: taken once.',
    'Nothing to do, unless these were two readings: then number them in the column reading.',
  ),
};
