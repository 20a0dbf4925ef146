import { describe, expect, it } from 'vitest';
import { meanInterval } from '../../../lib/stats/mean-interval';
import { quantileType7 } from '../../../lib/stats/quantile-type-7';
import { wilsonInterval } from '../../../lib/stats/wilson-interval';
import { expectClose, expectPrinted } from '../../stats/expect-close';
import quantiles from './values/quantiles-type-7.json';

describe.each(Object.entries(quantiles.sets))('quantiles of %s', (_name, set) => {
  it('are those of R type 7 at every probability', () => {
    expect(set.type7.length).toBe(quantiles.probs.length);
    quantiles.probs.forEach((probability, index) => {
      expectClose(quantileType7(set.values, probability), set.type7[index] ?? NaN, 1e-12, 1);
    });
  });
});

describe('quantiles', () => {
  it('are told from type 2 by these data', () => {
    const { values, type2 } = quantiles.sets.ozone;
    const differing = quantiles.probs.filter(
      (probability, index) => Math.abs((quantileType7(values, probability) ?? NaN) - (type2[index] ?? NaN)) > 1e-6,
    );
    expect(differing.length).toBeGreaterThan(3);
  });
});

/** Newcombe, Stat Med 1998;17:857–872, table I, method 3. */
describe('Wilson intervals', () => {
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
    [0, 10, 0, 0.2775],
  ])('match the published example of %i in %i', (count, n, low, high) => {
    const interval = wilsonInterval(count, n);
    expectPrinted(interval?.[0], low, 4);
    expectPrinted(interval?.[1], high, 4);
  });
});

/** Bland & Altman, Lancet 1986;i:307–310: difference of two meters in 17 people; R 4.2.2. */
describe('the t interval of a mean', () => {
  it('matches the peak-flow bias', () => {
    const interval = meanInterval({ n: 17, mean: -2.1176470588235294, sd: 38.765129873607378 });
    expectClose(interval?.[0], -22.048837696645165);
    expectClose(interval?.[1], 17.813543578998107);
  });
});
