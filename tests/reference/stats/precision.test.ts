import { describe, expect, it } from 'vitest';
import { chiSquareQuantile } from '../../../lib/stats/chi-square-quantile';
import { c4 } from '../../../lib/stats/c4';
import { cochranC } from '../../../lib/stats/cochran-c';
import { cochranCLimit } from '../../../lib/stats/cochran-c-limit';
import { kendallTauB } from '../../../lib/stats/kendall-tau-b';
import { leastSignificantChange } from '../../../lib/stats/least-significant-change';
import { precisionError } from '../../../lib/stats/precision-error';
import { precisionRange } from '../../../lib/stats/precision-range';
import { rmsCv } from '../../../lib/stats/rms-cv';
import { suggestsLogForm } from '../../../lib/stats/suggests-log-form';
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

const duplicatesOf = (pairs: readonly (readonly number[])[]) =>
  pairs.map(([first = NaN, second = NaN]) => ({
    k: 2,
    mean: (first + second) / 2,
    sd: Math.abs(first - second) / Math.SQRT2,
  }));

/** Peak flow of 17 people, `cor.test(method = "kendall", exact = FALSE)` of R 4.2.2 on |difference| and mean. */
describe('the rank test of error against size', () => {
  it.each([
    ['wright', 0.172314860983, 0.952018505452, 0.341087596876],
    ['mini', -0.014927035851, -0.082666274768, 0.934116901892],
  ] as const)('gives the values of R for the %s meter', (meter, tau, z, twoSidedP) => {
    const people = duplicatesOf(values.readings[meter]);
    const found = kendallTauB(
      people.map(({ mean }) => mean),
      people.map(({ sd }) => Math.SQRT2 * sd),
    );
    expectPrinted(found?.tau, tau, 12);
    expectPrinted(found?.z, z, 12);
    expectPrinted(found?.twoSidedP, twoSidedP, 12);
    const test = suggestsLogForm(people);
    expectPrinted(test?.kendall.tau, tau, 12);
    expect(test?.df).toBe(17);
    expect(test?.suggested).toBe(false);
  });

  it('has a one-sided p beside it', () => {
    expectPrinted(suggestsLogForm(duplicatesOf(values.readings.wright))?.kendall.oneSidedP, 0.170543798438, 12);
  });

  it('divides the SD by the factors c₄ of R, sqrt(2/(k-1))*gamma(k/2)/gamma((k-1)/2)', () => {
    expectPrinted(c4(2), 0.7978845608, 10);
    expectPrinted(c4(3), 0.8862269255, 10);
    expectPrinted(c4(4), 0.9213177319, 10);
  });

  it('has the factor for five values that the SAS/QC User’s Guide prints, and its limit (4k − 4)/(4k − 3) for many', () => {
    expectPrinted(c4(5), 0.939985603, 9);
    expectPrinted(c4(1000), 3996 / 3997, 6);
  });
});

describe('the log form of the error of peak flow', () => {
  it.each([
    ['wright', 0.0350250511596, 0.0970827047, 1.1019515064, 0.9074809501, 3.4995586973331076],
    ['mini', 0.0508176425, undefined, 1.1512596955, 0.8686137489, 5.0656],
  ] as const)(
    'gives the SD of the logarithms and the factors of R for the %s meter',
    (meter, sd, lsc, up, down, cv) => {
      const logs = values.readings[meter].map((pair) => [pair.map((reading) => Math.log(reading))]);
      const components = varianceComponents(sumsOfReadings(logs));
      if (components === undefined) throw new Error('no components');
      expectPrinted(precisionError(components), sd, 10);
      const limit = leastSignificantChange(varianceOfChange(components, 1, 1), 0.95, 30);
      if (lsc !== undefined) expectPrinted(limit, lsc, 10);
      expectPrinted(Math.exp(limit), up, 10);
      expectPrinted(Math.exp(-limit), down, 10);
      expectPrinted(rmsCv(duplicatesOf(values.readings[meter])), cv, meter === 'wright' ? 12 : 4);
    },
  );

  it('of a CV of 2 % is an SD of √ln(1.0004) with these factors', () => {
    const sd = Math.sqrt(Math.log(1 + 0.02 ** 2));
    expectPrinted(sd, 0.0199980004, 10);
    const limit = leastSignificantChange(2 * sd * sd, 0.95, 30);
    expectPrinted(limit, 0.0554306106, 10);
    expectPrinted(Math.exp(limit), 1.0569956702, 10);
    expectPrinted(Math.exp(-limit), 0.9460776692, 10);
  });
});
