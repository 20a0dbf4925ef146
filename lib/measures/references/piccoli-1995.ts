import type { VectorReferenceSet } from './reference-set';

/** Height-normalised vectors of healthy adults; from memory and without the correlation. */
export const PICCOLI_1995: VectorReferenceSet = {
  id: 'vector-piccoli-1995',
  kind: 'vector',
  name: 'Piccoli 1995',
  version: 1,
  label: 'from memory, no ellipse without a correlation that the clinic enters',
  population: '354 men and 372 women, healthy, in Italy',
  n: 726,
  method: { kind: 'bia', frequencyKhz: 50, posture: null, electrodePath: null },
  strata: [
    { sex: 'M', ageFrom: 18, n: 354, rh: { mean: 298.6, sd: 43.2 }, xch: { mean: 30.8, sd: 7.2 } },
    { sex: 'F', ageFrom: 18, n: 372, rh: { mean: 371.9, sd: 49.0 }, xch: { mean: 34.4, sd: 7.7 } },
  ],
  citation: {
    id: 'piccoli-1995',
    authors: ['Piccoli A'],
    andOthers: true,
    journal: 'Am J Clin Nutr',
    year: 1995,
    volume: '61',
    pages: '269–270',
    fromMemory: ['journal', 'year', 'volume', 'pages'],
  },
  verification: 'from-memory',
  verificationNote:
    'Means, SDs and sizes are from memory. The correlation of R/H and Xc/H is not known well enough and is left out; the ages were not read, the set is offered for adults only.',
  cautions: ['Without the correlation neither ellipse nor distance is drawn; the clinic may enter it from the paper.'],
};
