import type { Equation } from '../equation';
import { ASM_NEEDS_LOCAL_CHECK } from './shared-cautions';

/** Appendicular skeletal muscle mass in kg of older Japanese adults, a form for each sex. */
export const ASM_YOSHIDA_2014: Equation = {
  id: 'asm-yoshida-2014',
  name: 'Yoshida 2014',
  quantity: 'asm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      sex: 'M',
      intercept: -0.019,
      terms: [
        { coefficient: 0.197, regressor: 'height2_per_resistance' },
        { coefficient: 0.179, regressor: 'weight' },
      ],
    },
    {
      sex: 'F',
      intercept: 0.881,
      terms: [
        { coefficient: 0.221, regressor: 'height2_per_resistance' },
        { coefficient: 0.117, regressor: 'weight' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: 'Japanese adults from 65 years', ancestry: 'Japanese', ageFrom: 65 },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: { words: 'R² 0.87, SEE 0.98 kg (men); R² 0.89, SEE 0.81 kg (women)' },
  citation: { id: 'yoshida-2014', authors: ['Yoshida'], andOthers: true, year: 2014 },
  verification: 'read-in-secondary-text',
  verificationNote:
    'Both forms, the frequency, the age and the fit were read in a compendium of medical equations; the paper itself was not at hand.',
  cautions: ['Made in Japanese adults from 65 years (the compendium).', ASM_NEEDS_LOCAL_CHECK],
};
