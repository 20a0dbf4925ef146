import type { Citation } from '../citation';
import type { Equation } from '../equation';

const CITATION: Citation = { id: 'lukaski-bolonchuk-1988', authors: ['Lukaski HC', 'Bolonchuk WW'], year: 1988 };

/** Total body water in L from H²/R, weight, age and sex. */
export const TBW_LUKASKI_BOLONCHUK_1988: Equation = {
  id: 'tbw-lukaski-bolonchuk-1988',
  name: 'Lukaski & Bolonchuk 1988',
  quantity: 'tbw',
  unit: 'L',
  version: 1,
  branches: [
    {
      intercept: 4.65,
      terms: [
        { coefficient: 0.377, regressor: 'height2_per_resistance' },
        { coefficient: 0.14, regressor: 'weight' },
        { coefficient: -0.08, regressor: 'age' },
        { coefficient: 2.9, regressor: 'sex' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: 'not stated where the equation was read' },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: { r2: 0.975, see: 1.5 },
  citation: CITATION,
  verification: 'read-in-secondary-text',
  verificationNote:
    'Equation and fit were read in a compendium of medical equations; whom it was made for was not given there.',
  cautions: ['The group it was made for is unknown here, so no reading can be marked as outside it.'],
};

/** Extracellular water in L from H²/R, weight and H²/Xc. */
export const ECW_LUKASKI_BOLONCHUK_1988: Equation = {
  id: 'ecw-lukaski-bolonchuk-1988',
  name: 'Lukaski & Bolonchuk 1988',
  quantity: 'ecw',
  unit: 'L',
  version: 1,
  branches: [
    {
      intercept: 1.03,
      terms: [
        { coefficient: 0.189, regressor: 'height2_per_resistance' },
        { coefficient: 0.052, regressor: 'weight' },
        { coefficient: -0.0002, regressor: 'height2_per_reactance' },
      ],
    },
  ],
  sexCoding: { M: 1, F: 0 },
  population: { description: 'not stated where the equation was read' },
  posture: 'lying',
  electrodePath: 'hand-to-foot',
  frequencyKhz: 50,
  referenceMethod: 'not stated',
  fit: { r2: 0.884, see: 1.01 },
  citation: CITATION,
  verification: 'read-in-secondary-text',
  verificationNote:
    'Equation and fit were read in a compendium of medical equations; whom it was made for was not given there.',
  cautions: ['The group it was made for is unknown here, so no reading can be marked as outside it.'],
};
