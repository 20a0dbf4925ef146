import { BARBOSA_SILVA_2005 } from './barbosa-silva-2005';
import { MATTIELLO_2020 } from './mattiello-2020';
import { PICCOLI_1995 } from './piccoli-1995';
import type { OwnCohortReference, ReferenceSet } from './reference-set';
import { SCHUTZ_2002 } from './schutz-2002';
import { US_ADULTS_2011_2018 } from './us-adults-2011-2018';

/** Every reference population that comes with the catalogue; those from memory are off until a clinic switches them on. */
export const PUBLISHED_REFERENCES: readonly ReferenceSet[] = [
  US_ADULTS_2011_2018,
  SCHUTZ_2002,
  MATTIELLO_2020,
  PICCOLI_1995,
  BARBOSA_SILVA_2005,
];

/** The clients of the clinic as their own reference for vectors. */
export const OWN_COHORT_REFERENCE: OwnCohortReference = {
  kind: 'own-cohort',
  id: 'own-cohort',
  name: 'This clinic’s clients',
  label: 'people who were measured here, not healthy people',
  cautions: ['Says only what is unusual in this clinic.', 'Provisional under 30 people of one sex.'],
};
