import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bivariateComponents } from '../../lib/stats/bivariate-components';
import { bivariateThreshold } from '../../lib/stats/bivariate-threshold';
import { bivariateVarianceOfChange } from '../../lib/stats/bivariate-variance-of-change';
import { eigen2x2 } from '../../lib/stats/eigen-2x2';
import { fUpperTail } from '../../lib/stats/f-upper-tail';
import { fluidAndCellAxes } from '../../lib/stats/fluid-and-cell-axes';
import { mahalanobis } from '../../lib/stats/mahalanobis';
import { normalQuantile } from '../../lib/stats/normal-quantile';
import { quadraticForm } from '../../lib/stats/quadratic-form';
import { varianceComponents } from '../../lib/stats/variance-components';
import { varianceOfChange } from '../../lib/stats/variance-of-change';
import { expectClose, expectPrinted } from './expect-close';

const matrix = (xx: number, xy: number, yy: number) => ({ xx, xy, yy });
const componentsOf = (sums: Parameters<typeof bivariateComponents>[0]) => {
  const components = bivariateComponents(sums);
  if (components === undefined) throw new Error('no components');
  return components;
};

const spread = fc
  .tuple(
    fc.double({ min: 0.1, max: 50, noNaN: true }),
    fc.double({ min: 0.1, max: 50, noNaN: true }),
    fc.double({ min: -0.95, max: 0.95, noNaN: true }),
  )
  .map(([sx, sy, r]) => matrix(sx * sx, r * sx * sy, sy * sy));

describe('the error of two values together', () => {
  // Expected values: computed in R 4.2.2 from the formulas at `bivariateComponents`.
  it('splits into day and repositioning, and a change of the sample is judged by F', () => {
    const components = componentsOf({
      within: matrix(20 * 31, 2 * 31, 1.2 * 31),
      dfWithin: 31,
      between: matrix(60 * 35, 5 * 35, 1.9 * 35),
      dfBetween: 35,
      sumReciprocalReadings: 0.5 * 35,
    });
    expectClose(components.dayToDay.xx, 50);
    expectClose(components.dayToDay.xy, 4);
    expectClose(components.dayToDay.yy, 1.3);
    const variance = bivariateVarianceOfChange(components, 2, 2);
    expectClose(variance.xx, 120);
    expectClose(variance.xy, 10);
    expectClose(variance.yy, 3.8);
    const squared = quadraticForm([20, 1.5], variance);
    expectPrinted(squared, 3.342696629, 9);
    expectPrinted(bivariateThreshold(0.95, 35), 6.744495863, 9);
    expectPrinted(fUpperTail(((squared ?? 0) * 34) / (2 * 35), 2, 34), 0.212105361, 9);
  });

  it('has no negative day part: an eigenvalue below zero is set to zero in the metric of repositioning', () => {
    const naive = matrix(40 - 0.5 * 20, 5 - 0.5 * 2, 0.8 - 0.5 * 1.2);
    expectPrinted(eigen2x2(naive).minor, -0.327572719, 9);
    const components = componentsOf({
      within: matrix(20, 2, 1.2),
      dfWithin: 1,
      between: matrix(40, 5, 0.8),
      dfBetween: 1,
      sumReciprocalReadings: 0.5,
    });
    expectPrinted(components.dayToDay.xx, 30.096588248, 9);
    expectPrinted(components.dayToDay.xy, 3.833157144, 9);
    expectPrinted(components.dayToDay.yy, 0.488197984, 9);
  });

  it('has the thresholds of an estimated matrix: wider than the chi-square of a known one', () => {
    expectPrinted(bivariateThreshold(0.95, 30), 6.884802411, 9);
    expectPrinted(bivariateThreshold(0.95, 20), 7.414512128, 9);
    expectPrinted(bivariateThreshold(0.95, 60), 6.413132051, 9);
    expect(bivariateThreshold(0.95, 1)).toBeUndefined();
  });

  it('agrees on the diagonal with the error of one value where the day part is positive', () => {
    fc.assert(
      fc.property(
        spread,
        spread,
        fc.integer({ min: 1, max: 5 }),
        fc.integer({ min: 1, max: 5 }),
        (day, reset, k, l) => {
          const h = 0.7;
          const between = matrix(day.xx + h * reset.xx, day.xy + h * reset.xy, day.yy + h * reset.yy);
          const counts = { dfWithin: 1, dfBetween: 1, sumReciprocalReadings: h };
          const together = bivariateVarianceOfChange(componentsOf({ within: reset, between, ...counts }), k, l);
          const alone = varianceComponents({ sumWithin: reset.xx, sumBetween: between.xx, ...counts });
          if (alone === undefined) throw new Error('no components');
          expectClose(together.xx, varianceOfChange(alone, k, l), 1e-9, reset.xx);
        },
      ),
      { seed: 11 },
    );
  });

  it('gives twice the between-day matrix for single readings, never less than repositioning', () => {
    const sums = { dfWithin: 4, dfBetween: 12, sumReciprocalReadings: 12 };
    const wide = componentsOf({ within: matrix(4, 0, 4), between: matrix(48, 12, 36), ...sums });
    expect(bivariateVarianceOfChange(wide, 3, 3)).toEqual(bivariateVarianceOfChange(wide, 1, 1));
    expectClose(bivariateVarianceOfChange(wide, 1, 1).xx, 8);
    const narrow = componentsOf({ within: matrix(40, 0, 40), between: matrix(12, 0, 240), ...sums });
    expectClose(bivariateVarianceOfChange(narrow, 1, 1).xx, 20);
    expectClose(bivariateVarianceOfChange(narrow, 1, 1).yy, 40);
  });
});

describe('fluid and cell axes', () => {
  const people = matrix(1600, 0.5 * 40 * 7, 49);

  // Expected values: computed in R 4.2.2 at SD 40 and 7, r 0.5.
  it('split a change in SD units, with the error of each part', () => {
    const parts = fluidAndCellAxes([15, -1.5], matrix(72, 6, 2), people);
    if (parts === undefined) throw new Error('no parts');
    expectPrinted(parts.fluid.value, 0.0928, 4);
    expectPrinted(parts.cell.value, -0.5893, 4);
    const z = normalQuantile(0.975);
    expectPrinted(z * Math.sqrt(parts.fluid.variance), 0.405912073, 9);
    expectPrinted(z * Math.sqrt(parts.cell.variance), 0.406233843, 9);
  });

  it('call a change that keeps the phase angle partly cell mass: the axes are a picture, not a rule', () => {
    const parts = fluidAndCellAxes([60, 6.2], matrix(1, 0, 1), people);
    expectPrinted(parts?.cell.value, -0.614, 3);
  });

  it('keep the distance: f² + m² is the squared Mahalanobis distance', () => {
    fc.assert(
      fc.property(
        spread,
        fc.tuple(fc.double({ min: -99, max: 99, noNaN: true }), fc.double({ min: -99, max: 99, noNaN: true })),
        (cov, change) => {
          const parts = fluidAndCellAxes(change, matrix(1, 0, 1), cov);
          if (parts === undefined) throw new Error('no parts');
          const distance = mahalanobis(change, [0, 0], cov) ?? NaN;
          expectClose(Math.hypot(parts.fluid.value, parts.cell.value), distance, 1e-9, 1);
        },
      ),
      { seed: 12 },
    );
  });

  it('need a reference that spreads both ways', () => {
    expect(fluidAndCellAxes([1, 1], matrix(1, 0, 1), matrix(0, 0, 1))).toBeUndefined();
    expect(fluidAndCellAxes([1, 1], matrix(1, 0, 1), matrix(1, 1, 1))).toBeUndefined();
  });
});
