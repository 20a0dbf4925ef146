import { describe, expect, it } from 'vitest';
import { chiSquareQuantile } from '../../../lib/stats/chi-square-quantile';
import { cochranC } from '../../../lib/stats/cochran-c';
import { cochranCLimit } from '../../../lib/stats/cochran-c-limit';
import { leastSignificantChange } from '../../../lib/stats/least-significant-change';
import { precisionError } from '../../../lib/stats/precision-error';
import { precisionRange } from '../../../lib/stats/precision-range';
import { varianceComponents } from '../../../lib/stats/variance-components';
import { varianceOfChange } from '../../../lib/stats/variance-of-change';
import { expectClose, expectPrinted } from '../../stats/expect-close';
import { sumsOfReadings } from '../../stats/sums-of-readings';
import values from './values/precision.json';

/** Peak flow of 17 people, two meters, two readings each: Bland & Altman, Lancet 1986;i:307–310; R 4.2.2. */
describe.each(['wright', 'mini'] as const)('repeatability of peak flow, %s meter', (meter) => {
  const expected = values[meter];
  const duplicates = values.readings[meter];
  const asReplicates = varianceComponents(sumsOfReadings(duplicates.map((pair) => [pair])));
  const asSingleVisits = varianceComponents(sumsOfReadings(duplicates.map((pair) => pair.map((reading) => [reading]))));

  it.each([
    ['replicates of one visit', asReplicates],
    ['single readings of two visits', asSingleVisits],
  ])('gives the root mean square SD from %s', (_name, components) => {
    if (components === undefined) throw new Error('no components');
    expectClose(precisionError(components), expected.rms_sd);
    expect(components.between?.df ?? components.dfWithin).toBe(expected.df);
  });

  it('gives the coefficient of twice the SD of differences, as in 1986', () => {
    if (asReplicates === undefined) throw new Error('no components');
    expectPrinted(2 * Math.SQRT2 * precisionError(asReplicates), { wright: 43.2938, mini: 56.31633 }[meter], 5);
  });

  it('gives the χ² interval and the one-sided upper limit', () => {
    const [low, high] = precisionRange(expected.rms_sd, expected.df);
    expectClose(low, expected.rms_sd_ci95[0] ?? NaN);
    expectClose(high, expected.rms_sd_ci95[1] ?? NaN);
    expectClose(precisionRange(expected.rms_sd, expected.df, 0.9)[1], expected.upper95_one_sided);
  });

  it('gives the least significant change at three levels, with the factor of known error', () => {
    if (asSingleVisits === undefined) throw new Error('no components');
    const variance = varianceOfChange(asSingleVisits, 1, 1);
    expectClose(leastSignificantChange(variance, 0.95, 30), expected.lsc_95);
    expectClose(leastSignificantChange(variance, 0.9, 30), expected.lsc_90);
    expectClose(leastSignificantChange(variance, 0.8, 30), expected.lsc_80);
  });
});

describe('intervals of a precision error', () => {
  it('match R for the four replicates of ergoStool', () => {
    const { rms_sd: estimate, df, ci95 } = values.ergoStool;
    const [low, high] = precisionRange(estimate, df);
    expectClose(low, ci95[0] ?? NaN);
    expectClose(high, ci95[1] ?? NaN);
  });

  it('match R by degrees of freedom', () => {
    expect(values.intervalFactors.length).toBe(9);
    for (const row of values.intervalFactors) {
      const [low, high] = precisionRange(1, row.df);
      expectClose(low, row.lower_factor);
      expectClose(high, row.upper_factor);
      expectClose(Math.sqrt(row.df / chiSquareQuantile(0.05, row.df)), row.one_sided_upper95);
    }
  });
});

/** Limits: Cochran's C in terms of F, computed in R 4.2.2. */
describe("Cochran's C", () => {
  it('has the limits that R gives for two readings', () => {
    expectPrinted(cochranCLimit(30, 2), 0.292911859, 9);
    expectPrinted(cochranCLimit(30, 2, 0.01), 0.363214595, 9);
    expectPrinted(cochranCLimit(17, 2), 0.434131624, 9);
    expectPrinted(cochranCLimit(17, 2, 0.01), 0.532420251, 9);
  });

  it('finds the one outlying person of the mini meter and none of the Wright meter', () => {
    const ofMeter = (pairs: readonly (readonly number[])[]) =>
      cochranC(pairs.map((pair) => ((pair[0] ?? NaN) - (pair[1] ?? NaN)) ** 2 / 2));
    expectPrinted(ofMeter(values.readings.mini), 0.683730247, 9);
    expectPrinted(ofMeter(values.readings.wright), 0.366055737, 9);
  });
});
