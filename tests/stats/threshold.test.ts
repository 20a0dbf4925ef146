import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beyondThreshold } from '../../lib/stats/beyond-threshold';
import { changedPer100 } from '../../lib/stats/changed-per-100';
import { leastSignificantChange } from '../../lib/stats/least-significant-change';
import { precisionRange } from '../../lib/stats/precision-range';
import { precisionTier } from '../../lib/stats/precision-tier';
import { thresholdFactor } from '../../lib/stats/threshold-factor';

describe('a change against its threshold', () => {
  it('counts when one-decimal values differ by exactly the threshold', () => {
    expect(50.3 - 48.7).toBeLessThan(1.6);
    expect(beyondThreshold(48.7, 50.3, 1.6)).toBe('up');
    expect(beyondThreshold(50.3, 48.7, 1.6)).toBe('down');
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2000 }), fc.integer({ min: 1, max: 200 }), (tenths, step) => {
        expect(beyondThreshold(tenths / 10, (tenths + step) / 10, step / 10)).toBe('up');
        expect(beyondThreshold((tenths + step) / 10, tenths / 10, step / 10)).toBe('down');
        expect(beyondThreshold(tenths / 10, (tenths + step) / 10, (step + 1) / 10)).toBe('within');
      }),
      { seed: 1 },
    );
  });

  it('is never beyond without a difference, even for a threshold of zero', () => {
    expect(beyondThreshold(5, 5, 0)).toBe('within');
    expect(beyondThreshold(5, 5.1, 0)).toBe('up');
  });

  it('turns round when the two visits are exchanged', () => {
    const value = fc.double({ min: -1000, max: 1000, noNaN: true });
    const turned = { up: 'down', down: 'up', within: 'within' } as const;
    fc.assert(
      fc.property(value, value, fc.double({ min: 0, max: 50, noNaN: true }), (first, second, threshold) => {
        expect(beyondThreshold(second, first, threshold)).toBe(turned[beyondThreshold(first, second, threshold)]);
      }),
      { seed: 2 },
    );
  });
});

describe('the factor of a threshold', () => {
  it('is z from 30 degrees of freedom and t below, t throughout on demand', () => {
    expect(thresholdFactor(0.95, 30)).toBeCloseTo(1.959963984540054, 13);
    expect(thresholdFactor(0.95, 29)).toBeCloseTo(2.045229642132703, 12);
    expect(thresholdFactor(0.95, 30, 'always-t')).toBeCloseTo(2.0422724563, 10);
  });

  it('falls with the degrees of freedom when it is t or cautious, and rises with the level', () => {
    for (const convention of ['always-t', 'cautious'] as const) {
      for (let df = 2; df < 60; df += 1) {
        expect(thresholdFactor(0.95, df + 1, convention)).toBeLessThan(thresholdFactor(0.95, df, convention));
      }
    }
    for (const df of [12, 40]) {
      expect(thresholdFactor(0.8, df)).toBeLessThan(thresholdFactor(0.9, df));
      expect(thresholdFactor(0.9, df)).toBeLessThan(thresholdFactor(0.95, df));
    }
  });

  it('is larger when cautious than by t at the same level', () => {
    for (const df of [10, 30, 100]) {
      expect(thresholdFactor(0.95, df, 'cautious')).toBeGreaterThan(thresholdFactor(0.95, df, 'always-t'));
    }
  });

  it('times the root of the variance is the least significant change', () => {
    expect(leastSignificantChange(2 * 0.5 ** 2, 0.95, 40)).toBeCloseTo(2.771807648699355 * 0.5, 12);
  });
});

describe('the range that an estimated precision error leaves', () => {
  it('holds the estimate and closes around it with more degrees of freedom', () => {
    const width = (df: number): number => {
      const [low, high] = precisionRange(2, df);
      expect(low).toBeLessThan(2);
      expect(high).toBeGreaterThan(2);
      return high - low;
    };
    for (const df of [5, 10, 30, 100, 990]) expect(width(df + 20)).toBeLessThan(width(df));
    expect(width(300_000)).toBeLessThan(0.02);
  });

  it('of the share called changed holds the nominal share', () => {
    for (const df of [10, 30, 60, 5000]) {
      const [low, high] = changedPer100(thresholdFactor(0.95, df), df);
      expect(low).toBeLessThan(5);
      expect(high).toBeGreaterThan(df >= 30 ? 5 : 4);
    }
  });
});

describe('the tier of a threshold', () => {
  const none = { betweenDf: 0, betweenClients: 0, withinDf: 0 };

  it('is own between-day error first, provisional where it rests on few clients', () => {
    expect(precisionTier({ ...none, betweenDf: 30, betweenClients: 15, withinDf: 90 })).toEqual({
      tier: 1,
      provisional: false,
      df: 30,
    });
    expect(precisionTier({ ...none, betweenDf: 42, betweenClients: 14 })).toEqual({
      tier: 1,
      provisional: true,
      df: 42,
    });
  });

  it('is provisional own error from 10 to 29, before an entered value', () => {
    const entered = { df: 60 };
    expect(precisionTier({ ...none, betweenDf: 29, betweenClients: 29, entered })).toMatchObject({ tier: 2, df: 29 });
    expect(precisionTier({ ...none, betweenDf: 10, betweenClients: 10 })).toEqual({
      tier: 2,
      provisional: true,
      df: 10,
    });
    expect(precisionTier({ ...none, betweenDf: 9, betweenClients: 9, entered })).toEqual({
      tier: 3,
      provisional: false,
      df: 60,
    });
  });

  it('never prefers own repositioning to a value that holds the day-to-day part', () => {
    expect(precisionTier({ ...none, betweenDf: 10, betweenClients: 5, withinDf: 500 }).tier).toBe(2);
    expect(precisionTier({ ...none, withinDf: 500, entered: { df: 12 } })).toEqual({
      tier: 3,
      provisional: true,
      df: 12,
    });
    expect(precisionTier({ ...none, betweenDf: 9, withinDf: 30 })).toEqual({ tier: 5, provisional: false, df: 30 });
  });

  it('is none without enough of anything', () => {
    expect(precisionTier({ betweenDf: 9, betweenClients: 9, withinDf: 29 })).toEqual({ tier: 6 });
  });
});
