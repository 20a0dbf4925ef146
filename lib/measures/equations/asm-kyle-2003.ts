import type { Equation } from '../equation';
import { ASM_NEEDS_LOCAL_CHECK } from './shared-cautions';

/** Appendicular skeletal muscle mass in kg from H²/R, weight, sex, age and reactance. */
export const ASM_KYLE_2003: Equation = {
  id: 'asm-kyle-2003',
  name: 'Kyle 2003',
  quantity: 'asm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: -4.211,
      terms: [
        { coefficient: 0.267, regressor: 'height2_per_resistance' },
        { coefficient: 0.095, regressor: 'weight' },
        { coefficient: 1.909, regressor: 'sex' },
        { coefficient: -0.012, regressor: 'age' },
        { coefficient: 0.058, regressor: 'reactance' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: {
    description: '444 healthy volunteers (246 men, 198 women); also tried in 326 transplant patients',
    n: 444,
    ageYears: [22, 94],
  },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'DXA',
  fit: { r: 0.95, see: 1.12, words: 'patients r 0.91, SEE 1.5 kg' },
  citation: {
    id: 'kyle-2003',
    authors: ['Kyle UG', 'Genton L', 'Hans D', 'Pichard C'],
    journal: 'Clin Nutr',
    year: 2003,
    volume: '22',
    issue: '6',
    pages: '537–543',
    doi: '10.1016/S0261-5614(03)00048-7',
  },
  verification: 'from-memory',
  verificationNote:
    'Magnitudes, sex coding, n and fit were read on the first page, whose text had lost its minus signs: those of the constant and of age are from memory, and the reported means (25.7 and 17.2 kg) are met only with them. Check both signs against the paper before use.',
  cautions: [
    'In transplant patients the estimate was 0.4 kg above DXA on average, ± 1.5 kg (the abstract).',
    ASM_NEEDS_LOCAL_CHECK,
  ],
};
