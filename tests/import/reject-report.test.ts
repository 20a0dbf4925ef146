import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { acceptedCsv } from '../../lib/import/accepted-csv';
import { COLUMN_BY_NAME } from '../../lib/import/columns';
import { NO_ANSWERS } from '../../lib/import/import-input';
import { inputsOf } from '../../lib/import/inputs-of';
import { rejectReport, reportRows } from '../../lib/import/reject-report';
import { csv, gathered, joined, planOfFiles, ROW, TODAY, useEngine, type TestFile } from './judged';

const engine = useEngine();

const visits = {
  name: 'visits.csv',
  content: csv([
    { ...ROW, Room: '1' },
    { ...ROW, client_id: 'C-2', r_ohm: '0', note: '=1+1', Room: "'2" },
    { ...ROW, client_id: 'C-3', height_cm: '1.72', visit_date: '2025-02-30', Room: '=3' },
    { ...ROW, client_id: 'C-4', height_cm: '17', Room: '4' },
    { ...ROW, client_id: 'C-5', sex: 'female?', Room: '5' },
  ]),
};

type Report = Record<string, string>[];

const reportOf = async (
  files: readonly TestFile[],
  options: Parameters<typeof planOfFiles>[2] = {},
): Promise<string> => {
  await planOfFiles(engine(), files, options);
  return joined(rejectReport(engine(), { prefix: 'test_' }));
};

const parsed = (text: string): Report =>
  Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data;

const repaired = (text: string): TestFile => {
  const rows = parsed(text).map((row) => ({
    ...row,
    ...(row['client_id'] === 'C-2' ? { r_ohm: '505' } : {}),
    ...(row['client_id'] === 'C-3' ? { visit_date: '2025-02-28', height_cm: '172' } : {}),
    ...(row['client_id'] === 'C-4' ? { height_cm: '170' } : {}),
    ...(row['client_id'] === 'C-5' ? { sex: 'F' } : {}),
  }));
  return { name: 'report.csv', content: Papa.unparse(rows) };
};

const judged = (files: readonly TestFile[]) => planOfFiles(engine(), files);

const accepted = async () =>
  (
    await engine()
      .query(`SELECT t.client_id, t.v_visit_date, t.v_r_ohm, t.v_height_cm, t.v_sex, t.note FROM test_typed AS t
JOIN test_status AS s ON s.file_no = t.file_no AND s.line_no = t.line_no AND s.part_no = t.part_no
WHERE s.status = 'accepted' ORDER BY t.client_id`)
  ).map((row) => Object.values(row));

const COMPLETE = [
  ['C-1', '2025-03-04', 500, null, null, null],
  ['C-2', '2025-03-04', 505, null, null, '=1+1'],
  ['C-3', '2025-02-28', 500, 172, null, null],
  ['C-4', '2025-03-04', 500, 170, null, null],
  ['C-5', '2025-03-04', 500, null, 'F', null],
];

describe('the report of rows not accepted or changed', () => {
  test('names file, line, column, value, reason and remedy of every such cell', async () => {
    await planOfFiles(engine(), [visits]);
    const rows = await gathered(reportRows(engine(), { prefix: 'test_' }));
    expect(
      rows.map(({ file, row, status, cellsSaid }) => [
        file,
        row.line,
        status,
        cellsSaid.map(({ column, value, code }) => [column, value, code]),
      ]),
    ).toEqual([
      ['visits.csv', 3, 'refused', [['r_ohm', '0', 'not_positive']]],
      [
        'visits.csv',
        4,
        'refused',
        [
          ['height_cm', '1.72', 'far_off'],
          ['visit_date', '2025-02-30', 'unreadable_date'],
        ],
      ],
      ['visits.csv', 5, 'held', [['height_cm', '17', 'far_off']]],
      ['visits.csv', 6, 'accepted', [['sex', 'female?', 'unknown_word']]],
    ]);
    for (const { reason, remedy } of rows.flatMap(({ cellsSaid }) => cellsSaid))
      expect([reason, remedy]).not.toContain('');
  });

  test('as CSV holds the cells as they stand, neutralised, and what to do', async () => {
    const [first, second] = parsed(await reportOf([visits]));
    expect(first).toMatchObject({
      client_id: 'C-2',
      r_ohm: '0',
      note: "'=1+1",
      Room: "'2",
      report_row: 'visits.csv, line 3',
      report_columns: 'r_ohm',
      report_reasons: 'r_ohm “0”: r_ohm must be above zero.',
      report_remedies: 'Correct r_ohm, or leave it empty.',
    });
    expect(first?.['corrects_row']).toMatch(/^row [0-9a-f]{12}:3:0$/);
    expect(second?.['Room']).toBe("'=3");
  });

  test('corrected and imported again completes the batch without doubles, once or twice, before or after an answer', async () => {
    const report = repaired(await reportOf([visits]));
    const suggested = [visits, report];
    const plan = await judged(suggested);
    expect([plan.rows, plan.accepted, plan.duplicates, plan.refused, plan.held]).toEqual([9, 5, 4, 0, 0]);
    expect(await accepted()).toEqual(COMPLETE);
    expect(new Set(plan.findings.map(({ kind, code }) => `${kind} ${code}`))).toEqual(new Set(['duplicate replaced']));
    const twice = await judged([...suggested, { ...report, name: 'again.csv' }]);
    expect([twice.accepted, twice.duplicates, await accepted()]).toEqual([5, 8, COMPLETE]);
    const answer = {
      client: 'C-4',
      visitDate: '2025-03-04',
      column: 'height_cm',
      value: '17',
      decision: 'keep' as const,
    };
    const answered = await planOfFiles(engine(), suggested, { answers: { ...NO_ANSWERS, farOff: [answer] } });
    expect([answered.accepted, await accepted()]).toEqual([5, COMPLETE]);
  });

  test('corrected is understood without a question, and what was written for people is kept out of it', async () => {
    const { name, content } = repaired(await reportOf([visits]));
    const { inputs, failedFiles } = await inputsOf([{ name, blob: new Blob([String(content)]) }], {
      importedOn: TODAY,
    });
    expect(failedFiles).toEqual([]);
    const { header = [], columns = [] } = inputs[0]?.mapping ?? {};
    const mapped = columns.map(({ to, from }) => [to, ...from.map((place) => header[place])]);
    expect(mapped.toSorted()).toEqual(
      header
        .filter((column) => COLUMN_BY_NAME.has(column))
        .map((column) => [column, column])
        .toSorted(),
    );
    expect(mapped.length).toBe(header.length - 5);
  });

  test('imported as it is leaves every row waiting once, not twice', async () => {
    const report = { name: 'report.csv', content: await reportOf([visits]) };
    const plan = await judged([visits, report]);
    expect([plan.rows, plan.accepted, plan.refused, plan.held, plan.duplicates]).toEqual([9, 2, 2, 1, 4]);
    const files = [visits, report];
    const again = parsed(await reportOf(files));
    expect(again.map((row) => row['corrects_row'])).toEqual(parsed(report.content).map((row) => row['corrects_row']));
    const second = await judged([...files, repaired(await reportOf(files))]);
    expect([second.accepted, await accepted()]).toEqual([5, COMPLETE]);
  });

  test('stands for its rows also where the first file comes again whole', async () => {
    const report = repaired(await reportOf([visits]));
    const rows = visits.content.split('\n');
    const longer = { name: 'later.csv', content: [...rows, rows[1]?.replace('C-1', 'C-9') ?? ''].join('\n') };
    const plan = await judged([visits, report, longer]);
    expect([plan.rows, plan.accepted, plan.refused, plan.held]).toEqual([15, 6, 0, 0]);
    expect((await accepted()).slice(0, 5)).toEqual(COMPLETE);
  });

  test('of rows that could not be cut into cells is filled in by hand', async () => {
    const broken = { name: 'visits.csv', content: `${csv([ROW])}\n"C-2","2025-03-04","70"\n` };
    const [row] = parsed(await reportOf([broken]));
    expect([row?.['client_id'], row?.['report_columns']]).toEqual(['', '']);
    expect(row?.['report_reasons']).toContain('another number of cells');
    const report = { name: 'report.csv', content: Papa.unparse([{ ...row, ...ROW, client_id: 'C-2' }]) };
    const plan = await judged([broken, report]);
    expect([plan.rows, plan.accepted, plan.refused, plan.duplicates]).toEqual([3, 2, 0, 1]);
  });
});

const spreadsheetIsInstalled = ((): boolean => {
  try {
    execFileSync('soffice', ['--version'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
})();

test.skipIf(!spreadsheetIsInstalled)(
  'a report that a spreadsheet opened and saved still stands for its rows',
  async () => {
    const folder = mkdtempSync(join(tmpdir(), 'driftline-report-'));
    try {
      const report = repaired(await reportOf([visits]));
      writeFileSync(join(folder, 'report.csv'), report.content);
      const convert = [
        '--headless',
        '--infilter=CSV:44,34,76,1',
        '--convert-to',
        'xlsx',
        '--outdir',
        folder,
        join(folder, 'report.csv'),
      ];
      execFileSync('soffice', [`-env:UserInstallation=file://${folder}/profile`, ...convert], {
        stdio: 'ignore',
        timeout: 60_000,
      });
      const saved = { name: 'report.xlsx', content: readFileSync(join(folder, 'report.xlsx')) };
      const plan = await judged([visits, saved]);
      expect([plan.accepted, plan.duplicates, await accepted()]).toEqual([5, 4, COMPLETE]);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  },
);

describe('the accepted rows as CSV', () => {
  test('hold canonical and unknown columns under their own names, corrections marked, and can be imported', async () => {
    const at = { source: 'visits.csv/', line: 2, part: 0 };
    await planOfFiles(engine(), [visits, { name: 'b.csv', content: csv([{ ...ROW, client_id: 'C-7', Floor: '2' }]) }], {
      corrections: [{ row: at, column: 'r_ohm', to: '510' }],
    });
    const text = await joined(acceptedCsv(engine(), { prefix: 'test_' }));
    expect(
      parsed(text).map((row) => [row['client_id'], row['r_ohm'], row['Room'], row['Floor'], row['corrected_columns']]),
    ).toEqual([
      ['C-1', '510', '1', '', 'r_ohm'],
      ['C-5', '500', '5', '', ''],
      ['C-7', '500', '', '2', ''],
    ]);
    const plan = await judged([{ name: 'out.csv', content: text }]);
    expect([plan.accepted, plan.files[0]?.unknownColumns]).toEqual([3, ['Room', 'Floor', 'corrected_columns']]);
  });
});
