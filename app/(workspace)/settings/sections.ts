/** The sections of Settings in their order; each is an anchor of the page. */
export const SECTIONS = [
  'clinics',
  'who',
  'words',
  'programs',
  'lean',
  'comparability',
  'keeping',
  'passphrase',
  'privacy',
  'exports',
  'log',
] as const;

export type SectionId = (typeof SECTIONS)[number];
