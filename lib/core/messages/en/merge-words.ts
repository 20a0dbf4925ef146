/** Words for values that two sides of a merge disagree about. */
export const mergeWords = {
  notThere: 'not there',
  empty: 'empty',
  yes: 'yes',
  no: 'no',
} as const;
