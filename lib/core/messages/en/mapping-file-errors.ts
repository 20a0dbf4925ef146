/** Words about a mapping file that belongs to another table. */
export const mappingFileErrors = {
  otherHeader: (name: string) => `${name} belongs to a file with other column names.`,
  otherHeaderRemedy:
    'A mapping is for exactly one header. Choose the one that was saved for this kind of file. The mapping on screen stays as it is.',
} as const;
