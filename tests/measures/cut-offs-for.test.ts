import { describe, expect, test } from 'vitest';
import { cutOffsFor, type CutOffQuestion } from '../../lib/measures/cut-offs/cut-offs-for';
import { PUBLISHED_CUT_OFFS } from '../../lib/measures/cut-offs/published-cut-offs';

const EVERY = new Set(PUBLISHED_CUT_OFFS.map(({ id }) => id));
const WOMAN = { sex: 'F', ageYears: 72 } as const;

const ids = (question: Omit<CutOffQuestion, 'sex' | 'ageYears'> & Partial<CutOffQuestion>): readonly string[] =>
  cutOffsFor({ ...WOMAN, ...question }).map(({ id }) => id);

describe('a cut-off that was derived with one equation', () => {
  test.each(['smi', 'smm_percent'] as const)('of %s is offered with that equation', (quantity) => {
    const offered = ids({ quantity, equationId: 'smm-janssen-2000', chosen: EVERY });
    expect(offered.length).toBeGreaterThan(0);
  });

  test('of Janssen 2004 is offered with Janssen 2000 alone', () => {
    expect(ids({ quantity: 'smi', equationId: 'smm-janssen-2000' })).toEqual(['smi-janssen-2004']);
    for (const equationId of ['smm-other-2010', 'asm-kyle-2003', 'own-muscle', '', 'SMM-JANSSEN-2000'])
      expect(ids({ quantity: 'smi', equationId, chosen: EVERY })).toEqual([]);
  });

  test('is not offered with an exported value, even where the export names the equation', () => {
    expect(ids({ quantity: 'smi', exported: true, chosen: EVERY })).toEqual([]);
    expect(ids({ quantity: 'smi', exported: true, equationId: 'smm-janssen-2000', chosen: EVERY })).toEqual([]);
    expect(ids({ quantity: 'smi', chosen: EVERY })).toEqual([]);
  });

  test('of Kyle 2003 goes with Kyle 2001, beside the ones that name no equation', () => {
    const asked = { quantity: 'ffmi', chosen: EVERY, lossIntended: false } as const;
    expect(ids({ ...asked, equationId: 'ffm-kyle-2001' })).toEqual([
      'glim-ffmi',
      'espen-2015-ffmi-with-loss',
      'ffmi-kyle-2003',
    ]);
    expect(ids({ ...asked, exported: true })).toEqual(['glim-ffmi', 'espen-2015-ffmi-with-loss']);
  });
});

describe('impedance and DXA', () => {
  test('have their own values for ASM/H²', () => {
    expect(ids({ quantity: 'asmi', equationId: 'asm-kyle-2003', chosen: EVERY })).toEqual([
      'glim-asmi-bia-asia',
      'ewgsop2-asmi',
      'awgs-asmi-bia',
    ]);
    expect(ids({ quantity: 'asmi', method: 'dxa', chosen: EVERY })).toEqual([
      'glim-asmi-dxa',
      'ewgsop2-asmi',
      'awgs-asmi-dxa',
    ]);
  });

  test('do not share the classes of the fat mass index', () => {
    expect(ids({ quantity: 'fmi', equationId: 'ffm-kyle-2001', chosen: EVERY })).toEqual(['fmi-kyle-2003']);
    expect(ids({ quantity: 'fmi', method: 'dxa', chosen: EVERY })).toEqual(['fmi-kelly-2009']);
  });
});

describe('the limits of a source', () => {
  test('waist-to-height asks for a known BMI below 35, no pregnancy, and 2 years', () => {
    expect(ids({ quantity: 'waist_height', bmi: 34.99 })).toEqual(['waist-height-nice-2022']);
    expect(ids({ quantity: 'waist_height', bmi: 35 })).toEqual([]);
    expect(ids({ quantity: 'waist_height' })).toEqual([]);
    expect(ids({ quantity: 'waist_height', bmi: 28, pregnant: true })).toEqual([]);
    expect(ids({ quantity: 'waist_height', bmi: 16, ageYears: 2 })).toEqual(['waist-height-nice-2022']);
    expect(ids({ quantity: 'waist_height', bmi: 16, ageYears: 1.99 })).toEqual([]);
  });

  test.each([
    [1, ['glim-weight-loss-within-6-months', 'espen-2015-weight-loss-3-months', 'espen-2015-weight-loss']],
    [3, ['glim-weight-loss-within-6-months', 'espen-2015-weight-loss-3-months', 'espen-2015-weight-loss']],
    [3.1, ['glim-weight-loss-within-6-months', 'espen-2015-weight-loss']],
    [6, ['glim-weight-loss-within-6-months', 'espen-2015-weight-loss']],
    [6.1, ['glim-weight-loss-beyond-6-months', 'espen-2015-weight-loss']],
  ])('weight loss over %d months has its own limits', (monthsApart, expected) => {
    expect(ids({ quantity: 'weight_loss', monthsApart, lossIntended: false })).toEqual(expected);
  });

  test('weight loss that was meant, or of which that is not known, is not classed', () => {
    expect(ids({ quantity: 'weight_loss', monthsApart: 3, lossIntended: true, chosen: EVERY })).toEqual([]);
    expect(ids({ quantity: 'weight_loss', monthsApart: 3, chosen: EVERY })).toEqual([]);
  });

  test('a time that is not known is neither within nor beyond', () => {
    expect(ids({ quantity: 'weight_loss', lossIntended: false })).toEqual(['espen-2015-weight-loss']);
  });

  test('the values beside a weight loss are offered only beside one', () => {
    expect(ids({ quantity: 'bmi' })).toEqual(['bmi-who-25', 'glim-bmi', 'espen-2015-bmi']);
    expect(ids({ quantity: 'bmi', lossIntended: false })).toEqual([
      'bmi-who-25',
      'glim-bmi',
      'espen-2015-bmi',
      'espen-2015-bmi-with-loss',
    ]);
  });

  test('nothing is offered in pregnancy', () => {
    for (const quantity of new Set(PUBLISHED_CUT_OFFS.map((published) => published.quantity)))
      expect(
        ids({ quantity, pregnant: true, chosen: EVERY, bmi: 25, lossIntended: false, equationId: 'smm-janssen-2000' }),
      ).toEqual([]);
  });
});

describe('sex and age', () => {
  test('no cut-off for adults is offered under 18', () => {
    for (const quantity of new Set(PUBLISHED_CUT_OFFS.map((published) => published.quantity)))
      for (const sex of ['F', 'M'] as const) {
        const offered = ids({ quantity, sex, ageYears: 17.99, chosen: EVERY, bmi: 25, equationId: 'smm-janssen-2000' });
        expect(offered).toEqual(quantity === 'waist_height' ? ['waist-height-nice-2022'] : []);
      }
  });

  test('Janssen 2004 begins at 60 years, for both sexes', () => {
    for (const sex of ['F', 'M'] as const) {
      const question = { quantity: 'smi', equationId: 'smm-janssen-2000', sex } as const;
      expect(ids({ ...question, ageYears: 59.9 })).toEqual([]);
      expect(ids({ ...question, ageYears: 60 })).toEqual(['smi-janssen-2004']);
    }
  });

  test('fat by age is for 20 to 79 years', () => {
    const asked = { quantity: 'fat_percent', chosen: EVERY } as const;
    for (const ageYears of [20, 45, 79.9]) expect(ids({ ...asked, ageYears })).toEqual(['espen-easo-fat-percent']);
    for (const ageYears of [19.9, 80]) expect(ids({ ...asked, ageYears })).toEqual([]);
  });
});

describe('what is switched on', () => {
  test('is nothing from memory and nothing for one group, until the clinic chooses', () => {
    expect(ids({ quantity: 'waist' })).toEqual([]);
    expect(ids({ quantity: 'waist', chosen: new Set(['waist-who', 'waist-idf-chinese']) })).toEqual([
      'waist-who',
      'waist-idf-chinese',
    ]);
  });

  test('is exactly what the clinic chose', () => {
    expect(ids({ quantity: 'bmi', chosen: new Set() })).toEqual([]);
    expect(ids({ quantity: 'bmi', chosen: new Set(['bmi-who-classes']) })).toEqual(['bmi-who-classes']);
  });
});
