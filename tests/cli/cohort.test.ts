import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { parquetWriteBuffer } from 'hyparquet-writer';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { DEFAULT_CATALOGUE } from '../../lib/measures/catalogue';
import { errorStudy, exportBytes, reading, type Cells } from '../cohort/small-clinic';
import { makeWorkbook } from '../formats/make-workbook';
import { makeXport, makeXportMember } from '../formats/make-xport';
import { documentSchema } from './document-schema';
import { runCohort, runCohortSlowly, startCohort, type CohortRun } from './run-cohort';

const read = (run: CohortRun) => documentSchema.parse(JSON.parse(run.out));

const folder = mkdtempSync(join(tmpdir(), 'driftline-test-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});
const put = (name: string, bytes: Uint8Array | string): string => {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  return path;
};

const jump = (person: number, visit: number): Cells => ({
  weight_kg: visit === 0 ? '80.0' : person % 2 === 0 ? '80.8' : '79.2',
});
const STUDY = put('study.csv', exportBytes(errorStudy(30, jump)));
const VISITS = put(
  'visits.csv',
  exportBytes([
    reading('a', '2025-01-06'),
    reading('a', '2025-06-06', { weight_kg: '70.0' }),
    reading('b', '2025-01-06'),
    reading('b', '2025-06-06', { fasted_h: 2 }),
    reading('b', '2025-07-06', { weight_kg: '700' }),
    reading('b', '2025-07-06', { r_ohm: '0' }),
    reading('b', '2025-01-06'),
    reading('c', '2025-01-06'),
    reading('c', '2025-06-07', { rested: 'n' }),
  ]),
);

describe('the whole demo clinic', () => {
  const DEMO = ['sample-data/visits.csv', '--settings', 'sample-data/settings.json', '--today', '2026-01-02'] as const;
  let run: CohortRun;
  let found: ReturnType<typeof read>;
  beforeAll(async () => {
    run = await runCohortSlowly(...DEMO);
    found = read(run);
  });

  test('ends with 0, one document of exactly the promised fields and a count on the other stream', () => {
    expect(run.code).toBe(0);
    expect(run.said).toBe('4279 rows: 4267 accepted, 3 with a question, 3 duplicates, 6 not accepted\n');
    expect(found.import.rows).toBe(
      found.import.accepted + found.import.held + found.import.duplicates + found.import.refused_rows,
    );
    expect([found.as_of, found.level, found.setting]).toEqual(['2026-01-02', 95, 'strict']);
    expect([found.import.refused.length, found.import.questions.length, found.import.warnings.length]).toEqual([
      6, 3, 4,
    ]);
    expect(found.methods.find(({ measure }) => measure === 'ffm')).toMatchObject({
      equation: 'ffm-kyle-2001',
      equation_version: 1,
      verification: 'read-in-abstract',
    });
    for (const { visits, inside } of found.equation_fits) expect(inside).toBeLessThanOrEqual(visits);
    expect(found.equation_fits.map(({ quantity }) => quantity)).toEqual(['ffm', 'smm']);
    expect(found.precision.map((row) => row.measure)).toHaveLength(DEFAULT_CATALOGUE.measures.length);
    expect(found.changes.length).toBeGreaterThan(40_000);
    for (const row of found.programs) {
      const sum = row.up + row.down + row.within + row.cannot_compare + row.no_threshold + row.held + row.stopped;
      expect(sum).toBe(row.n_pairs);
    }
  });

  test('gives every change its threshold from the components it prints', () => {
    const bySize = new Map(found.precision.map((row) => [row.measure, row]));
    for (const row of found.changes) {
      const error = bySize.get(row.measure);
      if (error?.s_b === null || error?.s_b === undefined || error.s_w === null || error.factor === null) {
        expect(row.lsc).toBeNull();
        continue;
      }
      const variance = 2 * error.s_b ** 2 + error.s_w ** 2 * (1 / row.k_from + 1 / row.k_to);
      expect(Math.abs((row.lsc ?? NaN) - error.factor * Math.sqrt(variance))).toBeLessThanOrEqual(
        1e-9 * (row.lsc ?? 0),
      );
    }
  });

  test('holds no threshold of one component: for OM-0044 none equals z·√2·PE/√2 to three decimals', () => {
    const ffm = found.precision.find((row) => row.measure === 'ffm');
    const wrong = ((ffm?.factor ?? 0) * Math.SQRT2 * (ffm?.pe ?? 0)) / Math.SQRT2;
    expect(wrong).toBeCloseTo(1.2352, 3);
    const own = found.changes.filter((row) => row.client === 'OM-0044' && row.measure === 'ffm');
    expect(own.map((row) => [row.k_from, row.k_to, row.result])).toEqual([
      [2, 2, 'down'],
      [2, 2, 'down'],
    ]);
    const thresholds = found.changes.filter((row) => row.measure === 'ffm').map((row) => (row.lsc ?? NaN).toFixed(3));
    expect(new Set(thresholds).size).toBeGreaterThan(2);
    expect(thresholds).not.toContain(wrong.toFixed(3));
  });

  test('is whole for a reader that is slow', () => {
    expect(run.out.length).toBeGreaterThan(10_000_000);
    expect(run.out.endsWith('}\n')).toBe(true);
  });

  test('gives the same bytes at a second run', async () => {
    const words = [...DEMO, '--measure', 'ffm', '--measure', 'phase_angle'];
    const [first, second] = await Promise.all([runCohort(...words), runCohort(...words)]);
    expect(first.out.length).toBeGreaterThan(1_000_000);
    expect(first.out === second.out).toBe(true);
  });
});

test('a reader that stops listening ends the run quietly', async () => {
  const child = startCohort('sample-data/visits.csv', '--today', '2026-01-02');
  const said: Buffer[] = [];
  child.stderr.on('data', (piece: Buffer) => said.push(piece));
  child.stdout.once('data', () => child.stdout.destroy());
  const code = await new Promise((resolve) => child.on('close', resolve));
  expect(code).toBe(0);
  expect(Buffer.concat(said).toString('utf8')).not.toMatch(/EPIPE|at .*\.ts/);
});

describe('options', () => {
  test('--measure, --level and --comparable choose; several files are one clinic', async () => {
    const run = await runCohort(VISITS, STUDY, '--measure', 'weight', '--level', '90', '--comparable', 'caution');
    expect(run.code).toBe(0);
    const found = read(run);
    expect([found.level, found.setting, found.as_of]).toEqual([90, 'caution', '2025-06-07']);
    expect(found.precision).toMatchObject([{ measure: 'weight', tier: 1, df_m: 30 }]);
    expect(found.precision[0]?.factor).toBeCloseTo(1.6448536269514722, 12);
    expect(new Set(found.changes.map((row) => row.measure))).toEqual(new Set(['weight']));
    const latest = found.changes.filter((row) => row.purpose === 'baseline-latest');
    expect(latest.map((row) => [row.client, row.comparable, row.result])).toEqual([
      ['a', 'comparable', 'down'],
      ['b', 'no', 'cannot-compare'],
      ['c', 'caution', 'within'],
    ]);
    expect(found.import).toMatchObject({ rows: 69, accepted: 66, held: 1, duplicates: 1, refused_rows: 1 });
    expect(found.import.questions).toMatchObject([{ file: 'visits.csv', line: 6, column: 'weight_kg', value: '700' }]);
    expect(found.import.refused).toMatchObject([{ file: 'visits.csv', line: 7, column: 'r_ohm', value: '0' }]);
  });

  test('--questions accept takes rows with a question, --today refuses later visits, --as-of looks no further', async () => {
    const run = await runCohort(VISITS, '--questions', 'accept', '--today', '2025-06-06', '--as-of', '2025-03-01');
    const found = read(run);
    expect(run.code).toBe(0);
    // After today lie two rows of July and one of 7 June; the row of July with a question is one of them.
    expect(found.import).toMatchObject({
      today: '2025-06-06',
      rows: 9,
      held: 0,
      accepted: 5,
      duplicates: 1,
      refused_rows: 3,
    });
    expect([found.as_of, found.changes]).toEqual(['2025-03-01', []]);
    const accepted = read(await runCohort(VISITS, '--questions', 'accept', '--measure', 'weight'));
    expect(accepted.import).toMatchObject({ held: 0, accepted: 7, refused_rows: 1 });
    expect(accepted.changes.some((row) => row.client === 'b' && row.value_to === 700)).toBe(true);
  });

  test('settings give level and setting where the call does not', async () => {
    const settings = put('settings.json', JSON.stringify({ level: 80, comparable: 'all' }));
    const found = read(await runCohort(VISITS, '--settings', settings, '--measure', 'weight'));
    expect([found.level, found.setting]).toEqual([80, 'all']);
    const over = read(
      await runCohort(VISITS, '--settings', settings, '--measure', 'weight', '--level', '95', '--comparable', 'strict'),
    );
    expect([over.level, over.setting]).toEqual([95, 'strict']);
  });
});

describe('what may be compared', () => {
  test('the rules in force, what each setting makes of the pairs, and how complete the record is', async () => {
    const rules = put('rules.json', JSON.stringify({ rules: [{ id: 'fasting', grade: 'caution', limit: 3 }] }));
    const run = await runCohort(STUDY, VISITS, '--settings', rules, '--measure', 'weight', '--today', '2026-01-02');
    const { comparability, changes } = read(run);
    expect(comparability?.opening_setting).toBe('strict');
    expect(comparability?.rules.find(({ rule }) => rule === 'fasting')).toEqual({
      rule: 'fasting',
      grade: 'caution',
      limit: 3,
      default_grade: 'no',
      default_limit: 8,
      only_exported: false,
      by_procedure: true,
    });
    const fromBaseline = (comparability?.settings ?? []).filter(({ purpose }) => purpose === 'baseline-latest');
    expect(fromBaseline.map(({ setting, n_comparable, down }) => [setting, n_comparable, down])).toEqual([
      ['strict', 1, 1],
      ['caution', 3, 1],
      ['all', 3, 1],
    ]);
    expect(changes.filter(({ purpose }) => purpose === 'baseline-latest')).toHaveLength(3);
    expect(comparability?.coverage.site?.find(({ rule }) => rule === 'fasting')).toMatchObject({
      group: 'North',
      readings: 66,
      met: 65,
      not_met: 1,
    });
  });
});

test('a folder is walked like one that is given to Import, and every format is read', async () => {
  const inside = (name: string, bytes: Uint8Array | string): void => {
    mkdirSync(dirname(join(folder, 'exports', name)), { recursive: true });
    put(`exports/${name}`, bytes);
  };
  const row = (cells: readonly string[]): string =>
    `<row>${cells.map((cell) => `<c t="inlineStr"><is><t>${cell}</t></is></c>`).join('')}</row>`;
  const visit = { visit_date: '2025-01-06', height_cm: '176.0', weight_kg: '80.0', r_ohm: '500.0', xc_ohm: '50.0' };
  const cells = Object.entries(visit);
  inside(
    'b/visits.xlsx',
    makeWorkbook({
      sheets: { visits: `${row(['client_id', ...Object.keys(visit)])}${row(['x', ...Object.values(visit)])}` },
    }),
  );
  inside(
    'b/visits.parquet',
    new Uint8Array(
      parquetWriteBuffer({
        columnData: [['client_id', 'p'], ...cells].map(([name = '', cell = '']) => ({
          name,
          data: [cell],
          type: 'STRING' as const,
        })),
      }),
    ),
  );
  const weight = {
    resourceType: 'Observation',
    status: 'final',
    code: { coding: [{ system: 'http://loinc.org', code: '29463-7' }] },
    subject: { reference: 'Patient/f' },
    effectiveDateTime: visit.visit_date,
    valueQuantity: { value: 80, code: 'kg', system: 'http://unitsofmeasure.org' },
  };
  inside('c.ndjson', JSON.stringify(weight));
  const names = ['ID', 'DATE', 'HT_CM', 'WT_KG', 'R50', 'XC50'].map((name) => ({ name, text: 10 }));
  inside('d.xpt', makeXport(makeXportMember('BIX', names, [['s', ...Object.values(visit)]])));
  inside('a.csv', exportBytes([reading('c', visit.visit_date)]));
  inside('.hidden.csv', exportBytes([reading('h', visit.visit_date)]));
  inside('.kept/h.csv', exportBytes([reading('h', visit.visit_date)]));
  inside('b/Thumbs.db', 'x');
  const run = await runCohort(join(folder, 'exports'), '--measure', 'weight', '--today', '2025-12-31');
  expect([run.code, run.said]).toEqual([0, '5 rows: 5 accepted, 0 with a question, 0 duplicates, 0 not accepted\n']);
  expect(read(run).import.files.map(({ file, format }) => [file, format])).toEqual([
    ['exports/a.csv', 'CSV'],
    ['exports/b/visits.parquet', 'Parquet'],
    ['exports/b/visits.xlsx', 'XLSX'],
    ['exports/c.ndjson', 'FHIR'],
    ['exports/d.xpt', 'XPORT'],
  ]);
});

describe('what cannot be used', () => {
  test('one unreadable file among several is named, the others are used', async () => {
    const broken = put('broken.csv', 'name;colour\nx;blue\n');
    const run = await runCohort(broken, VISITS, '--measure', 'weight');
    expect(run.code).toBe(0);
    expect(run.said).toContain('broken.csv');
    const found = read(run);
    expect(found.import.refused[0]).toMatchObject({ file: 'broken.csv', line: 0, code: 'wrong_columns' });
    expect(found.changes.length).toBeGreaterThan(0);
  });

  test('several unreadable files end with 1, each with its own reason', async () => {
    const run = await runCohort(put('one.csv', 'name\nx\n'), put('two.csv', ''));
    expect(run.code).toBe(1);
    const found = read(run);
    expect(found.import.refused.map((row) => [row.file, row.code])).toEqual([
      ['one.csv', 'wrong_columns'],
      ['two.csv', 'empty'],
    ]);
    expect(run.said).toContain('no visit could be used');
    expect([found.as_of, found.precision, found.changes, found.programs]).toEqual([null, [], [], []]);
  });

  test('rows that are all refused end with 1', async () => {
    const run = await runCohort(put('refused.csv', exportBytes([reading('a', '2025-01-06', { r_ohm: '0' })])));
    expect([run.code, read(run).import.refused_rows]).toEqual([1, 1]);
  });

  test('a wrong call ends with 2, prints nothing and says what is wrong and how to call', async () => {
    const invalid = put('invalid.json', JSON.stringify({ programs: [{ name: 'Walking', colour: 'red' }] }));
    const calls = [
      [[], 'no file was named'],
      [[VISITS, '--measure', 'lean'], 'there is no value “lean”'],
      [[join(folder, 'missing.csv')], 'missing.csv cannot be read'],
      [[VISITS, '--settings', join(folder, 'missing.json')], 'missing.json cannot be read'],
      [[VISITS, '--settings', invalid], 'programs.0'],
      [[VISITS, '--settings', put('text.json', '{')], 'not JSON'],
    ] as const;
    const runs = await Promise.all(calls.slice(0, 3).map(([words]) => runCohort(...words)));
    runs.push(...(await Promise.all(calls.slice(3).map(([words]) => runCohort(...words)))));
    for (const [index, [, message]] of calls.entries()) {
      expect([runs[index]?.code, runs[index]?.out]).toEqual([2, '']);
      expect(runs[index]?.said).toContain(message);
      expect(runs[index]?.said).toContain('Usage: npm run --silent cohort');
    }
  });
});
