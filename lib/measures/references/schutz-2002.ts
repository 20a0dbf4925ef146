import type { IndexMedianReferenceSet } from './reference-set';

/** Median FFMI and FMI by sex of the youngest age band; the abstract gives no other figures of a group. */
export const SCHUTZ_2002: IndexMedianReferenceSet = {
  id: 'indices-schutz-2002',
  kind: 'index-medians',
  name: 'Schutz 2002',
  version: 1,
  label: 'medians of the youngest age band alone, no spread, not norms',
  population:
    '5,635 Swiss Caucasian adults (2,986 men, 2,649 women) aged 24–98 years by the abstract, 18–98 by the title',
  n: 5635,
  method: { kind: 'bia', frequencyKhz: 50, posture: null, electrodePath: null },
  strata: [
    { sex: 'M', ageFrom: 18, ageBelow: 35, ffmi: 18.9, fmi: 4 },
    { sex: 'F', ageFrom: 18, ageBelow: 35, ffmi: 15.4, fmi: 5.5 },
  ],
  citation: {
    id: 'schutz-2002',
    authors: ['Schutz'],
    andOthers: true,
    journal: 'Int J Obes',
    year: 2002,
    volume: '26',
    pages: '953–960',
    doi: '10.1038/sj.ijo.0802037',
  },
  verification: 'read-in-abstract',
  verificationNote:
    'The medians of 18–34 years were read in the abstract; the percentiles of the four age bands are in the paper and are left out.',
  cautions: [
    'From the youngest to the oldest the fat mass index is higher by 55 % in men and 62 % in women, the body mass index by 9 % and 19 % (abstract): these medians say nothing of older people.',
    'Fat-free mass index stays level with age in men and is modestly higher in older women (abstract).',
    'A median alone says nothing about how people differ: no z score is made.',
  ],
};
