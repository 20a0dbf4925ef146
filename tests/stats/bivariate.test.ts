import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { confidenceFactor } from '../../lib/stats/confidence-factor';
import { covarianceFromSums } from '../../lib/stats/covariance-from-sums';
import { eigen2x2 } from '../../lib/stats/eigen-2x2';
import { ellipse } from '../../lib/stats/ellipse';
import { hotellingOneSample } from '../../lib/stats/hotelling-one-sample';
import { hotellingPaired } from '../../lib/stats/hotelling-paired';
import { hotellingTwoSample } from '../../lib/stats/hotelling-two-sample';
import { hotellingUnequal } from '../../lib/stats/hotelling-unequal';
import { mahalanobis } from '../../lib/stats/mahalanobis';
import { predictionFactor } from '../../lib/stats/prediction-factor';
import { quadraticForm } from '../../lib/stats/quadratic-form';
import { expectClose } from './expect-close';

const deviation = fc.double({ min: 0.1, max: 100, noNaN: true });
const correlation = fc.double({ min: -0.99, max: 0.99, noNaN: true });
const covariance = fc
  .tuple(deviation, deviation, correlation)
  .map(([sx, sy, r]) => ({ xx: sx * sx, xy: r * sx * sy, yy: sy * sy }));
const coordinate = fc.double({ min: -500, max: 500, noNaN: true });
const point = fc.tuple(coordinate, coordinate);

describe('a bivariate sample', () => {
  it('has a covariance from centred sums, from two points on', () => {
    const sums = { n: 5, mean: [1, 2] as const, sxx: 8, sxy: 4, syy: 12 };
    expect(covarianceFromSums(sums)).toEqual({ n: 5, mean: [1, 2], cov: { xx: 2, xy: 1, yy: 3 } });
    expect(covarianceFromSums({ ...sums, n: 1 })).toBeUndefined();
  });

  it('has principal axes that put the matrix together again', () => {
    fc.assert(
      fc.property(covariance, (cov) => {
        const { major, minor, angleDeg } = eigen2x2(cov);
        const [cos, sin] = [Math.cos((angleDeg * Math.PI) / 180), Math.sin((angleDeg * Math.PI) / 180)];
        expect(major).toBeGreaterThanOrEqual(minor * (1 - 1e-12));
        expect(angleDeg).toBeGreaterThan(-90);
        expect(angleDeg).toBeLessThanOrEqual(90);
        expectClose(major * cos * cos + minor * sin * sin, cov.xx, 1e-9, major);
        expectClose((major - minor) * cos * sin, cov.xy, 1e-9, major);
        expectClose(major * sin * sin + minor * cos * cos, cov.yy, 1e-9, major);
      }),
      { seed: 6 },
    );
  });

  it('points upright by 90 degrees, also from a covariance of minus zero', () => {
    expect(eigen2x2({ xx: 1, xy: -0, yy: 4 })).toEqual({ major: 4, minor: 1, angleDeg: 90 });
    expect(eigen2x2({ xx: 4, xy: 0, yy: 1 }).angleDeg).toBe(0);
    expect(eigen2x2({ xx: 2, xy: -1, yy: 2 }).angleDeg).toBe(-45);
  });

  it('has an ellipse whose every point lies at the asked distance', () => {
    fc.assert(
      fc.property(covariance, point, fc.double({ min: 0, max: 6.28, noNaN: true }), (cov, mean, turn) => {
        const drawn = ellipse({ mean, cov, factor: 5 });
        if (drawn === undefined) throw new Error('no ellipse');
        const angle = (drawn.angleDeg * Math.PI) / 180;
        const [u, v] = [drawn.a * Math.cos(turn), drawn.b * Math.sin(turn)];
        const offset = [u * Math.cos(angle) - v * Math.sin(angle), u * Math.sin(angle) + v * Math.cos(angle)] as const;
        expectClose(quadraticForm(offset, cov), 5, 1e-6);
        expect([drawn.cx, drawn.cy]).toEqual(mean);
      }),
      { seed: 8 },
    );
  });

  it('has no ellipse and no test when it is too small or singular', () => {
    const cov = { xx: 4, xy: 1, yy: 1 };
    const line = { xx: 4, xy: 2, yy: 1 };
    expect(predictionFactor(2, 0.95)).toBeUndefined();
    expect(confidenceFactor(2, 0.95)).toBeUndefined();
    expect(predictionFactor(3, 0.95)).toBeGreaterThan(0);
    expect(ellipse({ mean: [0, 0], cov, factor: predictionFactor(2, 0.95) })).toBeUndefined();
    expect(ellipse({ mean: [0, 0], cov: line, factor: 6 })).toBeUndefined();
    expect(ellipse({ mean: [0, 0], cov: { xx: 0, xy: 0, yy: 1 }, factor: 6 })).toBeUndefined();
    expect(mahalanobis([1, 1], [0, 0], line)).toBeUndefined();
    const small = { n: 2, mean: [1, 1] as const, cov };
    expect(hotellingPaired(small)).toBeUndefined();
    expect(hotellingPaired({ ...small, n: 30, cov: line })).toBeUndefined();
    expect(hotellingTwoSample(small, { ...small, n: 1 })).toBeUndefined();
    expect(hotellingUnequal(small, { ...small, n: 1 })).toBeUndefined();
  });
});

describe('tests of bivariate means', () => {
  const sample = fc.record({ n: fc.integer({ min: 4, max: 80 }), mean: point, cov: covariance });

  it('do not depend on the units of the two axes', () => {
    fc.assert(
      fc.property(sample, sample, deviation, deviation, (a, b, ux, uy) => {
        const inUnits = ({ n, mean, cov }: typeof a) => ({
          n,
          mean: [mean[0] * ux, mean[1] * uy] as const,
          cov: { xx: cov.xx * ux * ux, xy: cov.xy * ux * uy, yy: cov.yy * uy * uy },
        });
        expectClose(hotellingTwoSample(inUnits(a), inUnits(b))?.t2, hotellingTwoSample(a, b)?.t2 ?? NaN, 1e-8, 1);
        expectClose(hotellingUnequal(inUnits(a), inUnits(b))?.df2, hotellingUnequal(a, b)?.df2 ?? NaN, 1e-8);
        expectClose(hotellingPaired(inUnits(a))?.t2, hotellingPaired(a)?.t2 ?? NaN, 1e-8, 1);
      }),
      { seed: 9 },
    );
  });

  it('agree with and without pooling where both samples are alike', () => {
    const cov = { xx: 9, xy: 2, yy: 4 };
    const a = { n: 40, mean: [1, 0] as const, cov };
    const b = { n: 40, mean: [0, 1] as const, cov };
    expectClose(hotellingUnequal(a, b)?.t2, hotellingTwoSample(a, b)?.t2 ?? NaN);
    expectClose(hotellingUnequal(a, b)?.df2, 77);
  });

  it('give the same distance for a mean as for a point', () => {
    const cov = { xx: 9, xy: 2, yy: 4 };
    const test = hotellingOneSample({ n: 10, mean: [3, 4], cov }, [1, 1]);
    expectClose(test?.mahalanobisD, mahalanobis([3, 4], [1, 1], cov) ?? NaN);
  });
});
