import { describe, expect, it } from 'vitest';
import { changedPer100 } from '../../../lib/stats/changed-per-100';
import { leastSignificantChange } from '../../../lib/stats/least-significant-change';
import { precisionError } from '../../../lib/stats/precision-error';
import { thresholdFactor } from '../../../lib/stats/threshold-factor';
import { tTwoSidedP } from '../../../lib/stats/t-two-sided-p';
import { varianceComponents, type VarianceComponents } from '../../../lib/stats/variance-components';
import { varianceOfChange } from '../../../lib/stats/variance-of-change';
import { expectPrinted } from '../../stats/expect-close';
import { sumsOfReadings } from '../../stats/sums-of-readings';

/** Six invented clients of unequal visits and readings; expected values computed in R 4.2.2 from the definitions. */
describe('the two components of six clients', () => {
  const components = varianceComponents(
    sumsOfReadings([
      [
        [50.1, 50.5],
        [50.9, 51.1],
      ],
      [[44.2, 44.0], [43.6]],
      [[61.3], [61.0]],
      [
        [55.0, 55.4, 54.9],
        [55.9, 55.6],
        [55.2, 55.3],
      ],
      [
        [47.8, 47.5],
        [48.6, 48.3],
      ],
      [
        [39.9, 40.3],
        [39.5, 39.2],
      ],
    ]),
  );
  if (components?.between === undefined) throw new Error('no components');
  const { between } = components;

  it('are those of R', () => {
    expectPrinted(components.repositioning, 0.0477272727273, 13);
    expect(components.dfWithin).toBe(11);
    expectPrinted(between.meanSquare, 0.178273809524, 12);
    expect(between.df).toBe(7);
    expectPrinted(between.repositioningShare, 0.59126984127, 12);
    expectPrinted(between.dayToDay, 0.150054112554, 12);
    expectPrinted(precisionError(components), 0.44472619136, 12);
  });

  it.each([
    [1, 1, 0.395562770563, 1.232695458788],
    [2, 2, 0.347835497835, 1.155939332885],
    [1, 3, 0.363744588745, 1.182078617907],
  ])('give the threshold for %i and %i readings', (k1, k2, variance, threshold) => {
    expectPrinted(varianceOfChange(components, k1, k2), variance, 12);
    expectPrinted(leastSignificantChange(varianceOfChange(components, k1, k2), 0.95, 30), threshold, 12);
  });

  it('give the wider threshold of t on seven degrees of freedom', () => {
    expectPrinted(leastSignificantChange(varianceOfChange(components, 1, 1), 0.95, between.df), 1.487201601, 9);
    expectPrinted(leastSignificantChange(varianceOfChange(components, 2, 2), 0.95, between.df), 1.394598167, 9);
  });
});

/** σ_b 0.5 and σ_w 0.3 taken as known; R 4.2.2. */
describe('the threshold with a day component that replicates do not shrink', () => {
  const known: VarianceComponents = {
    repositioning: 0.09,
    dfWithin: 100,
    limitedByDisplay: false,
    between: { meanSquare: 0.34, df: 100, repositioningShare: 1, dayToDay: 0.25, replicatesEarnNothing: false },
  };

  it.each([
    [1, 1, 1.616227706],
    [1, 2, 1.561834291],
    [2, 2, 1.505476903],
    [3, 3, 1.466702744],
    [10, 10, 1.410629529],
  ])('is right for %i and %i readings', (k1, k2, threshold) => {
    expectPrinted(leastSignificantChange(varianceOfChange(known, k1, k2), 0.95, 100), threshold, 9);
  });
});

/** An estimated precision error makes the share called changed differ from the nominal one; R 4.2.2. */
describe('an estimated precision error', () => {
  it.each([
    [30, 1.418, 14.257, 3],
    [60, 2.09, 10.74, 2],
  ])('on %i degrees of freedom fixes a share of unchanged people between two limits', (df, low, high, decimals) => {
    const range = changedPer100(thresholdFactor(0.95, 30), df);
    expectPrinted(range[0], low, decimals);
    expectPrinted(range[1], high, decimals);
  });

  it.each([
    [10, 7.844, 3],
    [15, 6.885, 3],
    [20, 6.408, 3],
    [30, 5.9347, 4],
    [60, 5.465, 3],
    [100, 5.278, 3],
  ])('on %i degrees of freedom calls more than 5 in 100 changed with the factor z', (df, share, decimals) => {
    expectPrinted(100 * tTwoSidedP(thresholdFactor(0.95, 30), df), share, decimals);
  });

  it.each([
    [0.8, 20.98],
    [0.9, 11.04],
  ])('on 30 degrees of freedom calls more than the rest of %d changed with the factor z', (level, share) => {
    expectPrinted(100 * tTwoSidedP(thresholdFactor(level, 30), 30), share, 2);
  });

  it('has factors of t that are larger than z by little on 30 and by much on 10 degrees of freedom', () => {
    const ratio = (df: number): number => thresholdFactor(0.95, df, 'always-t') / thresholdFactor(0.95, 30);
    expectPrinted(ratio(30), 1.041995, 6);
    expectPrinted(ratio(10), 1.136826, 6);
  });

  it('has the factors of t, and the cautious factor, for the difference of two single visits', () => {
    const ofDifference = (level: number, df: number): number => Math.SQRT2 * thresholdFactor(level, df, 'always-t');
    expectPrinted(ofDifference(0.95, 30), 2.888209406, 9);
    expectPrinted(ofDifference(0.9, 30), 2.400289365, 9);
    expectPrinted(ofDifference(0.8, 30), 1.853206701, 9);
    expectPrinted(ofDifference(0.95, 10), 3.151064183, 9);
    expectPrinted(Math.SQRT2 * thresholdFactor(0.95, 30, 'cautious'), 3.530400795, 9);
  });
});
