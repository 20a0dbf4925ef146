import { describe, expect, test } from 'vitest';
import { bestOfEarlier } from '../../lib/cohort/contact-rules/best-of-earlier';
import type { ContactSeries, SeriesVisit } from '../../lib/cohort/contact-rules/contact-series';
import { leanShare } from '../../lib/cohort/contact-rules/lean-share';
import { leanSlope } from '../../lib/cohort/contact-rules/lean-slope';
import { statusFindings } from '../../lib/cohort/contact-rules/status-findings';
import { thresholdsOf, type Thresholds } from '../../lib/cohort/contact-rules/thresholds';
import { weightLoss } from '../../lib/cohort/contact-rules/weight-loss';
import { cutOffsInForce } from '../../lib/cohort/cut-offs-in-force';
import { settingsSchema } from '../../lib/cohort/settings';
import type { CohortErrors, PrecisionRow } from '../../lib/cohort/types/precision-row';
import { addDays, type IsoDate } from '../../lib/core/iso-date';
import { FFM_KYLE_2001 } from '../../lib/measures/equations/ffm-kyle-2001';
import { normalQuantile } from '../../lib/stats/normal-quantile';
import { expectClose } from '../stats/expect-close';

const START = '2025-01-06' as IsoDate;

const precisionRow = (measure: PrecisionRow['measure'], more: Partial<PrecisionRow> = {}): PrecisionRow => ({
  measure,
  tier: 1,
  clients: 40,
  sw: 0.3,
  dfWithin: 40,
  sb: 0.5,
  m: 0.34,
  dfBetween: 40,
  h: 1,
  factor: normalQuantile(0.975),
  pe: 0.58,
  peInterval: null,
  lsc: 1.6,
  lscInterval: null,
  changedPer100: null,
  form: 'sd',
  provisional: false,
  twoBetween: 0.5,
  within: 0.09,
  ...more,
});

const ofEveryone = (...everyone: readonly PrecisionRow[]): CohortErrors => ({ everyone, groups: [] });
const PLAIN = { alwaysT: false, group: null };

const errors = (measure: PrecisionRow['measure'], more: Partial<PrecisionRow> = {}): Thresholds => {
  const found = thresholdsOf(ofEveryone(precisionRow(measure, more)), measure, PLAIN);
  if (found === undefined) throw new Error('no threshold');
  return found;
};

const visit = (days: number, value: number, more: Partial<SeriesVisit> = {}): SeriesVisit => ({
  date: addDays(START, days),
  k: 1,
  value,
  weight: 80,
  withoutWeight: value - 18.48,
  expected: 0,
  usable: true,
  group: null,
  ffmi: null,
  asmi: null,
  ...more,
});

const series = (visits: readonly SeriesVisit[], more: Partial<ContactSeries> = {}): ContactSeries => ({
  clientKey: 1,
  client: 'a',
  program: 'Walking',
  programStart: START,
  sex: 'F',
  ageYears: 70,
  bmi: 24,
  lossIntended: false,
  visits,
  ...more,
});

describe('the threshold behind the rules', () => {
  test('is none where the error is repositioning alone, absent, or hangs on the height', () => {
    expect(thresholdsOf(ofEveryone(precisionRow('ffm', { tier: 5 })), 'ffm', PLAIN)).toBeUndefined();
    expect(thresholdsOf(ofEveryone(precisionRow('ffm', { factor: null })), 'ffm', PLAIN)).toBeUndefined();
    expect(thresholdsOf(ofEveryone(precisionRow('ffmi', { atOwnValues: true })), 'ffmi', PLAIN)).toBeUndefined();
    expect(thresholdsOf(ofEveryone(), 'ffm', PLAIN)).toBeUndefined();
  });

  test('has z at 30 degrees of freedom and t below, at 99 % too', () => {
    expectClose(errors('ffm').factorAt(0.99), 2.5758293035489);
    // t(0.995, 10), Student's table.
    expectClose(errors('ffm', { dfBetween: 10, tier: 2 }).factorAt(0.99), 3.16927267, 1e-8);
    expectClose(errors('ffm').variance(2, 50), 0.295);
  });
});

describe('the threshold of a value in the log form', () => {
  test('is that of a fall from the earlier value, its variance that of the logarithm times the value squared', () => {
    const relative = errors('weight', { form: 'log', twoBetween: 0.0008, within: 0 });
    const root = normalQuantile(0.975) * Math.sqrt(0.0008);
    // A fall to x₁·e^−L is just beyond: ln(x₂/x₁) = −L.
    expectClose(80 - relative.lsc(1, 1, 80), 80 * Math.exp(-root));
    expectClose(relative.variance(1, 80), 0.0004 * 6400);
    expectClose(relative.changeVariance(1, 1, 80), 0.0008 * 6400);
  });
});

describe('falling from visit to visit', () => {
  const question = { excess: -1, lsc: 1.6, lean: errors('ffm'), withoutWeight: errors('ffm_without_weight') };
  const falling = [0, 45, 90, 135, 180].map((days, index) => visit(days, 50 - index * 0.6));

  test('is a slope at 99 % over four visits with its threshold', () => {
    const found = leanSlope(series(falling), question);
    expect(found).toMatchObject({ rule: 'lean-slope', visits: 5, from: '2025-01-06', to: '2025-07-05' });
    // Evenly spaced, equal errors: slope −0.6 per 45 days; standard error √(0.34 / Σ(t − t̄)²), t in months.
    const month = 45 / 30.4375;
    expectClose(found?.perMonth, -0.6 / month);
    expectClose(found?.threshold, 2.5758293035489 * Math.sqrt(0.34 / (10 * month ** 2)));
  });

  test('is nothing over three visits, within error, or less than half an LSC below baseline', () => {
    expect(leanSlope(series(falling.slice(2)), question)).toBeUndefined();
    expect(
      leanSlope(series(falling.map((one, index) => ({ ...one, value: 50 - index * 0.2 }))), question),
    ).toBeUndefined();
    expect(leanSlope(series(falling), { ...question, excess: -0.79 })).toBeUndefined();
    expect(leanSlope(series(falling), { ...question, excess: -0.8 })).toBeDefined();
  });

  test('takes one visit a date, and none that cannot be compared with the latest', () => {
    const [first, second, ...rest] = falling;
    if (first === undefined || second === undefined) throw new Error('no visits');
    expect(leanSlope(series([first, first, ...rest.slice(1)]), question)).toBeUndefined();
    expect(leanSlope(series([first, { ...second, usable: false }, ...rest]), question)).toMatchObject({ visits: 4 });
    expect(leanSlope(series(falling.map((one, place) => ({ ...one, usable: place > 1 }))), question)).toBeUndefined();
  });

  test('is nothing where the program lets expect it, or where only the weight fell', () => {
    expect(
      leanSlope(series(falling.map((one, index) => ({ ...one, expected: -0.6 * index }))), question),
    ).toBeUndefined();
    expect(leanSlope(series(falling.map((one) => ({ ...one, withoutWeight: 31.5 }))), question)).toBeUndefined();
    expect(leanSlope(series(falling), { ...question, withoutWeight: 'needed' })).toBeUndefined();
    expect(leanSlope(series(falling), { ...question, withoutWeight: 'not-needed' })).toBeDefined();
  });
});

describe('the latest against the best of earlier visits', () => {
  test('has the factor for as many visits, in SD of one visit', () => {
    const found = bestOfEarlier(
      series([50, 51, 49.5, 50.5, 48].map((value, index) => visit(index * 60, value))),
      errors('ffm'),
      95,
    );
    // 3.4531912 for four earlier visits, computed in R; one visit has the variance 0.25 + 0.09.
    expect(found).toMatchObject({ change: -3, earlier: 4, date: '2025-03-07' });
    expectClose(found?.threshold, 3.4531912 * Math.sqrt(0.34), 1e-7);
  });

  test('is not asked of one earlier visit, nor of visits that cannot be compared', () => {
    expect(bestOfEarlier(series([visit(0, 50), visit(60, 48)]), errors('ffm'), 95)).toBeNull();
    const apart = [visit(0, 55, { usable: false }), visit(60, 50), visit(120, 50), visit(180, 48)];
    expect(bestOfEarlier(series(apart), errors('ffm'), 95)).toMatchObject({ change: -2, earlier: 2 });
  });
});

describe('the lean share of a weight loss', () => {
  // V of the change: FFM 0.8, weight 0.54, fat mass 0.9; so Cov(FFM, weight) = 0.22.
  const of = (measure: PrecisionRow['measure'], variance: number): Thresholds =>
    errors(measure, { twoBetween: variance, within: 0 });
  const question = {
    leanFrom: 60,
    leanChange: -5.04,
    weightChange: -8,
    weightFrom: 105,
    kFrom: 1,
    kTo: 1,
    limitPercent: 35,
    lean: of('ffm', 0.8),
    weight: of('weight', 0.54),
    rest: of('fm', 0.9),
  };

  test('has the interval at whose ends ΔFFM − ρ·ΔW is just its own error', () => {
    const found = leanShare(question);
    expect(found?.sharePercent).toBeCloseTo(63, 9);
    for (const end of found?.intervalPercent ?? []) {
      const ratio = end / 100;
      const error = 0.8 - 2 * ratio * 0.22 + ratio ** 2 * 0.54;
      expectClose(Math.abs(-5.04 + 8 * ratio), normalQuantile(0.975) * Math.sqrt(error), 1e-9, 1);
    }
    const [low = 0, high = 0] = found?.intervalPercent ?? [];
    expect(low).toBeLessThan(63);
    expect(high).toBeGreaterThan(63);
  });

  test('is listed only where the whole interval lies above the limit', () => {
    const low = leanShare(question)?.intervalPercent[0] ?? 0;
    expect(leanShare({ ...question, limitPercent: low - 0.01 })).toBeDefined();
    expect(leanShare({ ...question, limitPercent: low + 0.01 })).toBeUndefined();
  });

  test('is not looked at below 5 % of the weight, within its error, or where weight was gained', () => {
    expect(leanShare({ ...question, weightFrom: 160 })).toBeDefined();
    expect(leanShare({ ...question, weightFrom: 160.1 })).toBeUndefined();
    expect(leanShare({ ...question, weight: of('weight', 20) })).toBeUndefined();
    expect(leanShare({ ...question, leanChange: 5, weightChange: 8 })).toBeUndefined();
  });
});

describe('a weight loss of the size of the consensus', () => {
  const cutOffs = cutOffsInForce(settingsSchema.parse({}));
  const weight = errors('weight', { twoBetween: 0.54, within: 0 });
  const lossOf = (...visits: readonly SeriesVisit[]) => weightLoss(series(visits), weight, cutOffs);

  test('is more than 5 % within six months and more than 10 % beyond, one criterion and no stage', () => {
    expect(lossOf(visit(0, 80), visit(182, 75.9))).toMatchObject({
      rule: 'weight-loss',
      cutOff: 'glim-weight-loss-within-6-months',
      from: '2025-01-06',
    });
    expect(lossOf(visit(0, 80), visit(182, 76))).toBeUndefined();
    expect(lossOf(visit(0, 80), visit(190, 75))).toBeUndefined();
    const beyond = lossOf(visit(0, 80), visit(190, 71.9));
    expect(beyond?.cutOff).toBe('glim-weight-loss-beyond-6-months');
    expect(beyond?.words).toContain('One phenotypic criterion is met');
    expect(beyond?.words).not.toMatch(/stage|severe|moderate|malnutrition/i);
  });

  test('is counted from the earliest weight of the span, never from the heaviest', () => {
    expect(lossOf(visit(0, 78), visit(60, 82), visit(120, 77.5))).toBeUndefined();
  });

  test('has to be more than the weight’s own error, at the latest visit, comparable with it', () => {
    const rough = errors('weight', { twoBetween: 9, within: 0 });
    expect(weightLoss(series([visit(0, 80), visit(90, 75)]), rough, cutOffs)).toBeUndefined();
    expect(lossOf(visit(0, 80, { usable: false }), visit(90, 75))).toBeUndefined();
    expect(lossOf(visit(0, 80), visit(90, 75), visit(120, 79, { usable: false }))).toBeUndefined();
  });

  test('is nothing where the clinic switched the criterion off', () => {
    const off = cutOffsInForce(
      settingsSchema.parse({ methods: { cutOffs: { off: ['glim-weight-loss-within-6-months'] } } }),
    );
    expect(weightLoss(series([visit(0, 80), visit(90, 70)]), weight, off)).toBeUndefined();
  });
});

describe('a level at a published limit', () => {
  const cutOffs = cutOffsInForce(settingsSchema.parse({}));
  const values = [{ quantity: 'asmi', equation: FFM_KYLE_2001 }] as const;
  const found = (...levels: readonly (number | null)[]) =>
    statusFindings(series(levels.map((asmi, index) => visit(index * 60, 50, { asmi }))), values, cutOffs);

  test('is said at the first visit that meets it, then only when it changed', () => {
    expect(found(5.4)).toMatchObject([{ cutOff: 'ewgsop2-asmi', value: 5.4, date: '2025-01-06' }]);
    expect(found(5.6, 5.4)).toHaveLength(1);
    expect(found(5.4, 5.3)).toEqual([]);
    expect(found(5.4, null, 5.3)).toEqual([]);
    expect(found(5.4, 5.6)).toEqual([]);
    expect(found(5.4, 5.6, 5.4)).toHaveLength(1);
  });

  test('is not said without the level, of which the query gives none where a guard forbids it', () => {
    expect(found(5.4, null)).toEqual([]);
    expect(statusFindings(series([visit(0, 50, { asmi: 5 })], { sex: null }), values, cutOffs)).toEqual([]);
  });

  test('by FFMI counts only beside a loss that was not meant', () => {
    const ffmi = [{ quantity: 'ffmi', equation: FFM_KYLE_2001 }] as const;
    const low = [visit(0, 40, { ffmi: 14 })];
    expect(statusFindings(series(low), ffmi, cutOffs).map(({ cutOff }) => cutOff)).toContain(
      'espen-2015-ffmi-with-loss',
    );
    expect(statusFindings(series(low, { lossIntended: null }), ffmi, cutOffs)).toEqual([]);
  });
});
