import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { ChangeRow } from '../../lib/cohort/types/change-row';
import type { Cohort } from '../../lib/cohort/types/cohort';
import type { ContactLists, MeasureAgainRow, TalkToRow } from '../../lib/cohort/types/contact-lists';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import type { ImportPlan } from '../../lib/import/plan';
import type { MeasureId } from '../../lib/measures/measure-id';
import { openDemoClinic } from './demo-clinic';
import { filterFor, latestOf, pairsOf, precisionOf } from './small-clinic';

let engine: Engine;
let cohort: Cohort;
let plan: ImportPlan;
let lists: ContactLists;
beforeAll(async () => {
  engine = await openNodeEngine();
  ({ cohort, plan } = await openDemoClinic(engine));
  lists = await cohort.contacts(filterFor('ffm'));
});
afterAll(() => engine.close());

const change = (client: string, measure: MeasureId = 'ffm'): Promise<ChangeRow> => latestOf(cohort, client, measure);
const talkTo = (client: string): TalkToRow | undefined => lists.talkTo.find((row) => row.client === client);
const again = (client: string): MeasureAgainRow | undefined => lists.measureAgain.find((row) => row.client === client);
const expectNeither = (client: string): void => {
  expect([talkTo(client), again(client)]).toEqual([undefined, undefined]);
};

describe('the planted clients of the demo clinic', () => {
  test('OM-0007: another hand position cannot be compared; measure again, not talk to', async () => {
    const row = await change('OM-0007');
    expect(row).toMatchObject({ comparable: 'no', result: 'cannot-compare' });
    expect(row.reasons).toContain('position');
    expect(row.change).toBeCloseTo(-2.22, 2);
    expect(talkTo('OM-0007')).toBeUndefined();
    expect(again('OM-0007')).toMatchObject({ why: 'cannot-compare', otherBaseline: null });
  });

  test('OM-0019: two litres dry is down, fits less water: measure again, not talk to', async () => {
    const row = await change('OM-0019');
    expect(row).toMatchObject({ result: 'down', guard: 'note' });
    expect(row.reasons).toContain('fits_less_water');
    expect(row.change).toBeCloseTo(-2.74, 2);
    expect(talkTo('OM-0019')).toBeUndefined();
    expect(again('OM-0019')?.why).toBe('fits-less-water');
  });

  test('OM-0023: heads the list, fits cell mass, seen at two visits', () => {
    expect(lists.talkTo[0]).toMatchObject({ client: 'OM-0023', fits: 'cell-mass', seenAtTwoVisits: true });
    expect(talkTo('OM-0023')?.excess).toBeCloseTo(-3.58, 2);
    expect(talkTo('OM-0023')?.withoutWeight?.change).toBeCloseTo(-3.24, 2);
    expect(talkTo('OM-0023')?.phaseAngle?.change).toBeCloseTo(-0.9, 2);
    expect(talkTo('OM-0023')?.strip.map((point) => point.date)).toEqual([
      '2025-09-08',
      '2025-10-20',
      '2025-12-01',
      '2025-12-12',
    ]);
    expect(again('OM-0023')).toBeUndefined();
  });

  test('OM-0031: 1.2 kg less is within error', async () => {
    expect(await change('OM-0031')).toMatchObject({ result: 'within', comparable: 'comparable' });
    expectNeither('OM-0031');
  });

  test('OM-0044: down just beyond the threshold for two readings at each end, which is no one-component value', async () => {
    const row = await change('OM-0044');
    const precision = precisionOf(cohort, 'ffm');
    expect(row).toMatchObject({ result: 'down', kFrom: 2, kTo: 2 });
    expect(Math.abs(row.change)).toBeGreaterThan(row.lsc ?? Infinity);
    expect(Math.abs(row.change)).toBeLessThan(precision.lsc ?? 0);
    expect(row.reasons).not.toContain('fits_less_water');
    expect(again('OM-0044')?.why).toBe('near-threshold');
    expect(talkTo('OM-0044')).toBeUndefined();
    const [oneReading, oneComponent] = [precision.pe ?? 0, ((precision.lsc ?? 0) * 1) / Math.SQRT2];
    expect(Math.abs((row.lsc ?? 0) - oneComponent)).toBeGreaterThan(0.001);
    expect(oneComponent).toBeCloseTo(1.959963984540054 * oneReading, 12);
  });

  test('OM-0052: all of it from the weight term, down and not listed', async () => {
    const row = await change('OM-0052');
    expect(row.result).toBe('down');
    expect(row.reasons).toContain('mostly_weight_term');
    expect(row.terms?.weight).toBeCloseTo(row.change, 12);
    expect(row.change).toBeCloseTo(-2.079, 3);
    expectNeither('OM-0052');
  });

  test('OM-0058: three kilograms more than the weight lost lets expect: talk to', async () => {
    expect((await change('OM-0058')).change).toBeCloseTo(-5.04, 2);
    expect(talkTo('OM-0058')?.excess).toBeCloseTo(-3.04, 2);
    expect(talkTo('OM-0058')?.expected).toBeCloseTo(-2, 12);
    expect(talkTo('OM-0058')?.fits).toBe('cell-mass');
    expect((await change('OM-0058', 'weight')).change).toBeCloseTo(-8, 9);
    const share = talkTo('OM-0058')?.reasons.find((reason) => reason.rule === 'lean-share');
    expect(share?.sharePercent).toBeCloseTo(63, 1);
    expect(share?.limitPercent).toBe(35);
    const [low = 0, high = 0] = share?.intervalPercent ?? [];
    expect(low).toBeGreaterThan(35);
    expect(low).toBeLessThan(63);
    expect(high).toBeGreaterThan(63);
    expect(high).toBeLessThan(100);
  });

  test('OM-0023 falls from visit to visit as well, in one row; nobody is listed for a loss that was meant', () => {
    expect(talkTo('OM-0023')?.reasons.map(({ rule }) => rule)).toEqual(['lean-change', 'lean-slope']);
    const slope = talkTo('OM-0023')?.reasons.find((reason) => reason.rule === 'lean-slope');
    expect(slope).toMatchObject({ visits: 4, from: '2025-09-08', to: '2025-12-12' });
    expect(new Set(lists.talkTo.map(({ client }) => client)).size).toBe(lists.talkTo.length);
    const losses = lists.talkTo.filter(({ reasons }) => reasons.some(({ rule }) => rule === 'weight-loss'));
    expect(losses.filter(({ program }) => program === 'Weight management')).toEqual([]);
  });

  test('no level is held against a cut-off: the equation was made lying and people stand', () => {
    expect(lists.status).toEqual([]);
  });

  test('OM-0066: fed at baseline cannot be compared; another baseline is offered', async () => {
    const row = await change('OM-0066');
    expect(row).toMatchObject({ comparable: 'no', result: 'cannot-compare' });
    expect(row.reasons).toContain('fasting');
    expect(again('OM-0066')).toMatchObject({ why: 'other-baseline', otherBaseline: '2025-12-08' });
  });

  test('OM-0071: another unit cannot be compared', async () => {
    const row = await change('OM-0071');
    expect(row).toMatchObject({ comparable: 'no', result: 'cannot-compare' });
    expect(row.reasons).toContain('device');
    expect(row.change).toBeCloseTo(0.37, 2);
    expectNeither('OM-0071');
  });

  test('OM-0080: no composition on dialysis, and the vectors of different times are not joined', async () => {
    expect(await change('OM-0080')).toMatchObject({ guard: 'stop', result: null });
    expect(await change('OM-0080', 'r_h')).toMatchObject({ comparable: 'no', result: 'cannot-compare', guard: 'none' });
    expect((await change('OM-0080', 'r_h')).reasons).toContain('dialysis_timing');
    expectNeither('OM-0080');
  });

  test('OM-0093: oedema at both visits stops composition', async () => {
    const row = await change('OM-0093');
    expect(row).toMatchObject({ guard: 'stop', result: null });
    expect(row.reasons).toContain('fluid');
    expect((await change('OM-0093', 'weight')).guard).not.toBe('stop');
    expectNeither('OM-0093');
  });

  test('OM-0101: one coding for all visits, no jump of 4.2 kg', async () => {
    expect((await change('OM-0101')).change).toBeCloseTo(-0.04, 2);
    for (const row of await pairsOf(cohort, 'OM-0101', 'ffm', 'consecutive')) {
      expect(Math.abs(row.change)).toBeLessThan(0.5);
    }
    const listed = (await cohort.clients(filterFor('ffm'))).find((row) => row.client === 'OM-0101');
    const detail = await cohort.client(listed?.clientKey ?? 0, filterFor('ffm'));
    expect(detail).toMatchObject({ sexForEquations: 'M', sexesRecorded: ['M', 'F'] });
  });

  test('OM-0112: one height for all visits', async () => {
    expect((await change('OM-0112')).change).toBeCloseTo(0.04, 2);
    const listed = (await cohort.clients(filterFor('ffm'))).find((row) => row.client === 'OM-0112');
    const detail = await cohort.client(listed?.clientKey ?? 0, filterFor('ffm'));
    expect(detail?.seriesHeightCm).toBe(163);
  });

  test('OM-0120: no result across, for any value', async () => {
    for (const measure of ['ffm', 'weight', 'r_h', 'ffm_exported'] as const) {
      expect(await change('OM-0120', measure)).toMatchObject({ guard: 'stop', result: null });
    }
    expectNeither('OM-0120');
    const inLists = JSON.stringify([lists.talkTo, lists.measureAgain]);
    expect(inLists).not.toContain('pregnan');
  });

  test('OM-0133: the equations of adults are stopped', async () => {
    expect(await change('OM-0133')).toMatchObject({ guard: 'stop', result: null });
    expect((await change('OM-0133')).reasons).toContain('under_18');
    expectNeither('OM-0133');
  });

  test('OM-0140: fat-free mass is held and not listed, weight is judged', async () => {
    expect(await change('OM-0140')).toMatchObject({ guard: 'hold', result: null });
    expect((await change('OM-0140')).reasons).toContain('bmi_outside_equation');
    expect(await change('OM-0140', 'weight')).toMatchObject({ result: 'down', guard: 'none' });
    expectNeither('OM-0140');
  });

  test('OM-0155: not seen since, so on neither list, though down beyond error', async () => {
    expect((await change('OM-0155')).result).toBe('down');
    expectNeither('OM-0155');
  });

  test('OM-0160: down by the exported value, provisional; nothing computed, no vector', async () => {
    expect(await change('OM-0160', 'ffm_exported')).toMatchObject({ tier: 2, result: 'down' });
    expect(precisionOf(cohort, 'ffm_exported')).toMatchObject({ tier: 2, provisional: true });
    expect(await pairsOf(cohort, 'OM-0160', 'ffm')).toEqual([]);
    const { points } = await cohort.vectors(filterFor('ffm'));
    expect(points.length).toBeGreaterThan(500);
    expect(points.filter((point) => point.client === 'OM-0160')).toEqual([]);
    const listed = (await cohort.clients(filterFor('ffm'))).find((row) => row.client === 'OM-0160');
    const detail = await cohort.client(listed?.clientKey ?? 0, filterFor('ffm'));
    expect(detail?.missing.find((entry) => entry.measure === 'r_h')?.needs).toContain('r_ohm');
  });

  test('OM-0188: hostile text comes through as text', async () => {
    const row = (await cohort.clients(filterFor('ffm'))).find((entry) => entry.client === 'OM-0188');
    expect(row?.givenName).toBe('<img src=x onerror=alert(1)>');
    expect(row?.familyName).toHaveLength(120);
  });
});

test('the import finds the planted faults and counts every row once', () => {
  expect([plan.rows, plan.refused, plan.held, plan.duplicates, plan.warnings]).toEqual([4279, 6, 3, 3, 4]);
  expect(plan.accepted + plan.refused + plan.held + plan.duplicates).toBe(plan.rows);
  expect(plan.clients).toBe(600);
});

test('nobody stands on both lists or twice on one', () => {
  const ids = [...lists.talkTo, ...lists.measureAgain].map((row) => row.client);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids.length).toBeGreaterThan(10);
});

test('who is confirmed comes first, then who is furthest beyond the threshold', () => {
  const weights = lists.talkTo.map(
    (row) => [Number(row.seenAtTwoVisits), Math.abs(row.excess) / (row.change.lsc ?? 1)] as const,
  );
  const sorted = [...weights].sort((a, b) => b[0] - a[0] || b[1] - a[1]);
  expect(weights).toEqual(sorted);
  const confirmed = lists.talkTo.filter((row) => row.seenAtTwoVisits).length;
  expect(confirmed).toBeGreaterThan(0);
});

test('how many error alone would list is said with its range', () => {
  const [low, high] = precisionOf(cohort, 'ffm').changedPer100 ?? [0, 0];
  expect(lists.byErrorAlone?.about).toBeCloseTo(lists.checked * 0.025, 9);
  expect(lists.byErrorAlone?.from).toBeCloseTo((lists.checked * low) / 200, 9);
  expect(lists.byErrorAlone?.to).toBeCloseTo((lists.checked * high) / 200, 9);
});
