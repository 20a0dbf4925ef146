import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { zipSync } from 'fflate';
import { afterAll, expect, test } from 'vitest';
import type { Mapping } from '../../lib/import/mapping';
import { runCohort } from './run-cohort';

const folder = mkdtempSync(join(tmpdir(), 'driftline-mapping-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});
const put = (name: string, content: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};

const VISITS = 'Kennung;Tag;Gewicht;R;Xc\nA;04/03/2025;154,3;500,5;50\nA;05/06/2025;150,0;510,5;51\n';
const visits = put('visits.csv', VISITS);
const header = ['Kennung', 'Tag', 'Gewicht', 'R', 'Xc'];
const mapping = (more: Partial<Mapping>): Mapping => ({
  version: 1,
  role: 'visits',
  header,
  headerLine: 1,
  columns: [
    { to: 'client_id', from: [0] },
    { to: 'visit_date', from: [1], dateOrder: 'dmy' },
    { to: 'weight_kg', from: [2], unit: 'lb', decimal: ',' },
    { to: 'r_ohm', from: [3], decimal: ',' },
    { to: 'xc_ohm', from: [4], decimal: ',' },
  ],
  constants: [{ to: 'device_id', value: 'Unit 1' }],
  ...more,
});
const decided = put('mapping.json', JSON.stringify(mapping({})));
const enrolled = put(
  'enrolled.json',
  JSON.stringify(
    mapping({
      role: 'enrolment',
      header: ['Client', 'Course', 'From'],
      columns: [
        { to: 'client_id', from: [0] },
        { to: 'program', from: [1] },
        { to: 'program_start', from: [2] },
      ],
      constants: [],
    }),
  ),
);

interface Document {
  readonly import: Readonly<Record<string, unknown>> & {
    readonly refused: readonly { code: string; message: string }[];
  };
  readonly changes: readonly { client: string; program: string; measure: string; from: string; value_from: number }[];
}

test('a file that needs a decision is refused with the remedy to give a mapping', async () => {
  const run = await runCohort(visits);
  expect(run.code).toBe(1);
  const found = JSON.parse(run.out) as Document;
  expect(found.import.refused.map(({ code }) => code)).toEqual([
    expect.stringMatching(/^(mapping_needed|wrong_columns)$/),
  ]);
  expect(found.import.refused[0]?.message).toContain('--mapping FILE.json');
});

test('with its mapping it is read, out of a zip too, and an enrolment table by its own', async () => {
  const zip = put('visits.zip', zipSync({ 'visits.csv': new TextEncoder().encode(VISITS) }));
  const programs = put('programs.csv', 'Client,Course,From\nA,Walking,2025-03-01\n');
  const words = ['--mapping', decided, '--mapping', enrolled, '--measure', 'weight', '--today', '2025-12-01'];
  const run = await runCohort(zip, programs, ...words);
  expect([run.code, run.said]).toEqual([0, '3 rows: 3 accepted, 0 with a question, 0 duplicates, 0 not accepted\n']);
  const found = JSON.parse(run.out) as Document;
  expect(found.import).toMatchObject({ rows: 3, accepted: 3, enrolments: 1 });
  const first = found.changes.find(({ measure }) => measure === 'weight');
  expect(first).toMatchObject({ client: 'A', program: 'Walking', from: '2025-03-04' });
  // 1 lb = 0.45359237 kg exactly (NIST Special Publication 811, appendix B.8).
  expect(first?.value_from).toBeCloseTo(154.3 * 0.45359237, 6);
});

test('a mapping that cannot be used is a wrong call', async () => {
  const run = await runCohort(visits, '--mapping', put('broken.json', '{"columns": 3}'));
  expect([run.code, run.out]).toEqual([2, '']);
  expect(run.said).toContain('broken.json');
});
