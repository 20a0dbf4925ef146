/** Words about a mapping file that cannot be used on the import screen. */
export const mappingFileErrors = {
  unreadable: (name: string) => `${name} is not a mapping.`,
  unknownTarget: (name: string, column: string) => `${name} fills the column “${column}”, which does not exist here.`,
  unreadableRemedy: 'Choose the JSON file that “Save this mapping” made. The mapping on screen stays as it is.',
  otherHeader: (name: string) => `${name} belongs to a file with other column names.`,
  otherHeaderRemedy:
    'A mapping is for exactly one header. Choose the one that was saved for this kind of file. The mapping on screen stays as it is.',
} as const;
