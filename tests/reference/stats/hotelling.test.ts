import { describe, expect, it } from 'vitest';
import type { BivariateSample } from '../../../lib/stats/bivariate';
import { chiSquareFactor } from '../../../lib/stats/chi-square-factor';
import { confidenceFactor } from '../../../lib/stats/confidence-factor';
import { covarianceFromSums } from '../../../lib/stats/covariance-from-sums';
import { eigen2x2 } from '../../../lib/stats/eigen-2x2';
import { hotellingOneSample, type HotellingTest } from '../../../lib/stats/hotelling-one-sample';
import { hotellingPaired } from '../../../lib/stats/hotelling-paired';
import { hotellingTwoSample } from '../../../lib/stats/hotelling-two-sample';
import { hotellingUnequal } from '../../../lib/stats/hotelling-unequal';
import { expectClose, expectPrinted } from '../../stats/expect-close';
import { irisSample } from './iris-sample';
import values from './values/hotelling-and-ellipse.json';

interface Expected {
  readonly T2: number;
  readonly F: number;
  readonly df2: number;
  readonly pvalue: number;
  readonly mahalanobis_D: number;
}

const expectTest = (test: HotellingTest | undefined, expected: Expected): void => {
  expectClose(test?.t2, expected.T2);
  expectClose(test?.f, expected.F);
  expect(test?.df2).toBe(expected.df2);
  expectClose(test?.p, expected.pvalue);
  expectClose(test?.mahalanobisD, expected.mahalanobis_D);
};

/** R 4.2.2, iris. */
describe('Hotelling tests of iris', () => {
  it('agree for one sample', () => {
    expectTest(hotellingOneSample(irisSample('setosa'), [5, 3.5]), values.oneSample);
  });

  it('agree for two samples, down to a p of 1e-38', () => {
    const { versicolor_virginica: close, setosa_versicolor: apart } = values.twoSample;
    expectTest(hotellingTwoSample(irisSample('versicolor'), irisSample('virginica')), close);
    expectTest(hotellingTwoSample(irisSample('setosa'), irisSample('versicolor')), apart);
  });
});

/** Johnson & Wichern, effluent data: biochemical oxygen demand and suspended solids by two laboratories. */
describe('the paired test of the effluent data', () => {
  const lab1 = [6, 27, 6, 23, 18, 64, 8, 44, 11, 30, 34, 75, 28, 26, 71, 124, 43, 54, 33, 30, 20, 14];
  const lab2 = [25, 15, 28, 13, 36, 22, 35, 29, 15, 31, 44, 64, 42, 30, 54, 64, 34, 56, 29, 20, 39, 21];
  const differences = lab1.map((value, index) => value - (lab2[index] ?? NaN));
  const x = differences.filter((_, index) => index % 2 === 0);
  const y = differences.filter((_, index) => index % 2 === 1);
  const centre = (of: readonly number[]): number => of.reduce((sum, value) => sum + value, 0) / of.length;
  const products = (a: readonly number[], b: readonly number[]): number =>
    a.reduce((sum, value, index) => sum + (value - centre(a)) * ((b[index] ?? NaN) - centre(b)), 0);
  const sample = covarianceFromSums({
    n: x.length,
    mean: [centre(x), centre(y)],
    sxx: products(x, x),
    sxy: products(x, y),
    syy: products(y, y),
  });

  it('gives the textbook statistic from the raw data', () => {
    if (sample === undefined) throw new Error('no sample');
    expect(sample.n).toBe(11);
    expectPrinted(sample.mean[0], -9.363636, 6);
    expectPrinted(sample.mean[1], 13.272727, 6);
    expectPrinted(sample.cov.xx, 199.25455, 5);
    expectPrinted(sample.cov.xy, 88.30909, 5);
    expectPrinted(sample.cov.yy, 418.61818, 5);
    const test = hotellingPaired(sample);
    expectPrinted(test?.t2, 13.63931, 5);
    expect(test?.p).toBeLessThan(0.05);
    expectPrinted(11 * (confidenceFactor(11, 0.95) ?? NaN), 9.458877, 6);
  });
});

/** Johnson & Wichern: electricity consumption of homes with and without air conditioning. */
describe('the two-sample tests of the electricity data', () => {
  const cooled: BivariateSample = { n: 45, mean: [204.4, 556.6], cov: { xx: 13825.3, xy: 23823.4, yy: 73107.4 } };
  const uncooled: BivariateSample = { n: 55, mean: [130, 355], cov: { xx: 8632, xy: 19616.7, yy: 55964.5 } };

  it('give the pooled statistic', () => {
    const test = hotellingTwoSample(cooled, uncooled);
    expectPrinted(test?.t2, 16.066219, 6);
    expectPrinted(test?.f, 7.951139, 6);
    expect(test?.df2).toBe(97);
    expectPrinted(test?.p, 0.000634378, 9);
  });

  it('give the unpooled statistic with its approximate degrees of freedom', () => {
    const test = hotellingUnequal(cooled, uncooled);
    expectPrinted(test?.t2, 15.6585290975, 10);
    expectPrinted((test?.df2 ?? NaN) + 1, 75.9059234833, 10);
    expectPrinted(test?.f, 7.72612023285, 11);
    expectPrinted(test?.p, 0.000890040998503, 15);
  });
});

/** Johnson & Wichern: lather and mildness of soap from two processes. */
describe('the soap data', () => {
  const pooled = { xx: 2, xy: 1, yy: 5 };

  it('give the pooled statistic', () => {
    const test = hotellingTwoSample(
      { n: 50, mean: [8.3, 4.1], cov: { xx: 2, xy: 1, yy: 6 } },
      { n: 50, mean: [10.2, 3.9], cov: { xx: 2, xy: 1, yy: 4 } },
    );
    expectPrinted(test?.t2, 52.472222, 6);
  });

  it('give the 95 % ellipse of the difference of means', () => {
    const { major, minor, angleDeg } = eigen2x2(pooled);
    expectPrinted(major, 5.302776, 6);
    expectPrinted(minor, 1.697224, 6);
    expectPrinted(Math.cos((angleDeg * Math.PI) / 180), 0.29, 3);
    expectPrinted(Math.sin((angleDeg * Math.PI) / 180), 0.957, 3);
    // T² of a two-sample difference has the same critical value as that of one sample of n₁ + n₂ − 1.
    const critical = 99 * (confidenceFactor(99, 0.95) ?? NaN);
    expectPrinted(critical, 6.244089, 6);
    expectPrinted(Math.sqrt((critical * major * 2) / 50), 1.150843, 6);
    expectPrinted(Math.sqrt((critical * minor * 2) / 50), 0.65108, 6);
    expectPrinted(chiSquareFactor(0.95), 5.991465, 6);
  });
});
