import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { precisionError } from '../../lib/stats/precision-error';
import { varianceComponents, type PrecisionSums } from '../../lib/stats/variance-components';
import { varianceNotBelowRepositioning } from '../../lib/stats/variance-not-below-repositioning';
import { varianceOfChange } from '../../lib/stats/variance-of-change';
import { expectClose } from './expect-close';
import { sumsOfReadings } from './sums-of-readings';

const componentsOf = (sums: PrecisionSums) => {
  const components = varianceComponents(sums);
  if (components === undefined) throw new Error('no components');
  return components;
};

const size = fc.double({ min: 0, max: 100, noNaN: true });
const anySums = fc
  .record({
    meanWithin: size,
    dfWithin: fc.integer({ min: 0, max: 80 }),
    meanBetween: size,
    dfBetween: fc.integer({ min: 1, max: 80 }),
    h: fc.double({ min: 0.1, max: 1, noNaN: true }),
  })
  .map(({ meanWithin, dfWithin, meanBetween, dfBetween, h }) => ({
    sumWithin: meanWithin * dfWithin,
    dfWithin,
    sumBetween: meanBetween * dfBetween,
    dfBetween,
    sumReciprocalReadings: h * dfBetween,
  }));
const readings = fc.integer({ min: 1, max: 12 });

describe('variance components', () => {
  it('of single readings on two days give the square of the usual precision error', () => {
    const components = componentsOf(
      sumsOfReadings([
        [[10], [12]],
        [[20], [21]],
      ]),
    );
    expect(components.between?.repositioningShare).toBe(1);
    expectClose(precisionError(components), Math.sqrt((2 ** 2 + 1 ** 2) / 4));
  });

  it('give replicates no credit while a study of single readings has few replicate degrees of freedom', () => {
    const sums = { sumWithin: 0.9, dfWithin: 9, sumBetween: 6, dfBetween: 30, sumReciprocalReadings: 30 };
    const few = componentsOf(sums);
    expect(few.between?.replicatesEarnNothing).toBe(true);
    expectClose(varianceOfChange(few, 1, 1), 0.4);
    expectClose(varianceOfChange(few, 3, 5), 0.4);
    const enough = componentsOf({ ...sums, sumWithin: 1, dfWithin: 10 });
    expect(enough.between?.replicatesEarnNothing).toBe(false);
    expectClose(varianceOfChange(enough, 1, 1), 0.4);
    expectClose(varianceOfChange(enough, 2, 2), 0.3);
  });

  it('never fall below twice the repositioning variance for two single readings', () => {
    fc.assert(
      fc.property(anySums, (sums) => {
        const components = componentsOf(sums);
        expect(varianceOfChange(components, 1, 1)).toBeGreaterThanOrEqual(2 * components.repositioning * (1 - 1e-12));
      }),
      { seed: 3 },
    );
    const tiny = { sumWithin: 8, dfWithin: 4, sumBetween: 1, dfBetween: 5, sumReciprocalReadings: 5 };
    expect(varianceOfChange(componentsOf(tiny), 4, 4)).toBe(4);
  });

  it('make the variance of a change fall or stay with every further reading, down to the day component', () => {
    fc.assert(
      fc.property(anySums, readings, readings, (sums, k1, k2) => {
        const components = componentsOf(sums);
        const now = varianceOfChange(components, k1, k2);
        expect(varianceOfChange(components, k1 + 1, k2)).toBeLessThanOrEqual(now);
        expect(varianceOfChange(components, k1, k2 + 1)).toBeLessThanOrEqual(now);
        expect(now).toBeGreaterThanOrEqual(2 * (components.between?.dayToDay ?? 0));
        expect(varianceOfChange(components, k2, k1)).toBeCloseTo(now, 10);
      }),
      { seed: 5 },
    );
  });

  it('scale with the square of the unit', () => {
    fc.assert(
      fc.property(anySums, fc.double({ min: 0.01, max: 100, noNaN: true }), readings, (sums, unit, k) => {
        const scaled = { ...sums, sumWithin: sums.sumWithin * unit ** 2, sumBetween: sums.sumBetween * unit ** 2 };
        const one = precisionError(componentsOf(sums), k);
        expectClose(precisionError(componentsOf(scaled), k), one * unit, 1e-6, unit * 1e-3);
      }),
      { seed: 7 },
    );
  });

  it('take the resolution of the display as a floor when all replicates agree', () => {
    const same = { sumWithin: 0, dfWithin: 12, sumBetween: 0, dfBetween: 0, sumReciprocalReadings: 0 };
    const components = componentsOf({ ...same, floorVariance: 0.1 ** 2 / 12 });
    expect(components.limitedByDisplay).toBe(true);
    expectClose(precisionError(components), 0.0288675134595, 1e-11);
    expect(componentsOf(same).limitedByDisplay).toBe(false);
    expect(componentsOf({ ...same, sumWithin: 1, floorVariance: 1e-4 }).limitedByDisplay).toBe(false);
  });

  it('hold a lower limit for every k where no cluster of two days exists', () => {
    const components = componentsOf(sumsOfReadings([[[10, 12]], [[20, 21]]]));
    expect(components.between).toBeUndefined();
    expectClose(varianceOfChange(components, 1, 1), 2.5);
    expectClose(varianceOfChange(components, 3, 2), 2.5);
  });

  it('are absent without any repeated reading', () => {
    expect(varianceComponents(sumsOfReadings([[[10]], [[20]]]))).toBeUndefined();
  });

  it('keep an entered precision error from going below the own repositioning error', () => {
    expect(varianceNotBelowRepositioning(0.5, 0.04)).toBe(0.5);
    expect(varianceNotBelowRepositioning(0.1, 0.04)).toBe(0.08);
    expect(varianceNotBelowRepositioning(0.5, undefined)).toBe(0.5);
  });
});
