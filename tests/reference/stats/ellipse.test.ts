import { describe, expect, it } from 'vitest';
import { chiSquareFactor } from '../../../lib/stats/chi-square-factor';
import { confidenceFactor } from '../../../lib/stats/confidence-factor';
import { eigen2x2 } from '../../../lib/stats/eigen-2x2';
import { ellipse } from '../../../lib/stats/ellipse';
import { fUpperTail } from '../../../lib/stats/f-upper-tail';
import { mahalanobis } from '../../../lib/stats/mahalanobis';
import { predictionFactor } from '../../../lib/stats/prediction-factor';
import { expectClose, expectPrinted } from '../../stats/expect-close';
import { irisSample } from './iris-sample';
import values from './values/hotelling-and-ellipse.json';

const factorOf = (kind: string, n: number, level: number): number | undefined => {
  if (kind === 'tolerance_chisq') return chiSquareFactor(level);
  return kind === 'prediction_F' ? predictionFactor(n, level) : confidenceFactor(n, level);
};

/** R 4.2.2, iris, cross-checked with the package ellipse. */
describe.each(['setosa', 'versicolor', 'virginica'] as const)('ellipses of %s', (species) => {
  const expected = values.ellipse[species];
  const { n, mean, cov } = irisSample(species);

  it('have the eigenvalues and direction that R gives', () => {
    const { major, minor, angleDeg } = eigen2x2(cov);
    expectClose(major, expected.eigenvalues[0] ?? NaN);
    expectClose(minor, expected.eigenvalues[1] ?? NaN);
    expectClose(angleDeg, expected.angle_deg_of_major_axis);
  });

  it('have the constant, axes and area that R gives, of all three kinds at four levels', () => {
    expect(expected.ellipses.length).toBe(12);
    for (const one of expected.ellipses) {
      const factor = factorOf(one.kind, n, one.level);
      expectClose(factor, one.c2);
      const drawn = ellipse({ mean, cov, factor });
      expectClose(drawn?.a, one.semi_major);
      expectClose(drawn?.b, one.semi_minor);
      expectClose(Math.PI * (drawn?.a ?? NaN) * (drawn?.b ?? NaN), one.area);
    }
  });
});

describe('the constants of an ellipse', () => {
  it('for one new individual are those of R 4.2.2 at three sample sizes', () => {
    expectPrinted(predictionFactor(10, 0.95), 11.035951016, 9);
    expectPrinted(predictionFactor(30, 0.95), 7.150015754, 9);
    expectPrinted(predictionFactor(300, 0.95), 6.092651628, 9);
  });

  it('differ by kind as in the worked example of 100 people', () => {
    const cov = { xx: 1600, xy: 0.5 * 40 * 7, yy: 49 };
    const axes = (factor: number | undefined) => ellipse({ mean: [300, 31], cov, factor });
    expectPrinted(predictionFactor(100, 0.5), 1.4245, 4);
    expectPrinted(axes(predictionFactor(100, 0.95))?.a, 100.82266, 5);
    expectPrinted(axes(predictionFactor(100, 0.75))?.b, 10.22871, 5);
    expectPrinted(axes(confidenceFactor(100, 0.95))?.a, 10.03223, 5);
    expectPrinted(axes(chiSquareFactor(0.95))?.b, 14.78089, 5);
    expectPrinted(axes(1)?.angleDeg, 5.11666, 5);
    const distance = (mahalanobis([270, 38], [300, 31], cov) ?? NaN) ** 2;
    expectPrinted(distance, 3.083333, 6);
    expectPrinted(fUpperTail((distance * 100 * 98) / (2 * (100 ** 2 - 1)), 2, 98), 0.225789, 6);
  });
});
