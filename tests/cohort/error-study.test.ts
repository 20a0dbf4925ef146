import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Cohort } from '../../lib/cohort/types/cohort';
import type { ErrorStudy } from '../../lib/cohort/types/error-study';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { normalQuantile } from '../../lib/stats/normal-quantile';
import { precisionRange } from '../../lib/stats/precision-range';
import { chiSquareQuantile } from '../../lib/stats/chi-square-quantile';
import { expectClose, expectPrinted } from '../stats/expect-close';
import { cohortOf, filterFor, latestOf, precisionOf, reading, type Cells } from './small-clinic';
import values from '../reference/stats/values/precision.json';

let engine: Engine;
beforeAll(async () => {
  engine = await openNodeEngine();
});
afterAll(() => engine.close());

const STUDY: Cells = { program: '', program_start: '', visit_purpose: 'precision' };

const visit = (client: string, date: string, ffm: string, more: Cells = {}): Cells =>
  reading(client, date, { ...STUDY, ffm_kg: ffm, ...more });

describe('what the study says of a value', () => {
  let study: ErrorStudy;
  beforeAll(async () => {
    const pairs = [
      ['a', '50.0', '50.4'],
      ['b', '60.0', '60.2'],
      ['c', '70.0', '73.0'],
    ] as const;
    const rows = pairs.flatMap(([client, first, second], index) => [
      visit(client, `2024-0${String(5 + index)}-03`, first, {
        operator: 'AB',
        device_id: index === 0 ? 'Unit 2' : 'Unit 1',
      }),
      visit(client, `2024-0${String(5 + index)}-05`, second, {
        operator: index === 1 ? 'CD' : 'AB',
        device_id: index === 0 ? 'Unit 2' : 'Unit 1',
      }),
    ]);
    const others = [
      visit('d', '2024-05-03', '55.0'),
      visit('d', '2024-05-06', '58.0', { fasted_h: 2 }),
      visit('e', '2024-05-03', '55.0'),
      visit('e', '2024-05-05', '58.0', { device_id: 'Unit 3', rested: 'n' }),
      visit('e', '2024-05-06', '58.0', { device_id: 'Unit 3' }),
      visit('f', '2024-05-03', '55.0', { program: 'Walking', program_start: '2024-05-01' }),
      visit('f', '2024-05-05', '55.2', { program: 'Walking', program_start: '2024-05-01' }),
      reading('g', '2024-05-03', { ffm_kg: '50.0', reading: 1 }),
      reading('g', '2024-05-03', { ffm_kg: '50.6', reading: 2 }),
      reading('g', '2024-05-05', { ffm_kg: '50.0' }),
    ];
    const cohort = await cohortOf(engine, [...rows, ...others]);
    study = await cohort.errorStudy(filterFor('ffm_exported'));
  });

  test('counts every visit that was left out, and why', () => {
    expect(study.clusters.map(({ client, difference }) => [client, Math.round(10 * difference) / 10])).toEqual([
      ['a', 0.4],
      ['b', 0.2],
      ['c', 3],
    ]);
    expect(study.leftOut).toMatchObject({ visits: 13, notComparable: 5, alone: 2 });
    expect(Object.fromEntries(study.leftOut.reasons.map(({ reason, visits }) => [reason, visits]))).toEqual({
      device: 2,
      rested: 1,
      fasting: 1,
      program_started: 2,
    });
  });

  test('has the mean of second − first with its interval, and the error without that drift', () => {
    expect(study.drift?.n).toBe(3);
    expectClose(study.drift?.mean, 1.2);
    const sd = Math.sqrt((0.8 ** 2 + 1 + 1.8 ** 2) / 2);
    // qt(0.975, 2) in R 4.2.2
    expectClose(study.drift?.interval?.[1], 1.2 + (4.30265272991 * sd) / Math.sqrt(3), 1e-9);
    expect(study.drift?.excludesZero).toBe(false);
    expectClose(study.drift?.peWithoutDrift ?? undefined, sd / Math.SQRT2);
    expect(study.repositioningDrift).toMatchObject({ n: 1, interval: null });
    expectClose(study.repositioningDrift?.mean, 0.6, 1e-9);
  });

  test('shows the largest variance and keeps it', () => {
    expect(study.largest.between).toMatchObject({ client: 'c', on: '2024-07-03', of: 2, among: 3 });
    expectClose(study.largest.between?.c, 9 / (9 + 0.16 + 0.04), 1e-9);
    expect(study.largest.between?.limit).toBeGreaterThan(0.95);
    expect(study.largest.between?.beyond).toBe(true);
  });

  test('has every group with its own degrees of freedom; several operators of one person are nobody’s', () => {
    const between = study.groups.filter(({ kind }) => kind === 'between');
    expect(between.filter(({ by }) => by === 'device').map(({ name, df }) => [name, df])).toEqual([
      ['Unit 1', 2],
      ['Unit 2', 1],
    ]);
    expect(between.filter(({ by }) => by === 'operator').map(({ name, df }) => [name, df])).toEqual([
      ['AB', 2],
      [null, 1],
    ]);
    expect(between.every(({ enough }) => !enough)).toBe(true);
    const again = study.groups.filter(({ kind, by }) => kind === 'repositioning' && by === 'program');
    expect(again.map(({ name, df }) => [name, df])).toEqual([['Walking', 1]]);
    expectClose(again[0]?.pe, Math.sqrt(0.18), 1e-9);
  });

  test('has the error of each quarter with its interval', () => {
    expect(study.quarters.map(({ quarter, df }) => [quarter, df])).toEqual([
      ['2024-Q2', 2],
      ['2024-Q3', 1],
    ]);
    for (const { pe, df, interval } of study.quarters) expect(interval).toEqual(precisionRange(pe, df));
  });

  test('leaves routine visits alone', () => {
    expect(study.routineClusters).toBe(0);
  });
});

test('routine visits within a week make clusters of their own where the clinic switched them on', async () => {
  const rows = [
    visit('a', '2024-05-03', '50.0'),
    visit('a', '2024-05-05', '50.4'),
    reading('a', '2024-05-04', { program: '', program_start: '', ffm_kg: '51.0' }),
    reading('a', '2024-05-06', { program: '', program_start: '', ffm_kg: '51.2' }),
    reading('b', '2024-05-04', { program: '', program_start: '', visit_purpose: 'repeat', ffm_kg: '51.0' }),
    reading('b', '2024-05-06', { program: '', program_start: '', visit_purpose: 'repeat', ffm_kg: '51.2' }),
  ];
  const settings = { errorStudy: { includeRoutine: true, logForm: [], cautious: false } };
  const cohort = await cohortOf(engine, rows, settings);
  const study = await cohort.errorStudy(filterFor('ffm_exported'));
  expect(study.clusters.map(({ routine, difference }) => [routine, Math.round(10 * difference) / 10])).toEqual([
    [false, 0.4],
    [true, 0.2],
  ]);
  expect([study.routineClusters, precisionOf(cohort, 'ffm_exported').dfBetween]).toEqual([1, 2]);
});

/** Weight of 34 people: the peak flow duplicates of both meters as kilograms, so that the values of R hold for ln. */
describe('the log form', () => {
  const duplicates = [...values.readings.wright, ...values.readings.mini];
  const study = duplicates.flatMap(([first = NaN, second = NaN], index) =>
    [first, second].map((value, day) =>
      reading(`p${String(index)}`, `2024-05-0${String(3 + day)}`, { ...STUDY, ffm_kg: (value / 10).toFixed(1) }),
    ),
  );
  const clients = (
    [
      ['up', '50.0', '60.0'],
      ['down', '60.0', '50.0'],
      ['near', '50.0', '50.5'],
    ] as const
  ).flatMap(([client, first, second]) => [
    reading(client, '2025-01-06', { ffm_kg: first }),
    reading(client, '2025-03-06', { ffm_kg: second }),
  ]);
  const rows = [...study, ...clients];
  const accepted = { measure: 'ffm_exported' as const, on: '2025-01-01', initials: 'AB', sdOfLogs: 0.04 };
  let cohort: Cohort;
  beforeAll(async () => {
    cohort = await cohortOf(engine, rows, {
      errorStudy: { includeRoutine: false, logForm: [accepted], cautious: false },
    });
  });

  test('has the SD of the logarithms of both meters together, and is judged by it', async () => {
    const row = precisionOf(cohort, 'ffm_exported');
    expect([row.form, row.tier, row.dfBetween]).toEqual(['log', 1, 34]);
    const sd = Math.sqrt((0.0350250511596 ** 2 + 0.0508176425 ** 2) / 2);
    expectPrinted(row.pe ?? undefined, sd, 9);
    expectClose(row.lsc ?? undefined, normalQuantile(0.975) * Math.SQRT2 * sd, 1e-8);
    const said = await cohort.errorStudy(filterFor('ffm_exported'));
    expectPrinted(said.logForm.sdOfLogs ?? undefined, sd, 9);
    expect(said.logForm.accepted).toEqual(accepted);
  });

  test('gives thresholds that go up by a factor and down by its inverse', async () => {
    const limit = precisionOf(cohort, 'ffm_exported').lsc ?? NaN;
    const [up, down, near] = [
      await latestOf(cohort, 'up', 'ffm_exported'),
      await latestOf(cohort, 'down', 'ffm_exported'),
      await latestOf(cohort, 'near', 'ffm_exported'),
    ];
    expectClose(up.lsc ?? undefined, 50 * (Math.exp(limit) - 1), 1e-9);
    expectClose(down.lsc ?? undefined, 60 * (1 - Math.exp(-limit)), 1e-9);
    expect([up.result, down.result, near.result]).toEqual(['up', 'down', 'within']);
  });

  test('is suggested by nothing here, and stays because a person accepted it', async () => {
    const { test: found } = (await cohort.errorStudy(filterFor('ffm_exported'))).logForm;
    expect(found?.suggested).toBe(false);
    expect(precisionOf(cohort, 'weight').form).toBe('sd');
  });

  test('is not used without being accepted, and the cautious factor is that of PE’s upper limit', async () => {
    const plain = await cohortOf(engine, rows, {
      errorStudy: { includeRoutine: false, logForm: [], cautious: true },
    });
    const row = precisionOf(plain, 'ffm_exported');
    expect(row.form).toBe('sd');
    expectClose(row.factor ?? undefined, normalQuantile(0.975) * Math.sqrt(34 / chiSquareQuantile(0.05, 34)), 1e-12);
    const { logForm, rmsCv } = await plain.errorStudy(filterFor('ffm_exported'));
    expect(logForm.accepted).toBeNull();
    expectPrinted(rmsCv ?? undefined, Math.sqrt((3.4995586973 ** 2 + 5.0656 ** 2) / 2), 3);
  });
});

/** Two trials of eight people. Weir JP. J Strength Cond Res 2005;19:231–240; published standard error without the trial 7.6. */
test('the error with the trial effect and without it are those of the published example', async () => {
  const first = [146, 148, 170, 90, 157, 156, 176, 205];
  const second = [140, 152, 152, 99, 145, 153, 167, 218];
  const rows = first.flatMap((value, index) =>
    [value, second[index] ?? NaN].map((one, day) =>
      reading(`p${String(index)}`, `2024-05-0${String(3 + day)}`, { ...STUDY, ffm_kg: one.toFixed(0) }),
    ),
  );
  const cohort = await cohortOf(engine, rows);
  const study = await cohort.errorStudy(filterFor('ffm_exported'));
  expectPrinted(Math.sqrt(precisionOf(cohort, 'ffm_exported').m ?? NaN), 7.331439, 6);
  expectPrinted(study.drift?.peWithoutDrift ?? undefined, 7.556927, 6);
});
