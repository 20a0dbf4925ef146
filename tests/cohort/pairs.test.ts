import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { IsoDate } from '../../lib/core/iso-date';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { expectClose } from '../stats/expect-close';
import { cohortOf, filterFor, latestOf, pairsOf, reading, sharedClinics, without, type Cells } from './small-clinic';

const clinics = sharedClinics();
let engine: Engine;
beforeAll(async () => {
  engine = await openNodeEngine();
  await clinics.build(engine);
});
afterAll(() => engine.close());

/** Routine visits of one client whose weight tells the days apart. */
const visits = (dates: readonly string[], cells: Cells = {}): readonly Cells[] =>
  dates.map((date, index) => reading('a', date, { weight_kg: (80 + index / 10).toFixed(1), ...cells }));

type Days = readonly (readonly [string, string])[];

/** The days of the pairs of weight, asked while the tests are collected and read in a test. */
const fromTo = (rows: readonly Cells[], asOf?: string): (() => Days) => {
  const pairs = clinics.add(rows, {}, asOf === undefined ? {} : { asOf: asOf as IsoDate }).pairs('weight');
  return () => pairs().map((row) => [row.from, row.to] as const);
};

describe('the baseline, for a program that starts on 31 January 2025', () => {
  const program = { program_start: '2025-01-31' };

  const starts: readonly (readonly [string, readonly string[], string, boolean])[] = [
    [
      'the last visit up to the start',
      ['2025-01-02', '2025-01-20', '2025-01-31', '2025-02-03', '2025-05-01'],
      '2025-01-31',
      false,
    ],
    ['30 days before it at the earliest', ['2025-01-01', '2025-05-01'], '2025-01-01', false],
    [
      'not 31 days before: the first in the week after it',
      ['2024-12-31', '2025-02-05', '2025-02-07', '2025-05-01'],
      '2025-02-05',
      true,
    ],
    ['seven days after it at the latest', ['2025-02-07', '2025-05-01'], '2025-02-07', true],
  ];

  for (const [rule, dates, baseline, late] of starts) {
    const rows = visits(dates, program);
    const days = fromTo(rows);
    test(rule, async () => {
      expect(days()).toEqual([[baseline, '2025-05-01']]);
      const cohort = await cohortOf(engine, rows);
      const [listed] = await cohort.clients(filterFor('weight'));
      const client = await cohort.client(listed?.clientKey ?? 0, filterFor('weight'));
      expect(client?.enrolments).toMatchObject([{ start: '2025-01-31', baseline, lateBaseline: late }]);
    });
  }

  const tooLate = visits(['2025-02-08', '2025-05-01'], program);
  const tooLateDays = fromTo(tooLate);

  test('is missing eight days after the start: no pair from baseline, the client is still counted', async () => {
    expect(tooLateDays()).toEqual([]);
    const cohort = await cohortOf(engine, tooLate);
    expect(await pairsOf(cohort, 'a', 'weight', 'consecutive')).toHaveLength(1);
    expect(await cohort.programs(filterFor('weight'), 'baseline-latest')).toMatchObject([
      { program: 'Walking', nClients: 1, nPairs: 0, mean: null, sd: null, interval: null },
    ]);
  });

  const dates = ['2025-01-02', '2025-03-01', '2025-05-01'];
  const noStart = fromTo(visits(dates, { program_start: '' }));

  test('is the first visit without a start, and without any program, which counts as the check-ups', async () => {
    expect(noStart()).toEqual([['2025-01-02', '2025-05-01']]);
    const cohort = await cohortOf(engine, visits(dates, { program: '', program_start: '' }), {
      checkUpsProgram: 'Once a year',
    });
    expect(await latestOf(cohort, 'a', 'weight')).toMatchObject({ program: 'Once a year', from: '2025-01-02' });
  });

  test('goes by date alone, not by comparability: a visit after a meal stays the baseline', async () => {
    const [first, second, third] = visits(['2025-01-20', '2025-01-31', '2025-05-01'], program) as [Cells, Cells, Cells];
    const cohort = await cohortOf(engine, [first, { ...second, fasted_h: 1 }, third]);
    expect(await latestOf(cohort, 'a', 'weight')).toMatchObject({ from: '2025-01-31', comparable: 'no' });
  });

  test('without what a value needs makes no pair for that value and one for the others', async () => {
    const [first, second] = visits(['2025-01-31', '2025-05-01'], program) as [Cells, Cells];
    const cohort = await cohortOf(engine, [without(first, 'r_ohm', 'xc_ohm'), second]);
    expect(await pairsOf(cohort, 'a', 'ffm')).toEqual([]);
    expect(await pairsOf(cohort, 'a', 'weight')).toHaveLength(1);
  });
});

describe('the latest visit', () => {
  test('is the last that holds the value: another day for weight than for fat-free mass', async () => {
    const [first, second, third] = visits(['2025-01-06', '2025-03-01', '2025-05-01']) as [Cells, Cells, Cells];
    const cohort = await cohortOf(engine, [first, second, without(third, 'r_ohm', 'xc_ohm')]);
    expect((await latestOf(cohort, 'a', 'weight')).to).toBe('2025-05-01');
    expect((await latestOf(cohort, 'a', 'ffm')).to).toBe('2025-03-01');
  });

  const untilEnd = fromTo(visits(['2025-01-06', '2025-03-01', '2025-03-02'], { program_end: '2025-03-01' }));

  test('does not lie after the end of the program; the day of the end counts', () => {
    expect(untilEnd()).toEqual([['2025-01-06', '2025-03-01']]);
  });

  const dates = ['2025-01-06', '2025-03-01', '2025-05-01'];
  const untilAsOf = fromTo(visits(dates), '2025-04-30');

  test('does not lie after as-of, and a later visit changes nothing that is known by then', async () => {
    expect(untilAsOf()).toEqual([['2025-01-06', '2025-03-01']]);
    const early = await cohortOf(engine, visits(dates), {}, { asOf: '2025-04-30' as IsoDate });
    const alone = await cohortOf(engine, visits(dates.slice(0, 2)));
    expect(early.summary).toMatchObject({ asOf: '2025-04-30', visits: 2, readings: 2, clients: 1 });
    expect(await latestOf(alone, 'a', 'weight')).toMatchObject({ from: '2025-01-06', to: '2025-03-01' });
  });

  const [first, second, third, fourth] = visits(['2025-01-06', '2025-02-01', '2025-03-01', '2025-04-01']) as [
    Cells,
    Cells,
    Cells,
    Cells,
  ];
  const purposes = [
    first,
    { ...second, visit_purpose: 'repeat' },
    { ...third, visit_purpose: 'precision' },
    { ...fourth, visit_purpose: 'crosscheck' },
  ];
  const byPurpose = fromTo(purposes);

  test('is a routine visit or a repeat: precision and cross-check make no pair', () => {
    expect(byPurpose()).toEqual([['2025-01-06', '2025-02-01']]);
  });

  test('belongs to each of two programs one after the other, one pair per enrolment', async () => {
    const before = visits(['2025-01-06', '2025-03-01'], { program: 'Before', program_end: '2025-03-01' });
    const after = visits(['2025-03-20', '2025-06-01'], { program: 'After', program_start: '2025-03-15' });
    const cohort = await cohortOf(engine, [...before, ...after]);
    expect((await pairsOf(cohort, 'a', 'weight')).map((row) => [row.program, row.from, row.to])).toEqual([
      ['Before', '2025-01-06', '2025-03-01'],
      ['After', '2025-03-01', '2025-06-01'],
    ]);
  });

  const [oneDevice, otherDevice] = visits(['2025-01-06', '2025-01-06'], { program: '', program_start: '' }) as [
    Cells,
    Cells,
  ];
  const oneDay = fromTo([oneDevice, { ...otherDevice, device_id: 'Unit 2' }]);

  test('is another day than the baseline: a second device on the first day is no change', () => {
    expect(oneDay()).toEqual([]);
  });
});

describe('consecutive pairs', () => {
  test('step from visit to visit that holds the value', async () => {
    const [first, second, third] = visits(['2025-01-06', '2025-03-01', '2025-05-01']) as [Cells, Cells, Cells];
    const cohort = await cohortOf(engine, [first, without(second, 'r_ohm', 'xc_ohm'), third]);
    const days = async (measure: 'weight' | 'ffm') =>
      (await pairsOf(cohort, 'a', measure, 'consecutive')).map((row) => [row.from, row.to]);
    expect(await days('weight')).toEqual([
      ['2025-01-06', '2025-03-01'],
      ['2025-03-01', '2025-05-01'],
    ]);
    expect(await days('ffm')).toEqual([['2025-01-06', '2025-05-01']]);
  });

  test('stand with the program that is open at the later visit', async () => {
    const before = visits(['2025-01-06', '2025-03-01'], { program: 'Before', program_end: '2025-03-01' });
    const after = visits(['2025-03-20'], { program: 'After', program_start: '2025-03-15' });
    const cohort = await cohortOf(engine, [...before, ...after]);
    expect((await pairsOf(cohort, 'a', 'weight', 'consecutive')).map((row) => [row.program, row.to])).toEqual([
      ['Before', '2025-03-01'],
      ['After', '2025-03-20'],
    ]);
  });

  test('of a client seen only after the program’s end are still in the program’s row', async () => {
    const rows = visits(['2025-05-01', '2025-06-01'], { program_end: '2025-02-01' });
    const programs = await (await cohortOf(engine, rows)).programs(filterFor('weight'), 'consecutive');
    expect(programs).toMatchObject([{ program: 'Walking', nPairs: 1 }]);
  });
});

describe('a visit', () => {
  test('is the mean of its readings, derived values computed first', async () => {
    const rows = [
      reading('a', '2025-01-06', { reading: 1, r_ohm: '400.0' }),
      reading('a', '2025-01-06', { reading: 2, r_ohm: '600.0' }),
      reading('a', '2025-05-01', { r_ohm: '500.0' }),
    ];
    const row = await latestOf(await cohortOf(engine, rows), 'a', 'h2_r');
    expect([row.kFrom, row.kTo]).toEqual([2, 1]);
    expectClose(row.valueFrom, (176 ** 2 / 400 + 176 ** 2 / 600) / 2);
    expectClose(row.valueTo, 176 ** 2 / 500);
  });

  test('counts the readings that hold the value', async () => {
    const rows = [
      reading('a', '2025-01-06', { reading: 1 }),
      without(reading('a', '2025-01-06', { reading: 2 }), 'xc_ohm'),
      reading('a', '2025-05-01'),
    ];
    const cohort = await cohortOf(engine, rows);
    expect((await latestOf(cohort, 'a', 'ffm')).kFrom).toBe(1);
    expect((await latestOf(cohort, 'a', 'r')).kFrom).toBe(2);
  });

  test('on one day with two devices is two visits', async () => {
    const rows = [
      reading('a', '2025-01-06'),
      reading('a', '2025-05-01'),
      reading('a', '2025-05-01', { device_id: 'Unit 2', r_ohm: '488.0' }),
    ];
    const cohort = await cohortOf(engine, rows);
    expect(cohort.summary.visits).toBe(3);
    expect(await latestOf(cohort, 'a', 'r')).toMatchObject({
      valueTo: 488,
      comparable: 'no',
      reasons: ['device', 'no_error_study'],
    });
  });
});

describe('a series', () => {
  const startOf = (sexes: readonly string[]): (() => number) => {
    const rows = sexes.map((sex, index) => reading('a', `2025-0${String(index + 1)}-06`, { sex }));
    const latest = clinics.add(rows).latest('ffm');
    return () => latest().valueFrom;
  };
  const [men, mostlyMen, manFirst, womanFirst, mostlyWomen] = [
    startOf(['M', 'M', 'M']),
    startOf(['F', 'M', 'M']),
    startOf(['M', 'F']),
    startOf(['F', 'M']),
    startOf(['M', 'F', 'F']),
  ];

  test('has one sex for its equations: that of most visits, the first where they tie', () => {
    const man = men();
    expectClose(mostlyMen(), man);
    expectClose(manFirst(), man);
    expectClose(womanFirst(), man - 4.229);
    expectClose(mostlyWomen(), man - 4.229);
  });

  test('follows the answer to the question of the sex, and a column of its own before the marker', async () => {
    const rows = ['M', 'M'].map((sex, index) => reading('a', `2025-0${String(index + 1)}-06`, { sex }));
    const plain = (await latestOf(await cohortOf(engine, rows), 'a', 'ffm')).valueFrom;
    const answered = await cohortOf(engine, rows, {
      answers: [{ kind: 'sex-for-equations', client: 'a', sex: 'F' }],
    });
    expectClose((await latestOf(answered, 'a', 'ffm')).valueFrom, plain - 4.229);
    const own = await cohortOf(
      engine,
      rows.map((row) => ({ ...row, sex_for_equations: 'F' })),
    );
    expectClose((await latestOf(own, 'a', 'ffm')).valueFrom, plain - 4.229);
  });

  test('has one height, the median of the measured ones, so that a typing error moves nothing', async () => {
    const rows = ['176.0', '166.0', '176.4'].map((height, index) =>
      reading('a', `2025-0${String(index + 1)}-06`, { height_cm: height }),
    );
    const cohort = await cohortOf(engine, rows);
    const consecutive = await pairsOf(cohort, 'a', 'ffm', 'consecutive');
    expect(consecutive.map((row) => row.change)).toEqual([0, 0]);
    expect(consecutive.map((row) => row.comparable)).toEqual(['caution', 'caution']);
    expect(consecutive.map((row) => row.reasons)).toEqual([
      ['height_differs', 'no_error_study'],
      ['height_differs', 'no_error_study'],
    ]);
    expect(await latestOf(cohort, 'a', 'ffm')).toMatchObject({ comparable: 'comparable', reasons: ['no_error_study'] });
    expect((await latestOf(cohort, 'a', 'h2_r')).valueFrom).toBeCloseTo(176 ** 2 / 500, 9);
  });

  test('counts the height of a visit once, however many readings the visit has', async () => {
    const heights = ['174.0', '176.0', '178.0'].map((height, index) =>
      reading('a', `2025-0${String(index + 1)}-06`, { height_cm: height }),
    );
    const again = [2, 3, 4].map((number) => reading('a', '2025-03-06', { height_cm: '178.0', reading: number }));
    const cohort = await cohortOf(engine, [...heights, ...again]);
    expect((await latestOf(cohort, 'a', 'h2_r')).valueTo).toBeCloseTo(176 ** 2 / 500, 9);
  });

  test('prefers measured heights to those entered or reported', async () => {
    const rows = [
      reading('a', '2025-01-06', { height_cm: '170.0', height_source: 'reported' }),
      reading('a', '2025-02-06', { height_cm: '176.0', height_source: 'measured' }),
      reading('a', '2025-03-06', { height_cm: '170.0', height_source: 'reported' }),
    ];
    expect((await latestOf(await cohortOf(engine, rows), 'a', 'h2_r')).valueTo).toBeCloseTo(176 ** 2 / 500, 9);
  });

  test('splits every change of a regression into parts that sum to it', async () => {
    const rows = [
      reading('a', '2025-01-06', { reading: 1, r_ohm: '480.0', xc_ohm: '51.0', weight_kg: '83.0' }),
      reading('a', '2025-01-06', { reading: 2, r_ohm: '490.0', xc_ohm: '50.0', weight_kg: '83.2' }),
      reading('a', '2025-09-06', { r_ohm: '530.0', xc_ohm: '46.0', weight_kg: '77.0' }),
    ];
    const cohort = await cohortOf(engine, rows);
    for (const measure of ['ffm', 'fm', 'ffmi', 'fmi', 'smm', 'smi'] as const) {
      const { terms, change } = await latestOf(cohort, 'a', measure);
      if (terms === null) throw new Error(`${measure} has no parts`);
      expectClose(terms.weight + terms.resistance + terms.reactance + terms.height + terms.age, change, 1e-9, 1);
      expect(terms.height).toBe(0);
    }
    const { terms } = await latestOf(cohort, 'a', 'ffm');
    expectClose(terms?.weight ?? 0, 0.231 * (77 - 83.1));
    expectClose(terms?.reactance ?? 0, 0.13 * (46 - 50.5));
    expectClose(terms?.resistance ?? 0, 0.518 * 176 ** 2 * (1 / 530 - (1 / 480 + 1 / 490) / 2));
    for (const measure of ['phase_angle', 'z', 'fat_percent', 'weight', 'ffm_exported'] as const) {
      expect((await pairsOf(cohort, 'a', measure)).map((row) => row.terms)).toEqual(
        measure === 'ffm_exported' ? [] : [null],
      );
    }
  });
});

describe('filters', () => {
  test('look at program, site, sex and completed age of the later visit', async () => {
    const rows = [
      ...visits(['2025-01-06', '2025-05-04']),
      reading('b', '2025-01-06', { site: 'South', sex: 'F', program: 'Other' }),
      reading('b', '2025-05-05', { site: 'South', sex: 'F', program: 'Other' }),
    ];
    const cohort = await cohortOf(engine, rows);
    const clients = async (more: Parameters<typeof filterFor>[1]) =>
      (await cohort.changes(filterFor('weight', more), 'baseline-latest')).map((row) => row.client);
    expect(await clients({})).toEqual(['a', 'b']);
    expect(await clients({ program: 'Other' })).toEqual(['b']);
    expect(await clients({ site: 'North' })).toEqual(['a']);
    expect(await clients({ sex: 'F' })).toEqual(['b']);
    // Born on 5 May 1960: 64 on the fourth of May 2025, 65 on the fifth.
    expect(await clients({ ageFrom: 65 })).toEqual(['b']);
    expect(await clients({ ageTo: 64 })).toEqual(['a']);
    expect(await clients({ ageFrom: 64, ageTo: 65 })).toEqual(['a', 'b']);
    expect((await cohort.clients(filterFor('weight', { site: 'South' }))).map((row) => row.client)).toEqual(['b']);
  });
});
