import { describe, expect, it } from 'vitest';
import { chiSquareQuantile } from '../../../lib/stats/chi-square-quantile';
import { chiSquareUpperTail } from '../../../lib/stats/chi-square-upper-tail';
import { fQuantile } from '../../../lib/stats/f-quantile';
import { fUpperTail } from '../../../lib/stats/f-upper-tail';
import { normalQuantile } from '../../../lib/stats/normal-quantile';
import { tQuantile } from '../../../lib/stats/t-quantile';
import { tUpperTail } from '../../../lib/stats/t-upper-tail';
import { expectClose } from '../../stats/expect-close';
import largeDf from './values/chi-square-large-df.json';
import quantiles from './values/quantiles-40-digit.json';
import tails from './values/tails-r.json';

type Cell = string | number;
/** The cells of a row as numbers; a missing one is NaN and fails every comparison. */
const numbers = (row: readonly Cell[]): readonly [number, number, number, number] => {
  const at = (index: number): number => Number(row[index] ?? NaN);
  return [at(0), at(1), at(2), at(3)];
};

describe('quantiles against 40-digit values', () => {
  it('agree for F from p 1e-20 to 1 − 1e-12', () => {
    expect(quantiles.f.length).toBeGreaterThan(70);
    for (const row of quantiles.f) {
      const [p, df1, df2, quantile] = numbers(row);
      expectClose(fQuantile(p, df1, df2), quantile);
    }
  });

  it('agree for χ² up to 1,000 degrees of freedom', () => {
    expect(quantiles.chiSquare.length).toBeGreaterThan(50);
    for (const row of quantiles.chiSquare) {
      const [p, df, quantile] = numbers(row);
      expectClose(chiSquareQuantile(p, df), quantile);
    }
  });

  it('agree for χ² above 1,000 degrees of freedom, between 1e-6 and 1 − 1e-6', () => {
    expect(largeDf.quantiles.length).toBe(30);
    for (const row of largeDf.quantiles) {
      const [p, df, quantile] = numbers(row);
      expectClose(chiSquareQuantile(p, df), quantile);
    }
  });

  it('agree for t from p 1e-20, also on broken degrees of freedom', () => {
    expect(quantiles.t.length).toBeGreaterThan(50);
    for (const row of quantiles.t) {
      const [p, df, quantile] = numbers(row);
      expectClose(tQuantile(p, df), quantile);
    }
  });

  it('agree for the normal distribution with R 4.2.2 between p 1e-8 and 1 − 1e-8', () => {
    // Further out the library goes through 2p − 1, which keeps too few digits of a small p.
    const inRange = tails.normalQuantile.filter(([p]) => p !== undefined && p >= 1e-8 && p <= 1 - 1e-8);
    expect(inRange.length).toBeGreaterThan(15);
    for (const row of inRange) {
      const [p, quantile] = numbers(row);
      expectClose(normalQuantile(p), quantile, 1e-9, 1e-6);
    }
  });
});

describe('upper tails against R 4.2.2', () => {
  it('agree for t, also far out and on 100,000 degrees of freedom', () => {
    for (const row of tails.t) {
      const [statistic, df, upper] = numbers(row);
      expectClose(tUpperTail(statistic, df), upper);
    }
  });

  it('agree for F', () => {
    for (const row of tails.f) {
      const [statistic, df1, df2, upper] = numbers(row);
      expectClose(fUpperTail(statistic, df1, df2), upper);
    }
  });

  it('agree for χ²', () => {
    for (const row of tails.chiSquare) {
      const [statistic, df, upper] = numbers(row);
      expectClose(chiSquareUpperTail(statistic, df), upper);
    }
  });
});
