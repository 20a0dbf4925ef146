const years = (from: number, below: number | undefined): string =>
  below === undefined ? `from ${String(from)} years` : `from ${String(from)} to below ${String(below)} years`;

/** Words about a clinic's own reference that cannot be used. */
export const referenceErrors = {
  empty: (file: string) => `${file} holds no reference.`,
  tooLarge: (file: string) => `${file} is too large for a reference.`,
  notUnicode: (file: string) => `${file} holds characters that are not UTF-8.`,
  notJson: (file: string) => `${file} begins like JSON, but is none.`,
  atPlace: (file: string, place: string, found: string) => `${file}, ${place}: ${found}`,
  atLine: (file: string, line: number, found: string) => `${file}, line ${String(line)}: ${found}`,
  atCell: (file: string, line: number, column: string, found: string) =>
    `${file}, line ${String(line)}, column ${column}: ${found}`,

  above0: 'must be above 0',
  correlation: 'a correlation must be above −1 and below 1',
  people: 'a stratum needs at least 3 people, a whole number',
  agesBackwards: 'the age where the stratum ends must be above the age where it begins',
  ageBelow0: 'an age must be 0 or more',
  percentilesFall: 'percentiles must not fall from one to the next',
  meanOutside: 'the mean must lie inside its interval',
  overlap: (sex: string, from: number, below: number | undefined) =>
    `the ages overlap with those of another stratum: ${sex}, ${years(from, below)}`,
  noStratum: 'there is no stratum',
  noCitation: 'a reference needs its source: authors, year, and a journal or publisher',

  unknownColumn: 'this column is not known',
  twice: 'this column is there twice',
  missingColumn: 'this column is missing',
  emptyCell: 'the cell is empty',
  noNumber: (cell: string) => `“${cell.slice(0, 30)}” is not a number`,
  unknownKind: (cell: string) => `“${cell.slice(0, 30)}” is not a kind: vector, indices or phase-angle`,
  twoKinds: (kind: string) => `all lines must be of one kind, and the first is ${kind}`,
  otherKind: (kind: string) => `the cell must stay empty for the kind ${kind}`,
  unknownSex: (cell: string) => `“${cell.slice(0, 30)}” is not F or M`,
  tooManyCells: 'the line has more cells than the header',
  brokenQuote: 'a quotation mark is not closed',
  unknownComment: (key: string) => `“${key.slice(0, 30)}” says nothing that is known about a reference`,
  unknownMethod: (given: string) => `“${given.slice(0, 30)}” is not DXA or BIA`,
  unknownPosture: (given: string) => `“${given.slice(0, 30)}” is not lying or standing`,
  noMethod: 'indices need a line “# method: DXA” or “# method: BIA” above the header',
  noPopulation: 'a line “# population: …” above the header must say who was measured',

  entered: 'entered by the clinic',
  enteredNote: 'Entered by the clinic; not compared with the work that is named.',

  remedyCell: 'Correct the cell in the file and choose it again. Nothing was changed.',
  remedyHeader:
    'The header must hold kind, sex, age_from, age_below, n and the means and SDs of one kind (for example mean_r_h, sd_r_h, mean_xc_h, sd_xc_h, r). Nothing was changed.',
  remedyComment:
    'Correct the lines above the header that begin with #, and choose the file again. Nothing was changed.',
  remedyCitation:
    'Write where the figures come from: in CSV as lines above the header (# authors: …, # year: …, # journal: …), in JSON as citation. Nothing was changed.',
  remedyJson: 'Correct the place that is named, or export the reference again. Nothing was changed.',
  remedyTooLarge: 'Choose a file with one line for each sex and age band. Nothing was changed.',
  remedyNotUnicode:
    'Save the file as UTF-8 (“CSV UTF-8” in spreadsheet programs) and choose it again. Nothing was changed.',
  remedyEmpty: 'Choose a CSV or JSON file with one line for each sex and age band. Nothing was changed.',
} as const;
