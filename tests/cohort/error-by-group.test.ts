import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { settingsSchema } from '../../lib/cohort/settings';
import { ERROR_GROUPINGS } from '../../lib/cohort/settings-parts/error-study-settings';
import type { ChangeRow } from '../../lib/cohort/types/change-row';
import type { Cohort } from '../../lib/cohort/types/cohort';
import type { IsoDate } from '../../lib/core/iso-date';
import { createCohort } from '../../lib/cohort/create-cohort';
import { openNodeEngine } from '../../lib/engine/node';
import { openPostgresEngine } from '../../lib/engine/postgres';
import type { Engine } from '../../lib/engine/types';
import { inputsOf } from '../../lib/import/inputs-of';
import { cohortDocument } from '../../lib/workspace/cohort-document';
import { openFiles } from '../../lib/workspace/open-files';
import { compareAnswers } from '../sql/compare-answers';
import { copyReadings } from '../sql/demo-clinic';
import { postgresAbsent, postgresInstalled, startTemporaryPostgres } from '../sql/temporary-postgres';
import { expectClose } from '../stats/expect-close';
import { cohortOf, exportFile, filterFor, pairsOf, precisionOf, reading, type Cells } from './small-clinic';

/** z at 95 %, as in `qnorm(0.975)` of R. */
const Z = 1.959963984540054;
/** One decimal is recorded: no variance is below 0.1²/12. */
const FLOOR = 0.01 / 12;

/** Park and Miller's generator, so that the readings are the same every time. */
const noise = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647 - 0.5;
  };
};

interface Group {
  readonly name: string;
  readonly people: number;
  readonly between: number;
  readonly within: number;
  /** Of the people, how many have two readings on the first day. */
  readonly twice: number;
  readonly cells: Cells;
}

const QUIET: Cells = { device_id: 'Unit 1', site: 'North', operator: 'AB', program: 'Walking' };
const LOUD: Cells = { device_id: 'Unit 2', site: 'South', operator: 'CD', program: 'Swimming' };
const FEW: Cells = { device_id: 'Unit 3', site: 'West', operator: 'EF', program: 'Rowing' };

const GROUPS: readonly Group[] = [
  { name: 'quiet', people: 31, between: 1, within: 0.6, twice: 6, cells: QUIET },
  { name: 'loud', people: 33, between: 4, within: 2, twice: 32, cells: LOUD },
  { name: 'few', people: 6, between: 9, within: 3, twice: 0, cells: FEW },
];

const studyOf = ({ name, people, between, within, twice, cells }: Group): readonly Cells[] => {
  const draw = noise(name.length * 7919);
  return Array.from({ length: people }, (_, person) => person).flatMap((person) => {
    const client = `${name}-${String(person)}`;
    const level = 50 + person / 4;
    const ordinary = { ...cells, program_start: '2024-01-08', visit_purpose: 'precision' };
    return ['2024-06-03', '2024-06-05'].flatMap((date, day) => {
      const ofDay = level + between * draw();
      const readings = day === 0 && person < twice ? 2 : 1;
      return Array.from({ length: readings }, (_, place) =>
        reading(client, date, {
          ...ordinary,
          reading: place + 1,
          ffm_kg: (ofDay + within * draw()).toFixed(1),
        }),
      );
    });
  });
};

const STUDY = GROUPS.map(studyOf);
const [OF_QUIET = [], OF_LOUD = [], OF_FEW = []] = STUDY;

/** The computation's description in plain loops: M, h and s_w² of people by their visits, the study's between days. */
const partsOf = (rows: readonly Cells[]) => {
  const people = new Map<string, Map<string, number[]>>();
  const studied = new Set(
    rows.filter((row) => row['visit_purpose'] === 'precision').map((row) => String(row['client_id'])),
  );
  for (const { client_id: client, visit_date: date, ffm_kg: value } of rows) {
    const days = people.get(String(client)) ?? new Map<string, number[]>();
    days.set(String(date), [...(days.get(String(date)) ?? []), Number(value)]);
    people.set(String(client), days);
  }
  const mean = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;
  const about = (values: readonly number[]): number => values.reduce((sum, one) => sum + (one - mean(values)) ** 2, 0);
  let [within, dfWithin, between, df, reciprocals] = [0, 0, 0, 0, 0];
  for (const [client, days] of people) {
    for (const readings of days.values()) {
      within += about(readings);
      dfWithin += readings.length - 1;
    }
    if (!studied.has(client)) continue;
    between += about([...days.values()].map(mean));
    df += days.size - 1;
    reciprocals += (days.size - 1) * mean([...days.values()].map((readings) => 1 / readings.length));
  }
  return { m: between / df, df, h: reciprocals / df, sw: Math.max(within / dfWithin, FLOOR), dfWithin };
};

type Parts = ReturnType<typeof partsOf>;

const lscOf = ({ m, h }: Parts, sw: number, [k1, k2]: readonly [number, number]): number =>
  Z * Math.sqrt(2 * Math.max(0, m - h * sw) + sw * (1 / k1 + 1 / k2));

const twoVisits = (client: string, first: Cells, second: Cells, again = 1): readonly Cells[] => [
  ...Array.from({ length: again }, (_, place) =>
    reading(client, '2025-01-06', {
      ...first,
      program_start: '2025-01-06',
      reading: place + 1,
      ffm_kg: `60.${String(place)}`,
    }),
  ),
  reading(client, '2025-03-03', { ...second, program_start: '2025-01-06', ffm_kg: '58.0' }),
];

const CLIENTS: readonly Cells[] = [
  ...twoVisits('q', QUIET, QUIET),
  ...twoVisits('l', LOUD, LOUD, 2),
  ...twoVisits('f', FEW, FEW),
  ...twoVisits('over', { ...QUIET, program: 'Walking' }, { ...LOUD, program: 'Walking' }),
  reading('two-hands', '2025-01-06', { ...LOUD, program_start: '2025-01-06', reading: 1, ffm_kg: '60.0' }),
  reading('two-hands', '2025-01-06', {
    ...LOUD,
    program_start: '2025-01-06',
    operator: 'AB',
    reading: 2,
    ffm_kg: '60.1',
  }),
  reading('two-hands', '2025-03-03', { ...LOUD, program_start: '2025-01-06', ffm_kg: '58.0' }),
];
const ROWS = [...STUDY.flat(), ...CLIENTS];

const ALL = partsOf(ROWS);
const QUIET_PARTS = partsOf(OF_QUIET);
/** The loud group's visits with two readings outside its study; of two operators none is the visit's. */
const loudParts = (errorFrom: string): Parts =>
  partsOf([
    ...OF_LOUD,
    ...CLIENTS.filter(
      (row) => row['client_id'] === 'l' || (row['client_id'] === 'two-hands' && errorFrom !== 'operator'),
    ),
  ]);

/** The quiet group has too few replicates of its own to know its repositioning; the loud one has over 30. */
const EXPECTED = {
  everyone: (k: readonly [number, number]): number => lscOf(ALL, ALL.sw, k),
  quiet: (k: readonly [number, number]): number => lscOf(QUIET_PARTS, ALL.sw, k),
  loud: (errorFrom: string, k: readonly [number, number]): number =>
    lscOf(loudParts(errorFrom), loudParts(errorFrom).sw, k),
};

const onlyPair = async (cohort: Cohort, client: string): Promise<ChangeRow> => {
  const [row] = await pairsOf(cohort, client, 'ffm_exported');
  if (row === undefined) throw new Error(`no pair of ${client}`);
  return row;
};

let engine: Engine;
beforeAll(async () => {
  engine = await openNodeEngine();
});
afterAll(() => engine.close());

test('the groups of this clinic differ, and only two of them have enough people', () => {
  const loud = loudParts('device');
  expect([QUIET_PARTS.df, loud.df, partsOf(OF_FEW).df]).toEqual([31, 33, 6]);
  expect([QUIET_PARTS.dfWithin, loud.dfWithin, ALL.dfWithin]).toEqual([6, 34, 40]);
  expect(loud.m / QUIET_PARTS.m).toBeGreaterThan(4);
});

test('everyone’s error judges every pair until the clinic chooses otherwise', async () => {
  const cohort = await cohortOf(engine, ROWS);
  expect([cohort.errorFrom, cohort.groupPrecision(95)]).toEqual(['everyone', []]);
  for (const [client, k] of [
    ['q', 1],
    ['l', 2],
    ['f', 1],
    ['over', 1],
  ] as const) {
    const row = await onlyPair(cohort, client);
    expect(row.errorGroup).toBeNull();
    expectClose(row.lsc ?? undefined, EXPECTED.everyone([k, 1]), 1e-9);
  }
});

describe.each(ERROR_GROUPINGS)('error by %s', (errorFrom) => {
  const names = {
    quiet: String(QUIET[`${errorFrom === 'device' ? 'device_id' : errorFrom}`]),
    loud: String(LOUD[errorFrom === 'device' ? 'device_id' : errorFrom]),
  };
  let cohort: Cohort;
  beforeAll(async () => {
    cohort = await cohortOf(engine, ROWS, { errorStudy: { errorFrom } });
  });

  test('a group with 30 degrees of freedom of 15 people has its own threshold, with its own repositioning from 30', () => {
    const own = cohort.groupPrecision(95).filter(({ measure }) => measure === 'ffm_exported');
    expect(own.map(({ group, dfBetween, tier, provisional }) => [group, dfBetween, tier, provisional])).toEqual(
      [
        [names.quiet, 31, 1, false],
        [names.loud, 33, 1, false],
      ].sort(([a], [b]) => (String(a) < String(b) ? -1 : 1)),
    );
    const lsc = (name: string): number | undefined => own.find(({ group }) => group === name)?.lsc ?? undefined;
    expectClose(lsc(names.quiet), EXPECTED.quiet([1, 1]), 1e-9);
    expectClose(lsc(names.loud), EXPECTED.loud(errorFrom, [1, 1]), 1e-9);
    expectClose(precisionOf(cohort, 'ffm_exported').lsc ?? undefined, EXPECTED.everyone([1, 1]), 1e-9);
  });

  test('judges the pairs that lie in it, and everyone’s the others', async () => {
    const [quiet, loud, few] = [await onlyPair(cohort, 'q'), await onlyPair(cohort, 'l'), await onlyPair(cohort, 'f')];
    expect([quiet.errorGroup, loud.errorGroup, few.errorGroup]).toEqual([names.quiet, names.loud, null]);
    expectClose(quiet.lsc ?? undefined, EXPECTED.quiet([1, 1]), 1e-9);
    expectClose(loud.lsc ?? undefined, EXPECTED.loud(errorFrom, [2, 1]), 1e-9);
    expectClose(few.lsc ?? undefined, EXPECTED.everyone([1, 1]), 1e-9);
    expect([quiet.result, loud.result]).toEqual(['down', 'within']);
  });

  test('a pair from one group to another is judged by everyone’s; an operator counts where all readings name the same', async () => {
    const over = await onlyPair(cohort, 'over');
    expect(over.errorGroup).toBe(errorFrom === 'program' ? names.quiet : null);
    expectClose(
      over.lsc ?? undefined,
      errorFrom === 'program' ? EXPECTED.quiet([1, 1]) : EXPECTED.everyone([1, 1]),
      1e-9,
    );
    expect((await onlyPair(cohort, 'two-hands')).errorGroup).toBe(errorFrom === 'operator' ? null : names.loud);
  });

  test('shows the group’s own error by the same rule beside the pool', async () => {
    const { groups } = await cohort.errorStudy(filterFor('ffm_exported'));
    const shown = groups.find(({ by, name, kind }) => by === errorFrom && name === names.loud && kind === 'between');
    const own = cohort
      .groupPrecision(95)
      .find(({ group, measure }) => group === names.loud && measure === 'ffm_exported');
    expectClose(shown?.pe, own?.pe ?? NaN, 1e-9);
  });
});

describe.skipIf(!postgresInstalled)(`on PostgreSQL${postgresInstalled ? '' : ` (${postgresAbsent})`}`, () => {
  test('groups have the same errors and judge the same pairs', async () => {
    const settings = settingsSchema.parse({ errorStudy: { errorFrom: 'operator' } });
    const native = await cohortOf(engine, ROWS, settings);
    const postgres = await startTemporaryPostgres();
    const other = await openPostgresEngine(postgres.connection);
    try {
      await copyReadings(engine, other);
      const cohort = await createCohort(other, settings, native.summary.asOf);
      const told = async (from: Cohort): Promise<unknown> => [
        from.groupPrecision(95),
        await from.changes(filterFor('ffm_exported'), 'baseline-latest'),
        (await from.errorStudy(filterFor('ffm_exported'))).groups,
      ];
      const found = compareAnswers(await told(native), await told(cohort));
      expect(found.differences).toEqual([]);
      expect(cohort.groupPrecision(95).length).toBeGreaterThan(1);
    } finally {
      await other.close();
      await postgres.stop();
    }
  }, 120_000);
});

test('the value’s log form is everyone’s choice: a group has it too', async () => {
  const logForm = [{ measure: 'ffm_exported' as const, on: '2025-01-01', initials: 'AB', sdOfLogs: 0.02 }];
  const cohort = await cohortOf(engine, ROWS, { errorStudy: { errorFrom: 'device', logForm } });
  const own = cohort.groupPrecision(95).find(({ group, measure }) => group === 'Unit 1' && measure === 'ffm_exported');
  const inLogs = OF_QUIET.map((row) => ({ ...row, ffm_kg: Math.log(Number(row['ffm_kg'])) }));
  expect([own?.form, own?.dfBetween]).toEqual(['log', 31]);
  expectClose(own?.m ?? undefined, partsOf(inLogs).m, 1e-9);
  const row = await onlyPair(cohort, 'q');
  expect(row.errorGroup).toBe('Unit 1');
  expectClose(row.lsc ?? undefined, 60 * (1 - Math.exp(-(own?.lsc ?? NaN))), 1e-9);
});

test('a program whose pairs were judged by several errors is not held against error alone', async () => {
  const rows = await (
    await cohortOf(engine, ROWS, { errorStudy: { errorFrom: 'site' } })
  ).programs(filterFor('ffm_exported', { comparable: 'all' }), 'baseline-latest');
  const byError = new Map(rows.map((row) => [row.program, row.byError]));
  // Walking holds a pair of North and one from North to South; Swimming lies in South alone.
  expect(byError.get('Walking')).toBeNull();
  expect(byError.get('Swimming')?.pDown).toBeGreaterThan(0);
});

test('the command line’s document says whose error judges, and of each pair', async () => {
  const settings = settingsSchema.parse({ errorStudy: { errorFrom: 'site' } });
  const today = '2030-01-01' as IsoDate;
  const { inputs } = await inputsOf([exportFile(ROWS)], { importedOn: today });
  const opened = await openFiles(engine, inputs, settings, { today });
  if (!opened.ok) throw new Error(opened.error.message);
  const pieces: string[] = [];
  for await (const piece of cohortDocument(opened.value, {
    measures: ['ffm_exported'],
    level: 95,
    comparable: 'strict',
    reviewVisit: 'closest',
  })) {
    pieces.push(piece);
  }
  const written = JSON.parse(pieces.join('')) as {
    readonly error_from: {
      readonly by: string;
      readonly groups: readonly { readonly group: string; readonly lsc: number }[];
    };
    readonly changes: readonly {
      readonly client: string;
      readonly purpose: string;
      readonly error_group: string | null;
    }[];
  };
  expect(written.error_from.by).toBe('site');
  expect(written.error_from.groups.map(({ group }) => group)).toEqual(['North', 'South']);
  const groupOf = (client: string): string | null | undefined =>
    written.changes.find((row) => row.client === client && row.purpose === 'baseline-latest')?.error_group;
  expect([groupOf('q'), groupOf('l'), groupOf('f')]).toEqual(['North', 'South', null]);
});
