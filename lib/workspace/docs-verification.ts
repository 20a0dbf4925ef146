import type { Verification } from '../measures/equation';

/** How far a formula was verified, in the words of the documentation. */
export const DOCS_VERIFICATION: Readonly<Record<Verification, string>> = {
  definition: 'a definition',
  'read-in-abstract': 'read in the paper’s abstract or first page',
  'read-in-secondary-text': 'read in a later text that quotes it',
  'from-memory': 'from memory: check against the paper before use',
  'entered-by-clinic': 'entered by the clinic',
};
