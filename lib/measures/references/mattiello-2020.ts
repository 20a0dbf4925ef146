import type { PhaseAngleReferenceSet, PhaseAngleStratum } from './reference-set';

const stratum = (
  sex: 'F' | 'M',
  ages: { readonly ageFrom: number; readonly ageBelow?: number },
  mean: number,
  low: number,
  high: number,
): PhaseAngleStratum => ({ sex, ...ages, mean, spread: { kind: 'mean-interval-95', low, high } });

/** Pooled mean phase angle by sex and age; only the age bands that the abstract gives. */
export const MATTIELLO_2020: PhaseAngleReferenceSet = {
  id: 'phase-angle-mattiello-2020',
  kind: 'phase-angle',
  name: 'Mattiello 2020',
  version: 1,
  label: 'pooled means of 46 studies, ends of the age range only, no SD',
  population: '249,844 people of all ages in 46 studies',
  n: 249_844,
  method: { kind: 'bia', frequencyKhz: null, posture: null, electrodePath: null },
  strata: [
    stratum('M', { ageFrom: 0, ageBelow: 3 }, 3.6, 3.0, 4.1),
    stratum('M', { ageFrom: 16, ageBelow: 19 }, 7.3, 7.0, 7.5),
    stratum('M', { ageFrom: 81 }, 5.3, 4.5, 6.0),
    stratum('F', { ageFrom: 0, ageBelow: 3 }, 3.7, 3.2, 4.3),
    stratum('F', { ageFrom: 16, ageBelow: 19 }, 6.4, 6.1, 6.8),
    stratum('F', { ageFrom: 81 }, 5.4, 5.3, 5.6),
  ],
  citation: {
    id: 'mattiello-2020',
    authors: ['Mattiello'],
    andOthers: true,
    journal: 'Clin Nutr',
    year: 2020,
    volume: '39',
    issue: '5',
    pages: '1411–1417',
    doi: '10.1016/j.clnu.2019.07.004',
  },
  verification: 'read-in-abstract',
  verificationNote:
    'The ages 0–2, 16–18 and over 80 years were read in the abstract; the bands between them are in the paper and are left out. That the interval is the 95 % interval of the pooled mean is understood from the kind of study.',
  cautions: [
    'Men stay level from 18 to 38 years, women from 18 to 48 years (abstract); the abstract gives no value for these ages.',
    'The studies differed much in every age band (abstract): devices, postures and groups are mixed.',
    'The interval is of the mean and says nothing about how people differ: no z score is made.',
  ],
};
