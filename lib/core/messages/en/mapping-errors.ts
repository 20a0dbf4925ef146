/** Words about a mapping file that cannot be used. */
export const mappingErrors = {
  notJson: 'This is no mapping file: it is not JSON.',
  wrongShape: (place: string, found: string) => `The mapping file is wrong at ${place}: ${found}`,
  unknownColumn: (place: string, column: string) =>
    `The mapping file is wrong at ${place}: the visit export has no column “${column}”.`,
  noSuchPlace: (place: string, given: number, columns: number) =>
    `The mapping file is wrong at ${place}: place ${given} is behind the last of ${columns} columns.`,
  unitNotTaken: (place: string, column: string, unit: string) =>
    `The mapping file is wrong at ${place}: ${column} cannot be given in ${unit}.`,
  wordNotTaken: (place: string, column: string, word: string) =>
    `The mapping file is wrong at ${place}: ${column} has no word “${word}”.`,
  filledTwice: (place: string, column: string) =>
    `The mapping file is wrong at ${place}: ${column} is filled a second time.`,
  remedy: 'Export the mapping again from Import, or correct the place that is named. Nothing was changed.',
} as const;
