import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cochranC } from '../../lib/stats/cochran-c';
import { cochranCLimit } from '../../lib/stats/cochran-c-limit';
import { meanInterval } from '../../lib/stats/mean-interval';
import { quantileType7 } from '../../lib/stats/quantile-type-7';
import { wilsonInterval } from '../../lib/stats/wilson-interval';

describe('intervals', () => {
  it('of a mean need two values and are centred on it', () => {
    expect(meanInterval({ n: 1, mean: 3, sd: 0 })).toBeUndefined();
    const [low, high] = meanInterval({ n: 2, mean: 3, sd: 1 }) ?? [NaN, NaN];
    expect((low + high) / 2).toBeCloseTo(3, 12);
    expect(high - 3).toBeCloseTo(12.706204736432095 / Math.SQRT2, 9);
  });

  it('of a share stay in [0, 1], hold the share and mirror when successes and failures are exchanged', () => {
    expect(wilsonInterval(0, 0)).toBeUndefined();
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.nat(400), (n, some) => {
        const count = Math.min(n, some);
        const [low, high] = wilsonInterval(count, n) ?? [NaN, NaN];
        const [mirroredLow, mirroredHigh] = wilsonInterval(n - count, n) ?? [NaN, NaN];
        expect(low).toBeGreaterThanOrEqual(0);
        expect(high).toBeLessThanOrEqual(1);
        expect(low).toBeLessThanOrEqual(count / n);
        expect(high).toBeGreaterThanOrEqual(count / n);
        expect(mirroredLow).toBeCloseTo(1 - high, 12);
        expect(mirroredHigh).toBeCloseTo(1 - low, 12);
      }),
      { seed: 4 },
    );
  });
});

describe('the sample quantile', () => {
  it('interpolates between order statistics and leaves its input as it was', () => {
    const values = [4, 1, 3, 2];
    expect(quantileType7(values, 0.25)).toBe(1.75);
    expect(values).toEqual([4, 1, 3, 2]);
    expect(quantileType7([], 0.5)).toBeUndefined();
  });

  it('sorts by size, not by spelling', () => {
    expect(quantileType7([10, 9, 100], 0.5)).toBe(10);
  });
});

describe("Cochran's C", () => {
  it('is the largest share of the variances', () => {
    expect(cochranC([1, 2, 1])).toBe(0.5);
    expect(cochranC([0, 0])).toBeUndefined();
    expect(cochranC([])).toBeUndefined();
  });

  it('has a limit only for two or more variances of two or more readings', () => {
    expect(cochranCLimit(1, 2)).toBeUndefined();
    expect(cochranCLimit(5, 1)).toBeUndefined();
    expect(cochranCLimit(5, 2)).toBeGreaterThan(cochranCLimit(6, 2) ?? 1);
  });
});
