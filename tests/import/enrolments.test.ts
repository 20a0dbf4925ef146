import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { settingsSchema } from '../../lib/cohort/settings';
import type { IsoDate } from '../../lib/core/iso-date';
import { sha256 } from '../../lib/core/sha256';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { canonicalMapping } from '../../lib/import/canonical-mapping';
import type { ImportInput } from '../../lib/import/import-input';
import { openTables } from '../../lib/import/open-tables';
import { openFiles } from '../../lib/workspace/open-files';
import { exportBytes, filterFor, reading, without, type Cells } from '../cohort/small-clinic';

let engine: Engine;
beforeAll(async () => {
  engine = await openNodeEngine();
});
afterAll(() => engine.close());

const TODAY = '2030-01-01' as IsoDate;

const input = async (name: string, rows: readonly Cells[], role: 'visits' | 'enrolment'): Promise<ImportInput> => {
  const bytes = new Uint8Array(exportBytes(rows));
  const opened = await openTables(name, new Blob([bytes]));
  const table = opened.ok ? opened.value[0] : undefined;
  if (table === undefined) throw new Error(`${name} cannot be opened`);
  const header = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  return {
    source: `${name}/`,
    name,
    sha256: await sha256(bytes),
    bytes: bytes.length,
    table,
    mapping: { ...canonicalMapping(header, 1), role },
    isNew: true,
    importedOn: TODAY,
  };
};

const opened = async (visits: readonly Cells[], enrolments: readonly Cells[], settings: unknown = {}) => {
  const inputs = [await input('visits.csv', visits, 'visits'), await input('enrolments.csv', enrolments, 'enrolment')];
  const result = await openFiles(engine, inputs, settingsSchema.parse(settings), { today: TODAY });
  if (!result.ok || result.value.cohort === undefined) throw new Error('the clinic does not open');
  return { plan: result.value.plan, cohort: result.value.cohort };
};

const PERSON = ['birth_date', 'sex', 'program', 'program_start'];
const bare = (client: string, date: string, cells: Cells = {}): Cells => ({
  ...without(reading(client, date), ...PERSON),
  ...cells,
});

const VISITS = [
  bare('a', '2025-01-06'),
  bare('a', '2025-06-06'),
  bare('b', '2025-01-06', { birth_date: '1950-01-01', sex: 'F' }),
  bare('b', '2025-06-06', { birth_date: '1950-01-01', sex: 'F' }),
  reading('c', '2025-01-06', { program_start: '2025-01-05' }),
  bare('d', '2025-01-06'),
];
const ENROLMENTS: readonly Cells[] = [
  {
    client_id: 'a',
    program: 'Walking',
    program_start: '2025-01-06',
    program_end: '2025-12-01',
    end_reason: 'moved',
    sex: 'M',
    birth_date: '1960-05-05',
    family_name: 'Orla',
    given_name: 'Fenn',
  },
  { client_id: 'A', program: 'Strength', program_start: '2025-06-01', weight_change_intended: 'n' },
  { client_id: 'b', program: 'Walking', program_start: '2025-01-06', sex: 'M', birth_date: '1951-01-01' },
  { client_id: 'c', program: 'Walking', program_start: '2025-01-05', program_end: '2025-03-01' },
  { client_id: 'nobody', program: 'Walking', program_start: '2025-01-06' },
  { client_id: '', program: 'Walking' },
  { client_id: 'd', program: '' },
  { client_id: 'd', program: 'Walking', program_start: '2025-13-01' },
  { client_id: 'd', program: 'Walking', program_start: '2025-03-01', program_end: '2025-02-01' },
  { client_id: 'c', program: 'Walking', program_start: '2025-01-05', program_end: '2025-03-01' },
];
const SETTINGS = { answers: [{ kind: 'same-client', ids: ['A'], client: 'a' }] };

describe('an enrolment table', () => {
  test('is judged for its own columns, no visit is asked of it', async () => {
    const { plan } = await opened(VISITS, ENROLMENTS, SETTINGS);
    expect(plan).toMatchObject({
      rows: 16,
      accepted: 11,
      enrolments: 5,
      refused: 4,
      duplicates: 1,
      held: 0,
      clients: 4,
    });
    const said = plan.findings.map(({ file, line, code }) => `${file} ${String(line)} ${code}`);
    expect(said).toEqual([
      'enrolments.csv 7 no_client',
      'enrolments.csv 8 no_program',
      'enrolments.csv 9 unreadable_date',
      'enrolments.csv 10 end_before_start',
      'enrolments.csv 11 duplicate',
    ]);
    expect(plan.files.map(({ name, missingConditions }) => [name, missingConditions.length])).toEqual([
      ['visits.csv', 0],
      ['enrolments.csv', 0],
    ]);
    expect([plan.firstVisit, plan.lastVisit]).toEqual(['2025-01-06', '2025-06-06']);
  });

  test('gives programs, several at once, to the client under one id', async () => {
    await opened(VISITS, ENROLMENTS, SETTINGS);
    const enrolled = await engine.query(`SELECT c.client_id, e.program, e.program_start, e.program_end, e.end_reason
FROM enrolments AS e JOIN clients AS c ON c.client_key = e.client_key ORDER BY 1, 2`);
    expect(enrolled.map((row) => Object.values(row))).toEqual([
      ['a', 'Strength', '2025-06-01', null, null],
      ['a', 'Walking', '2025-01-06', '2025-12-01', 'moved'],
      ['b', 'Walking', '2025-01-06', null, null],
      ['c', 'Walking', '2025-01-05', '2025-03-01', null],
      ['d', 'Check-ups only', null, null, null],
    ]);
  });

  test('fills what the visits leave empty about a person, and asks where the two differ', async () => {
    const { plan, cohort } = await opened(VISITS, ENROLMENTS, SETTINGS);
    const people = await engine.query(
      'SELECT client_id, sex, birth_ref, family_name, given_name FROM clients ORDER BY 1',
    );
    expect(people.map((row) => Object.values(row))).toEqual([
      ['a', 'M', '1960-05-05', 'Orla', 'Fenn'],
      ['b', 'F', '1950-01-01', null, null],
      ['c', 'M', '1960-05-05', null, null],
      ['d', null, null, null, null],
    ]);
    expect(plan.people.map(({ kind, ...rest }) => [kind, 'client' in rest ? rest.client : ''])).toEqual([
      ['birth-dates', 'b'],
      ['sexes', 'b'],
    ]);
    const changes = await cohort.changes(filterFor('ffm'), 'baseline-latest');
    expect(changes.map(({ client, program }) => [client, program])).toContainEqual(['a', 'Walking']);
  });

  test('alone holds no visit, and opens nothing', async () => {
    const result = await openFiles(engine, [await input('e.csv', ENROLMENTS, 'enrolment')], settingsSchema.parse({}), {
      today: TODAY,
    });
    expect(result.ok && [result.value.plan.accepted, result.value.plan.enrolments, result.value.cohort]).toEqual([
      5,
      5,
      undefined,
    ]);
  });
});
