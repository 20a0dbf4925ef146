import type { PhaseAngleReferenceSet, PhaseAngleStratum } from './reference-set';

const AGES = [
  { ageFrom: 18, ageBelow: 20 },
  { ageFrom: 20, ageBelow: 30 },
  { ageFrom: 30, ageBelow: 40 },
  { ageFrom: 40, ageBelow: 50 },
  { ageFrom: 50, ageBelow: 60 },
  { ageFrom: 60, ageBelow: 70 },
  { ageFrom: 70 },
] as const;

const MEN = [
  [7.9, 0.47],
  [8.02, 0.75],
  [8.01, 0.85],
  [7.76, 0.85],
  [7.31, 0.89],
  [6.96, 1.1],
  [6.19, 0.97],
] as const;

const WOMEN = [
  [7.04, 0.85],
  [6.98, 0.92],
  [6.87, 0.84],
  [6.91, 0.85],
  [6.55, 0.87],
  [5.97, 0.83],
  [5.64, 1.02],
] as const;

const strata = (sex: 'F' | 'M', rows: typeof MEN | typeof WOMEN): readonly PhaseAngleStratum[] =>
  AGES.flatMap((ages, place) => {
    const row = rows[place];
    return row === undefined ? [] : [{ sex, ...ages, mean: row[0], spread: { kind: 'sd' as const, sd: row[1] } }];
  });

/** Mean and SD of the phase angle by sex and age; the table is from memory. */
export const BARBOSA_SILVA_2005: PhaseAngleReferenceSet = {
  id: 'phase-angle-barbosa-silva-2005',
  kind: 'phase-angle',
  name: 'Barbosa-Silva 2005',
  version: 1,
  label: 'table from memory, to be checked against the paper before use',
  population: '1,967 adults aged 18–94 years',
  n: 1967,
  method: { kind: 'bia', frequencyKhz: null, posture: null, electrodePath: null },
  strata: [...strata('M', MEN), ...strata('F', WOMEN)],
  citation: {
    id: 'barbosa-silva-2005',
    authors: ['Barbosa-Silva'],
    andOthers: true,
    journal: 'Am J Clin Nutr',
    year: 2005,
    volume: '82',
    pages: '49–52',
    doi: '10.1093/ajcn/82.1.49',
  },
  verification: 'from-memory',
  verificationNote:
    'Who was measured was read in the abstract. Every mean and SD is from memory; the youngest band (18–20 years) is taken as 18 and 19 so that it does not overlap the next.',
  cautions: ['Populations and devices differ by 0.5–1.5°, more than most people change: never mixed with another set.'],
};
