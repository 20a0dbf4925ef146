import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { normalQuantile } from '../../lib/stats/normal-quantile';
import { tQuantile } from '../../lib/stats/t-quantile';
import { expectClose } from '../stats/expect-close';
import { cohortOf, errorStudy, latestOf, precisionOf, reading, without, type Cells } from './small-clinic';

let engine: Engine;
beforeAll(async () => {
  engine = await openNodeEngine();
});
afterAll(() => engine.close());

const STUDY: Cells = { program: '', program_start: '', visit_purpose: 'precision' };

/** Six clients, two or three days, one to three readings, kg. */
const SIX_CLIENTS: readonly (readonly (readonly number[])[])[] = [
  [
    [50.1, 50.5],
    [50.9, 51.1],
  ],
  [[44.2, 44.0], [43.6]],
  [[61.3], [61.0]],
  [
    [55.0, 55.4, 54.9],
    [55.9, 55.6],
    [55.2, 55.3],
  ],
  [
    [47.8, 47.5],
    [48.6, 48.3],
  ],
  [
    [39.9, 40.3],
    [39.5, 39.2],
  ],
];

const sixClients = (copies: number): readonly Cells[] =>
  Array.from({ length: copies }, (_, copy) =>
    SIX_CLIENTS.flatMap((days, client) =>
      days.flatMap((values, day) =>
        values.map((ffm, index) =>
          reading(`c${String(copy)}-${String(client)}`, `2024-06-0${String(3 + 2 * day)}`, {
            ...STUDY,
            reading: index + 1,
            ffm_kg: ffm.toFixed(1),
          }),
        ),
      ),
    ),
  ).flat();

describe('the two components of six clients, worked out in R 4.2.2', () => {
  test('are those of the example: s_w², M, h and s_b² with 11 and 7 degrees of freedom, too few for a threshold', async () => {
    const row = precisionOf(await cohortOf(engine, sixClients(1)), 'ffm_exported');
    expectClose((row.sw ?? 0) ** 2, 0.0477272727273, 1e-11);
    expectClose(row.m ?? 0, 0.178273809524, 1e-11);
    expectClose(row.h ?? 0, 0.59126984127, 1e-11);
    expectClose((row.sb ?? 0) ** 2, 0.150054112554, 1e-11);
    expect([row.dfWithin, row.dfBetween, row.clients, row.tier]).toEqual([11, 7, 6, 6]);
    expect([row.pe, row.lsc, row.factor, row.peInterval, row.changedPer100]).toEqual([null, null, null, null, null]);
  });

  test('give the thresholds of the example by z where five clinics like it make 35 degrees of freedom', async () => {
    const row = precisionOf(await cohortOf(engine, sixClients(5)), 'ffm_exported');
    expect([row.tier, row.dfBetween, row.clients, row.provisional]).toEqual([1, 35, 30, false]);
    expectClose(row.pe ?? 0, 0.44472619136, 1e-11);
    expectClose(row.lsc ?? 0, 1.232695458788, 1e-11);
    const lsc = (k1: number, k2: number): number =>
      (row.factor ?? 0) * Math.sqrt((row.twoBetween ?? 0) + (row.within ?? 0) * (1 / k1 + 1 / k2));
    expectClose(lsc(2, 2), 1.155939332885, 1e-11);
    expectClose(lsc(1, 3), 1.182078617907, 1e-11);
  });

  test('give a provisional threshold by t on 14 degrees of freedom where two make 14', async () => {
    const row = precisionOf(await cohortOf(engine, sixClients(2)), 'ffm_exported');
    expect([row.tier, row.dfBetween, row.provisional]).toEqual([2, 14, true]);
    // qt(0.975, 14) in R 4.2.2
    expectClose(row.factor ?? 0, 2.1447866879169, 1e-9);
    expectClose(row.lsc ?? 0, 2.1447866879169 * Math.sqrt(0.395562770563), 1e-9);
  });
});

describe('clusters of the study', () => {
  const days = (client: string, values: readonly (readonly [string, string])[], more: Cells = {}): readonly Cells[] =>
    values.map(([date, ffm]) => reading(client, date, { ...STUDY, ffm_kg: ffm, ...more }));

  test('start at the first unused visit: days 0, 3, 8, 12 and 30 make {0, 3} and {8, 12}', async () => {
    const row = precisionOf(
      await cohortOf(
        engine,
        days('a', [
          ['2024-06-03', '50.0'],
          ['2024-06-06', '50.4'],
          ['2024-06-11', '60.0'],
          ['2024-06-15', '60.2'],
          ['2024-07-03', '70.0'],
        ]),
      ),
      'ffm_exported',
    );
    expect(row.dfBetween).toBe(2);
    expectClose(row.m ?? 0, (0.4 ** 2 / 2 + 0.2 ** 2 / 2) / 2, 1e-9);
    expect(row.h).toBe(1);
  });

  test('take the seventh day after the first and not the eighth', async () => {
    const within = await cohortOf(
      engine,
      days('a', [
        ['2024-06-03', '50.0'],
        ['2024-06-10', '50.4'],
      ]),
    );
    expect(precisionOf(within, 'ffm_exported').dfBetween).toBe(1);
    const after = await cohortOf(
      engine,
      days('a', [
        ['2024-06-03', '50.0'],
        ['2024-06-11', '50.4'],
      ]),
    );
    expect(precisionOf(after, 'ffm_exported').dfBetween).toBe(0);
  });

  test.each([
    ['14 days before the cluster', '2024-05-20', 0],
    ['15 days before the cluster', '2024-05-19', 1],
    ['inside the cluster', '2024-06-06', 0],
    ['the day after the cluster', '2024-06-07', 1],
  ])('count unless a program started: %s', async (_when, start, df) => {
    const rows = days(
      'a',
      [
        ['2024-06-03', '50.0'],
        ['2024-06-06', '50.4'],
      ],
      { program: 'Walking', program_start: start },
    );
    expect(precisionOf(await cohortOf(engine, rows), 'ffm_exported').dfBetween).toBe(df);
  });

  test.each([
    ['another device', { device_id: 'Unit 2' }],
    ['another hand position', { electrode_position: 'B' }],
    ['a meal', { fasted_h: 2 }],
    ['a caution', { rested: 'n' }],
    ['oedema', { oedema: 'y' }],
    ['pregnancy', { sex: 'F', pregnant: 'y' }],
  ] as const)('leave out a visit that is not strictly comparable with the first: %s', async (_what, cells) => {
    const [first, second, third] = days('a', [
      ['2024-06-03', '50.0'],
      ['2024-06-05', '58.0'],
      ['2024-06-07', '50.4'],
    ]) as [Cells, Cells, Cells];
    const row = precisionOf(await cohortOf(engine, [first, { ...second, ...cells }, third]), 'ffm_exported');
    expect(row.dfBetween).toBe(1);
    expectClose(row.m ?? 0, 0.4 ** 2 / 2, 1e-9);
  });

  test('keep what oedema does not touch: weight', async () => {
    const [first, second] = days('a', [
      ['2024-06-03', '50.0'],
      ['2024-06-05', '58.0'],
    ]) as [Cells, Cells];
    const row = precisionOf(await cohortOf(engine, [first, { ...second, oedema: 'y', weight_kg: '80.6' }]), 'weight');
    expect(row.dfBetween).toBe(1);
    expectClose(row.m ?? 0, 0.6 ** 2 / 2, 1e-9);
  });

  test('are not made from routine visits or the cross-check, and the cross-check adds no repositioning', async () => {
    const rows = ['routine', 'crosscheck'].flatMap((purpose) =>
      days(
        `a-${purpose}`,
        [
          ['2024-06-03', '50.0'],
          ['2024-06-05', '50.4'],
        ],
        { visit_purpose: purpose },
      ).flatMap((row) => [
        { ...row, reading: 1 },
        { ...row, reading: 2, ffm_kg: '51.0' },
      ]),
    );
    const row = precisionOf(await cohortOf(engine, rows), 'ffm_exported');
    expect([row.dfBetween, row.dfWithin]).toEqual([0, 2]);
  });
});

describe('the floor and the rule for single readings', () => {
  test('readings that all agree still have the error of their last digit, δ²/12', async () => {
    const rows = errorStudy(30, () => ({ reading: 1, ffm_kg: '50.2' })).flatMap((row) => [row, { ...row, reading: 2 }]);
    const cohort = await cohortOf(engine, rows);
    const row = precisionOf(cohort, 'ffm_exported');
    expectClose((row.sw ?? 0) ** 2, 0.01 / 12, 1e-12);
    expectClose(row.lsc ?? 0, normalQuantile(0.975) * Math.sqrt((2 * 0.01) / 12), 1e-12);
    expectClose((precisionOf(cohort, 'weight').sw ?? 0) ** 2, 0.01 / 12, 1e-12);
  });

  test('follows the most decimals that the column holds', async () => {
    const rows = errorStudy(30, (person) => ({ ffm_kg: person === 0 ? '50.25' : '50.2' })).flatMap((row) => [
      { ...row, reading: 1 },
      { ...row, reading: 2 },
    ]);
    expectClose((precisionOf(await cohortOf(engine, rows), 'ffm_exported').sw ?? 0) ** 2, 0.0001 / 12, 1e-12);
  });

  const jump = (person: number, visit: number): Cells => ({
    ffm_kg: visit === 0 ? '50.0' : person % 2 === 0 ? '50.8' : '49.2',
  });

  test('a study of single readings without ten repositioning df credits no replicate: V = 2M for every k', async () => {
    const nine = Array.from({ length: 9 }, (_, index) => `r${String(index)}`).flatMap((client) =>
      ['50.0', '50.2'].map((ffm, index) => reading(client, '2025-01-06', { reading: index + 1, ffm_kg: ffm })),
    );
    const row = precisionOf(await cohortOf(engine, [...errorStudy(30, jump), ...nine]), 'ffm_exported');
    expect([row.h, row.dfWithin, row.within]).toEqual([1, 9, 0]);
    expectClose(row.m ?? 0, 0.32, 1e-9);
    expectClose(row.twoBetween ?? 0, 0.64, 1e-9);
    const [first, second] = ['50.0', '50.2'].map((ffm, index) =>
      reading('r9', '2025-01-06', { reading: index + 1, ffm_kg: ffm }),
    ) as [Cells, Cells];
    const ten = precisionOf(await cohortOf(engine, [...errorStudy(30, jump), ...nine, first, second]), 'ffm_exported');
    expect(ten.dfWithin).toBe(10);
    expectClose(ten.within ?? 0, 0.02, 1e-9);
    expectClose(ten.twoBetween ?? 0, 2 * (0.32 - 0.02), 1e-9);
    expectClose(ten.lsc ?? 0, row.lsc ?? 0, 1e-9);
  });
});

describe('where a threshold comes from', () => {
  const jump = (person: number, visit: number): Cells => ({
    ffm_kg: visit === 0 ? '50.0' : person % 2 === 0 ? '50.8' : '49.2',
  });
  const client = ['50.0', '55.0'].map((ffm, index) =>
    reading('client', `2025-0${String(1 + index)}-06`, { ffm_kg: ffm }),
  );
  const replicates = (people: number): readonly Cells[] =>
    Array.from({ length: people }, (_, index) => `r${String(index)}`).flatMap((id) =>
      ['50.0', '50.2'].map((ffm, index) => reading(id, '2025-01-06', { reading: index + 1, ffm_kg: ffm })),
    );

  test('30 df from 30 clients: tier 1, z', async () => {
    const cohort = await cohortOf(engine, [...errorStudy(30, jump), ...client]);
    const row = precisionOf(cohort, 'ffm_exported');
    expect([row.tier, row.provisional]).toEqual([1, false]);
    expectClose(row.factor ?? 0, normalQuantile(0.975));
    const change = await latestOf(cohort, 'client', 'ffm_exported');
    expect(change).toMatchObject({ tier: 1, result: 'up' });
    expectClose(change.lsc ?? 0, row.lsc ?? 0);
  });

  test('30 df from ten clients: tier 1, z, provisional', async () => {
    const rows = Array.from({ length: 10 }, (_, person) =>
      ['50.0', '50.4', '49.8', '50.6'].map((ffm, day) =>
        reading(`p${String(person)}`, `2024-06-0${String(3 + day)}`, { ...STUDY, ffm_kg: ffm }),
      ),
    ).flat();
    const row = precisionOf(await cohortOf(engine, rows), 'ffm_exported');
    expect([row.tier, row.dfBetween, row.clients, row.provisional]).toEqual([1, 30, 10, true]);
    expectClose(row.factor ?? 0, normalQuantile(0.975));
  });

  test('29 and 10 df: tier 2 by t; 9 df: none', async () => {
    for (const people of [29, 10]) {
      const row = precisionOf(await cohortOf(engine, errorStudy(people, jump)), 'ffm_exported');
      expect([row.tier, row.provisional]).toEqual([2, true]);
      expectClose(row.factor ?? 0, tQuantile(0.975, people));
    }
    const cohort = await cohortOf(engine, [...errorStudy(9, jump), ...client]);
    expect(precisionOf(cohort, 'ffm_exported').tier).toBe(6);
    expect(await latestOf(cohort, 'client', 'ffm_exported')).toMatchObject({
      tier: 6,
      lsc: null,
      result: 'no-threshold',
      reasons: ['no_error_study'],
    });
  });

  const entered = {
    kind: 'entered' as const,
    alwaysT: false,
    values: [{ measure: 'ffm_exported' as const, betweenDaySd: 0.9, df: 24 }],
  };

  test('a value that the clinic entered: tier 3 with its own df, after its own studies of 10 df, before repositioning', async () => {
    const cohort = await cohortOf(engine, [...errorStudy(9, jump), ...replicates(31), ...client], {
      errorSource: entered,
    });
    const row = precisionOf(cohort, 'ffm_exported');
    expect([row.tier, row.provisional, row.within]).toEqual([3, true, 0]);
    expectClose(row.pe ?? 0, 0.9);
    expectClose(row.lsc ?? 0, tQuantile(0.975, 24) * Math.SQRT2 * 0.9);
    expect(await latestOf(cohort, 'client', 'ffm_exported')).toMatchObject({ tier: 3, result: 'up' });
    const own = await cohortOf(engine, errorStudy(10, jump), { errorSource: entered });
    expect(precisionOf(own, 'ffm_exported').tier).toBe(2);
  });

  test('an entered value below the repositioning error gives no less than that: V(1,1) is at least 2·s_w²', async () => {
    const cohort = await cohortOf(engine, replicates(31), {
      errorSource: { ...entered, values: [{ measure: 'ffm_exported', betweenDaySd: 0.01, df: 40 }] },
    });
    expectClose(precisionOf(cohort, 'ffm_exported').lsc ?? 0, normalQuantile(0.975) * Math.sqrt(2 * 0.02));
  });

  test('repositioning alone: tier 5, a lower limit that gives no result and explains nothing', async () => {
    const wobble = Array.from({ length: 31 }, (_, index) => `r${String(index)}`).flatMap((id) =>
      [500, 501].map((r, index) => reading(id, '2025-01-06', { reading: index + 1, r_ohm: `${String(r)}.0` })),
    );
    const fall = ['500.0', '560.0'].map((r, index) =>
      reading('client', `2025-0${String(1 + index)}-06`, { r_ohm: r, xc_ohm: index === 0 ? '50.0' : '56.0' }),
    );
    const cohort = await cohortOf(engine, [...wobble, ...fall]);
    expect(precisionOf(cohort, 'ffm')).toMatchObject({ tier: 5, dfWithin: 31, provisional: false, sb: null });
    const change = await latestOf(cohort, 'client', 'ffm');
    expect(change).toMatchObject({ tier: 5, result: 'no-threshold', reasons: ['repositioning_only'] });
    expect(Math.abs(change.change)).toBeGreaterThan(change.lsc ?? Infinity);
  });

  test('t throughout where the clinic chose it', async () => {
    const cohort = await cohortOf(engine, errorStudy(30, jump), { errorSource: { kind: 'own', alwaysT: true } });
    expectClose(precisionOf(cohort, 'ffm_exported').factor ?? 0, tQuantile(0.975, 30));
  });

  test('of 100 unchanged people between 1 and 14 at 30 df', async () => {
    const [low, high] = precisionOf(await cohortOf(engine, errorStudy(30, jump)), 'ffm_exported').changedPer100 ?? [
      0, 0,
    ];
    expectClose(low, 1.418, 1e-3);
    expectClose(high, 14.257, 1e-3);
  });

  test('every level has its own factor and the same error', async () => {
    const cohort = await cohortOf(engine, errorStudy(30, jump));
    for (const level of [80, 90, 95] as const) {
      const row = precisionOf(cohort, 'ffm_exported', level);
      expectClose(row.factor ?? 0, normalQuantile(0.5 + level / 200));
      expectClose(row.pe ?? 0, precisionOf(cohort, 'ffm_exported').pe ?? 0);
    }
  });

  test('a person with no value has no part in its error', async () => {
    const rows = errorStudy(30, jump).map((row, index) => (index < 2 ? without(row, 'ffm_kg') : row));
    expect(precisionOf(await cohortOf(engine, rows), 'ffm_exported')).toMatchObject({ dfBetween: 29, clients: 29 });
  });
});
