import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changePrior, type ChangeGroup } from '../../lib/stats/change-prior';
import { confidenceFromError } from '../../lib/stats/confidence-from-error';
import { shrunkenChange } from '../../lib/stats/shrunken-change';
import { expectPrinted } from './expect-close';

const CHANGES = [-1.2, 0.4, -0.3, -2.1, 0.8, -0.9, -1.5, 0.1] as const;
const VARIANCES = [0.72, 0.72, 0.24, 0.24, 0.72, 0.24, 0.48, 0.48] as const;

const groupsOf = (changes: readonly number[], variances: readonly number[]): ChangeGroup[] =>
  [...new Set(variances)].map((variance) => {
    const own = changes.filter((_, index) => variances[index] === variance);
    const mean = own.reduce((sum, value) => sum + value, 0) / own.length;
    return { n: own.length, mean, sumSquares: own.reduce((sum, value) => sum + (value - mean) ** 2, 0), variance };
  });

describe('confidence from error alone', () => {
  // R 4.2.2: pt(2, 30), and pnorm(2) as the limit.
  it('is Student’s t of the change over its error', () => {
    expectPrinted(confidenceFromError(-2, 1, 30), 0.972687478, 9);
    expectPrinted(confidenceFromError(2, 1, 30), 0.972687478, 9);
    expectPrinted(confidenceFromError(-2, 1, 1e9), 0.977249868, 6);
  });

  it('never falls below one half, and there is none without an error', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e3, max: 1e3, noNaN: true }),
        fc.double({ min: 1e-6, max: 1e3, noNaN: true }),
        fc.integer({ min: 1, max: 200 }),
        (change, variance, df) => {
          const confidence = confidenceFromError(change, variance, df) ?? NaN;
          expect(confidence).toBeGreaterThanOrEqual(0.5);
          expect(confidence).toBeLessThanOrEqual(1);
        },
      ),
      { seed: 13 },
    );
    expect(confidenceFromError(1, 0, 30)).toBeUndefined();
  });
});

describe('a change beside those of other people', () => {
  // Expected values: computed in R 4.2.2 from the formulas at `changePrior` and `shrunkenChange`.
  it('is pulled by as much as its own error deserves', () => {
    const prior = changePrior(groupsOf(CHANGES, VARIANCES));
    if (prior === undefined) throw new Error('no prior');
    expectPrinted(prior.variance, 0.526964286, 9);
    expectPrinted(prior.mean, -0.685610958, 9);
    const guesses = CHANGES.map((change, index) => shrunkenChange(change, VARIANCES[index] ?? 0, prior));
    expectPrinted(guesses[0]?.weight, 0.422597737, 9);
    expectPrinted(guesses[2]?.weight, 0.687077998, 9);
    expectPrinted(guesses[6]?.weight, 0.523319738, 9);
    const expected = [
      -0.902990603, -0.226834224, -0.420666153, -1.657406549, -0.057795129, -0.832912952, -1.111796818, -0.274485238,
    ];
    expected.forEach((value, index) => {
      expectPrinted(guesses[index]?.change, value, 9);
    });
  });

  it('gives the share of such people who are below zero', () => {
    const guess = shrunkenChange(-2, 1, { n: 40, mean: -0.4, variance: 1 });
    expect(guess?.weight).toBe(0.5);
    expectPrinted(guess?.change, -1.2, 9);
    expectPrinted(guess?.sd, 0.707106781, 9);
    expectPrinted(guess?.below, 0.955156989, 9);
    expectPrinted((guess?.below ?? 0) + (guess?.above ?? 0), 1, 12);
  });

  it('is less sure than error alone: at the threshold, where true changes spread as much as error, 92 % and not 97.5 %', () => {
    const threshold = 1.959963984540054;
    expectPrinted(confidenceFromError(-threshold, 1, 1e9), 0.975, 6);
    // R 4.2.2: pnorm(1.959963984540054 / sqrt(2)).
    expectPrinted(shrunkenChange(-threshold, 1, { n: 40, mean: 0, variance: 1 })?.below, 0.917111864, 9);
  });

  it('says nothing about one person where error explains all the spread', () => {
    const prior = changePrior([{ n: 40, mean: 0.1, sumSquares: 10, variance: 1 }]);
    expect(prior).toMatchObject({ variance: 0 });
    expect(prior === undefined ? 0 : shrunkenChange(2, 1, prior)).toBeUndefined();
    expect(changePrior([{ n: 1, mean: 1, sumSquares: 0, variance: 1 }])).toBeUndefined();
  });
});
