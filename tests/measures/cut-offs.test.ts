import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { citationLine } from '../../lib/measures/citation';
import { branchFor, classify } from '../../lib/measures/cut-offs/classify';
import { CUT_OFF_QUANTITIES, isCutOffInForceByDefault, type CutOff } from '../../lib/measures/cut-offs/cut-off';
import { below, ladder, upTo } from '../../lib/measures/cut-offs/ladder';
import { PUBLISHED_CUT_OFFS } from '../../lib/measures/cut-offs/published-cut-offs';

const cutOff = (id: string): CutOff => {
  const found = PUBLISHED_CUT_OFFS.find((candidate) => candidate.id === id);
  if (found === undefined) throw new Error(`no cut-off ${id}`);
  return found;
};

describe('every cut-off', () => {
  const all = PUBLISHED_CUT_OFFS.map((published) => [published.id, published] as const);

  test('has an id of its own', () => {
    expect(new Set(all.map(([id]) => id)).size).toBe(all.length);
  });

  test.each(all)('%s divides all values among its intervals, each value in exactly one', (_, published) => {
    const value = fc.oneof(
      fc.double({ min: -10, max: 200, noNaN: true }),
      fc.constantFrom(
        ...published.branches.flatMap(({ intervals }) => intervals.flatMap(({ upper }) => (upper ? [upper.at] : []))),
      ),
    );
    fc.assert(
      fc.property(
        value,
        fc.constantFrom('F' as const, 'M' as const),
        fc.double({ min: 0, max: 110, noNaN: true }),
        (x, sex, ageYears) => {
          const branch = branchFor(published, { sex, ageYears });
          const classed = classify(published, x, { sex, ageYears });
          if (branch === undefined) return classed === undefined;
          const holding = branch.intervals.filter(
            ({ lower, upper }) =>
              (lower === null || (lower.included ? x >= lower.at : x > lower.at)) &&
              (upper === null || (upper.included ? x <= upper.at : x < upper.at)),
          );
          return holding.length === 1 && holding[0] === classed?.interval;
        },
      ),
      { numRuns: 200 },
    );
  });

  test.each(all)('%s has branches that share no age of one sex', (_, published) => {
    for (let ageYears = 0; ageYears <= 110; ageYears += 0.5)
      for (const sex of ['F', 'M'] as const)
        expect(
          published.branches.filter(
            (branch) =>
              (branch.sex ?? sex) === sex && ageYears >= branch.ageFrom && ageYears < (branch.ageBelow ?? Infinity),
          ).length,
        ).toBeLessThanOrEqual(1);
  });

  test.each(all)('%s says its source, its bounds and what was read', (_, published) => {
    for (const words of [published.name, published.boundRule, published.verificationNote]) expect(words).toMatch(/\S/);
    expect(citationLine(published.citation)).toMatch(/\b20\d\d\b/);
    expect(published.citation.journal ?? published.citation.publisher).toMatch(/\S/);
    expect(published.version).toBe(1);
    expect(published.methods.length).toBeGreaterThan(0);
    expect(published.cautions.length).toBeGreaterThan(0);
    expect(CUT_OFF_QUANTITIES).toContain(published.quantity);
  });

  test.each(all)('%s has words that are neither a diagnosis nor a stage', (_, published) => {
    for (const { intervals } of published.branches) {
      const ids = intervals.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      for (const { words } of intervals) {
        expect(words).toMatch(/^[A-Z].*\.$/);
        expect(words).not.toMatch(
          /\b(stage|diagnos\w*|malnutrition|malnourished|sarcopeni\w*|you|patient|severe malnutrition)\b/i,
        );
      }
    }
  });

  test('of malnutrition says that one phenotypic criterion is met, and nothing more', () => {
    const malnutrition = PUBLISHED_CUT_OFFS.filter(({ id }) => /^(glim|espen-2015)/.test(id));
    expect(malnutrition).toHaveLength(12);
    for (const { branches } of malnutrition)
      for (const { intervals } of branches)
        for (const { criterion, words } of intervals)
          expect(words).toMatch(criterion === 'met' ? /^One phenotypic criterion is met: / : /is not met\.$/);
  });

  test('has every quantity at least once', () => {
    expect(new Set(PUBLISHED_CUT_OFFS.map(({ quantity }) => quantity))).toEqual(new Set(CUT_OFF_QUANTITIES));
  });

  test('is off by default where it is from memory or for one group of people', () => {
    expect(PUBLISHED_CUT_OFFS.filter(isCutOffInForceByDefault).map(({ id }) => id)).toEqual([
      'bmi-who-25',
      'waist-height-nice-2022',
      'glim-weight-loss-within-6-months',
      'glim-weight-loss-beyond-6-months',
      'glim-bmi',
      'espen-2015-bmi',
      'espen-2015-weight-loss-3-months',
      'espen-2015-weight-loss',
      'espen-2015-bmi-with-loss',
      'espen-2015-ffmi-with-loss',
      'ewgsop2-asmi',
      'ewgsop2-grip',
      'ewgsop2-gait',
      'ewgsop2-chair',
      'fnih-asm-bmi',
      'fnih-grip',
      'smi-janssen-2004',
    ]);
  });
});

describe('a class', () => {
  test('names the cut-off and its version', () => {
    expect(classify(cutOff('bmi-who-25'), 25, { sex: 'F', ageYears: 18 })).toMatchObject({
      cutOffId: 'bmi-who-25',
      cutOffVersion: 1,
      words: 'At or above the international BMI limit of 25 kg/m².',
    });
  });

  test.each([
    ['bmi-who-25', 17.99],
    ['smi-janssen-2004', 59.99],
    ['waist-height-nice-2022', 1.9],
    ['espen-easo-fat-percent', 19],
    ['espen-easo-fat-percent', 80],
  ])('of %s is not there at %d years', (id, ageYears) => {
    for (const sex of ['F', 'M'] as const) expect(classify(cutOff(id), 10, { sex, ageYears })).toBeUndefined();
  });

  test.each([NaN, Infinity, -Infinity])('is not there for %d', (value) => {
    expect(classify(cutOff('bmi-who-25'), value, { sex: 'F', ageYears: 40 })).toBeUndefined();
  });
});

describe('a ladder of intervals', () => {
  const rung = (id: string) => ({ id, words: id });

  test('hands each limit to one side', () => {
    const [low, middle, high] = ladder([below(1, rung('a')), upTo(2, rung('b'))], rung('c'));
    expect(low).toMatchObject({ id: 'a', lower: null, upper: { at: 1, included: false } });
    expect(middle).toMatchObject({ id: 'b', lower: { at: 1, included: true }, upper: { at: 2, included: true } });
    expect(high).toMatchObject({ id: 'c', lower: { at: 2, included: false }, upper: null });
  });

  test('must rise', () => {
    expect(() => ladder([below(2, rung('a')), below(2, rung('b'))], rung('c'))).toThrow(RangeError);
    expect(() => ladder([below(2, rung('a')), below(1, rung('b'))], rung('c'))).toThrow(RangeError);
  });
});
