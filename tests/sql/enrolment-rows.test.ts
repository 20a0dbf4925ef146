import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createCohort } from '../../lib/cohort/create-cohort';
import { settingsSchema } from '../../lib/cohort/settings';
import type { IsoDate } from '../../lib/core/iso-date';
import { openNodeEngine } from '../../lib/engine/node';
import { openPostgresEngine } from '../../lib/engine/postgres';
import type { Cell, Engine, Row } from '../../lib/engine/types';
import { compareAnswers } from './compare-answers';
import { copyReadings, importBytes } from './demo-clinic';
import { filterOf } from './answers-of';
import {
  postgresAbsent,
  postgresInstalled,
  startTemporaryPostgres,
  type TemporaryPostgres,
} from './temporary-postgres';

const AS_OF = '2025-12-01' as IsoDate;
const settings = settingsSchema.parse({
  errorSource: { kind: 'published' },
  programs: [
    {
      name: 'Walking',
      plannedVisitWeeks: [0, 8, 21],
      reviews: [{ week: 8, windowWeeks: 2 }],
      expectedChange: [
        { measure: 'ffm', fromWeek: 0, toWeek: 8, perKgWeightChange: 0.3, perMonth: 0.1 },
        { measure: 'ffm', fromWeek: 8, perKgWeightChange: 0.1 },
      ],
    },
  ],
  answers: [{ kind: 'same-client', ids: ['B'], client: 'b' }],
  enrolments: [
    // The clinic’s word goes before the file’s; an id that was answered to be b’s is b’s.
    { client: 'a', program: 'Walking', start: '2025-01-06', end: '2025-04-01', endReason: 'declined' },
    { client: 'B', program: 'Evenings', start: '2025-02-01' },
    { client: 'c', program: 'Evenings', start: '2026-02-01' },
    { client: 'nobody', program: 'Evenings', start: '2025-02-01' },
  ],
});

const VISITS = [
  'client_id,visit_date,site,device_id,height_cm,weight_kg,r_ohm,xc_ohm,posture,electrode_path',
  ...['a', 'b', 'c'].flatMap((client, index) =>
    ['2025-01-06', '2025-03-03', '2025-06-02'].map(
      (date, visit) =>
        `${client},${date},North,U,${String(160 + 5 * index)},80,${String(500 + 22 * visit)},50,lying,hand-to-foot`,
    ),
  ),
].join('\n');

/** Columns of `enrolment_rows` that are filled. */
const COLUMNS = [
  'enrolment_row',
  'client_key',
  'client_id',
  'program',
  'program_start',
  'program_end',
  'end_reason',
  'sex',
  'birth_date',
  'birth_year',
  'family_name',
];
const ENROLMENTS: readonly (readonly Cell[])[] = [
  [1, 1, 'a', 'Walking', '2025-01-06', '2025-05-01', 'moved', 'M', '1960-05-05', null, 'Orla'],
  [2, 1, 'a', 'Strength', '2025-03-01', null, null, 'M', '1960-05-05', null, 'Orla'],
  [3, 2, 'b', 'Walking', null, null, null, 'F', null, 1970, null],
  [4, 3, 'c', 'Walking', '2026-01-01', null, null, 'X', null, null, null],
];

const tell = async (engine: Engine) => {
  await engine.insert('enrolment_rows', COLUMNS, ENROLMENTS);
  const cohort = await createCohort(engine, settings, AS_OF);
  const rows = async (sql: string): Promise<readonly Row[]> => engine.query(sql);
  return {
    clients: await rows('SELECT client_id, sex, birth_ref, born_in, family_name FROM clients ORDER BY client_id'),
    enrolments: await rows(
      'SELECT client_key, program, program_start, program_end, end_reason, baseline_no FROM enrolments ORDER BY enrolment_no',
    ),
    changes: await cohort.changes(filterOf('r_h', { comparable: 'all' }), 'baseline-latest'),
    reviews: await cohort.reviews(filterOf('r_h')),
    contacts: await cohort.contacts(filterOf('r_h')),
    due: await cohort.due(filterOf('r_h')),
    precision: cohort.precision(95),
  };
};

const native: { engine?: Engine; told?: Awaited<ReturnType<typeof tell>> } = {};
const cluster: { postgres?: TemporaryPostgres } = {};

beforeAll(async () => {
  native.engine = await openNodeEngine();
  await importBytes(native.engine, 'visits.csv', new TextEncoder().encode(VISITS));
  if (postgresInstalled) cluster.postgres = await startTemporaryPostgres();
});

afterAll(async () => {
  await native.engine?.close();
  await cluster.postgres?.stop();
});

describe('enrolment rows and a threshold per height', () => {
  it.skipIf(!postgresInstalled)(
    `answer the same on PostgreSQL ${postgresInstalled ? '' : `(${postgresAbsent})`}`,
    async () => {
      if (native.engine === undefined || cluster.postgres === undefined) throw new Error('an engine is not open');
      const postgres = await openPostgresEngine(cluster.postgres.connection);
      try {
        await copyReadings(native.engine, postgres);
        const [here, there] = [await tell(native.engine), await tell(postgres)];
        expect(here.clients.map((row) => Object.values(row))).toEqual([
          ['a', 'M', '1960-05-05', null, 'Orla'],
          ['b', 'F', '1970-07-01', 1970, null],
          ['c', null, null, null, null],
        ]);
        expect(here.enrolments.map((row) => [row['client_key'], row['program'], row['program_start']])).toEqual([
          [1, 'Walking', '2025-01-06'],
          [1, 'Strength', '2025-03-01'],
          [2, 'Walking', null],
          [2, 'Evenings', '2025-02-01'],
          [3, 'Check-ups only', null],
        ]);
        expect(here.enrolments[0]).toMatchObject({ program_end: '2025-04-01', end_reason: 'declined' });
        expect(here.reviews.map(({ client, state, actualDay }) => [client, state, actualDay])).toEqual([
          ['a', 'seen', 56],
          ['b', 'seen', 56],
        ]);
        expect(here.changes.map(({ client, tier }) => [client, tier])).toContainEqual(['b', 4]);
        expect(new Set(here.changes.map(({ lsc }) => lsc?.toFixed(2))).size).toBeGreaterThan(1);
        const { differences, numbers } = compareAnswers(here, there);
        expect(differences).toEqual([]);
        expect(numbers).toBeGreaterThan(20);
      } finally {
        await postgres.close();
      }
    },
  );
});
