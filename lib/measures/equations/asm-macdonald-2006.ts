import type { Equation } from '../equation';
import { ASM_NEEDS_LOCAL_CHECK } from './shared-cautions';

/** Appendicular lean mass in kg of adults on dialysis; women are coded 1. */
export const ASM_MACDONALD_2006: Equation = {
  id: 'asm-macdonald-2006',
  name: 'Macdonald 2006',
  quantity: 'asm',
  unit: 'kg',
  version: 1,
  branches: [
    {
      intercept: -11.626,
      terms: [
        { coefficient: 0.292, regressor: 'height2_per_resistance' },
        { coefficient: 0.06983, regressor: 'reactance' },
        { coefficient: 0.08553, regressor: 'height' },
        { coefficient: -2.092, regressor: 'sex' },
        { coefficient: -0.05, regressor: 'age' },
      ],
    },
  ],
  sexCoding: { M: 0, F: 1 },
  population: { description: 'adults on dialysis, mean age 65 years' },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: {},
  citation: { id: 'macdonald-2006', authors: ['Macdonald'], andOthers: true, year: 2006 },
  verification: 'read-in-secondary-text',
  verificationNote:
    'The equation, its sex coding and the frequency were read in a compendium of medical equations; n and fit were not given there.',
  cautions: [
    'Made in people on dialysis, whose body water differs from that of others (the compendium).',
    'Women are coded 1 and men 0, the reverse of most equations (the compendium).',
    ASM_NEEDS_LOCAL_CHECK,
  ],
};
