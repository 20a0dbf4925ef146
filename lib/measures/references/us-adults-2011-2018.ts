import type { IndexReferenceSet } from './reference-set';
import { US_ADULTS_2011_2018_FIGURES } from './us-adults-2011-2018-figures';

/** FMI and FFMI of US adults by sex and age, derived from the public rows of a government survey. */
export const US_ADULTS_2011_2018: IndexReferenceSet = {
  id: 'indices-us-adults-2011-2018',
  kind: 'indices',
  name: 'US adults 2011–2018',
  version: 1,
  label: 'DXA, unweighted, not norms',
  population:
    '11,779 adults aged 18–59 years (5,902 women, 5,877 men) of the United States’ health survey of 2011–2018',
  n: 11_779,
  method: { kind: 'dxa', frequencyKhz: null, posture: null, electrodePath: null },
  strata: US_ADULTS_2011_2018_FIGURES,
  citation: {
    id: 'nhanes-2011-2018',
    authors: ['National Center for Health Statistics'],
    title: 'National Health and Nutrition Examination Survey, 2011–2018: whole-body DXA and body measures',
    publisher: 'US Centers for Disease Control and Prevention',
    year: 2018,
  },
  verification: 'derived-from-open-data',
  verificationNote:
    'Computed from the survey’s public rows by lib/cli/derive-references.ts: mean, SD with n − 1, percentiles of type 7 and Pearson’s r. No row is part of the project.',
  cautions: [
    'Unweighted: the survey invited some groups more often, so these are not norms of the population.',
    'DXA, not impedance: the two disagree for a single person, and the bands may not be mixed with impedance bands.',
    'FMI + FFMI is not exactly the BMI here: DXA’s total is 0.368 kg (SD 0.535) above the scale on average.',
  ],
};
