import { strToU8, zipSync } from 'fflate';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { acceptedCsv } from '../../lib/import/accepted-csv';
import { rejectReport } from '../../lib/import/reject-report';
import { csv, joined, planOfFiles, ROW, useEngine, type TestFile } from './judged';

const engine = useEngine();

type Cells = Record<string, string>;

const reportOf = async (files: readonly TestFile[], role: 'visits' | 'enrolment' = 'visits'): Promise<Cells[]> => {
  await planOfFiles(engine(), files);
  const text = await joined(rejectReport(engine(), { prefix: 'test_', role }));
  return Papa.parse<Cells>(text, { header: true, skipEmptyLines: true }).data;
};

const repaired = (rows: readonly Cells[], change: (row: Cells) => Cells): TestFile => ({
  name: 'report.csv',
  content: Papa.unparse(rows.map((row) => ({ ...row, ...change(row) }))),
});

const accepted = async (...columns: readonly string[]): Promise<readonly string[]> =>
  (
    await engine().query(`SELECT CONCAT_WS(' ', ${columns.map((name) => `t.v_${name}`).join(', ')}) AS cells
FROM test_typed AS t JOIN test_status AS s ON s.file_no = t.file_no AND s.line_no = t.line_no AND s.part_no = t.part_no
WHERE s.status = 'accepted' ORDER BY cells`)
  ).map((row) => String(row['cells']));

const VISITS = { name: 'visits.csv', content: csv([ROW, { ...ROW, client_id: 'C-2', visit_date: '2025-03-05' }]) };
const ENROLMENTS = {
  name: 'enrolments.csv',
  content: csv([
    { client_id: 'C-1', program: 'Walking', program_start: '2025-01-06', Ward: '3' },
    { client_id: 'C-2', program: '', program_start: '2025-01-07', Ward: '4' },
    { client_id: 'C-2', program: 'Strength', program_start: '2025-13-01', Ward: '' },
  ]).replace('client_id,program', 'Client,Program'),
};

describe('refused rows of enrolments', () => {
  test('make a report of their own, that is known as enrolments and completes them without doubles', async () => {
    const rows = await reportOf([VISITS, ENROLMENTS], 'enrolment');
    expect(rows.map(({ program_start: start, Ward, report_columns: columns }) => [start, Ward, columns])).toEqual([
      ['2025-01-07', '4', 'program'],
      ['2025-13-01', '', 'program_start'],
    ]);
    expect(Object.keys(rows[0] ?? {})).not.toContain('visit_date');
    const report = repaired(rows, (row) =>
      row['Ward'] === '4' ? { program: 'Yoga' } : { program_start: '2025-02-01' },
    );
    const plan = await planOfFiles(engine(), [VISITS, ENROLMENTS, report]);
    expect(plan.files[2]?.mapping.role).toBe('enrolment');
    expect([plan.accepted, plan.enrolments, plan.refused, plan.duplicates]).toEqual([5, 3, 0, 2]);
    expect(await accepted('program', 'program_start')).toEqual([
      '',
      '',
      'Strength 2025-02-01',
      'Walking 2025-01-06',
      'Yoga 2025-01-07',
    ]);
    const again = await planOfFiles(engine(), [VISITS, ENROLMENTS, report, { ...report, name: 'again.csv' }]);
    expect([again.accepted, again.refused]).toEqual([5, 0]);
  });

  test('do not stand in the report of visits', async () => {
    expect(await reportOf([VISITS, ENROLMENTS])).toEqual([]);
  });

  test('accepted and written as CSV come back as enrolments', async () => {
    await planOfFiles(engine(), [VISITS, ENROLMENTS]);
    const content = await joined(acceptedCsv(engine(), { prefix: 'test_', role: 'enrolment' }));
    const plan = await planOfFiles(engine(), [VISITS, { name: 'out.csv', content }]);
    expect([plan.files[1]?.mapping.role, plan.enrolments]).toEqual(['enrolment', 1]);
  });
});

const cellXml = (cell: string | number, reference: string): string =>
  typeof cell === 'number'
    ? `<c r="${reference}"><v>${String(cell)}</v></c>`
    : `<c r="${reference}" t="inlineStr"><is><t>${cell}</t></is></c>`;

/** A workbook of one sheet. */
const workbook = (rows: readonly (readonly (string | number)[])[]): Uint8Array =>
  zipSync({
    'xl/workbook.xml': strToU8(
      '<workbook xmlns:r="r"><sheets><sheet name="S" sheetId="1" r:id="a"/></sheets></workbook>',
    ),
    'xl/_rels/workbook.xml.rels': strToU8(
      '<Relationships><Relationship Id="a" Type="x/worksheet" Target="sheet.xml"/></Relationships>',
    ),
    'xl/sheet.xml': strToU8(
      `<worksheet><sheetData>${rows
        .map(
          (cells, line) =>
            `<row r="${String(line + 1)}">${cells
              .map((cell, place) => cellXml(cell, `${String.fromCharCode(65 + place)}${String(line + 1)}`))
              .join('')}</row>`,
        )
        .join('')}</sheetData></worksheet>`,
    ),
  });

describe('a corrected report', () => {
  test('completes a workbook of visits with replicate columns, weights in pounds', async () => {
    const book = workbook([
      ['Patient ID', 'Visit date', 'Weight (lb)', 'R1', 'R2', 'Xc1', 'Xc2'],
      ['P-1', '2025-03-04', 150, 500, 501, 50, 51],
      ['P-2', '2025-03-05', 160, 510, 0, 52, 53],
      ['P-3', '2025-03-32', 170, 520, 521, 54, 55],
    ]);
    const file = { name: 'visits.xlsx', content: book };
    const rows = await reportOf([file]);
    expect(
      rows.map(({ client_id: id, reading, corrects_row: corrects }) => [id, reading, corrects?.split(':')[2]]),
    ).toEqual([
      ['P-2', '2', '2'],
      ['P-3', '1', '1'],
      ['P-3', '2', '2'],
    ]);
    const report = repaired(rows, ({ client_id: id = '' }) =>
      id === 'P-2' ? { r_ohm: '511' } : { visit_date: '2025-03-31' },
    );
    const plan = await planOfFiles(engine(), [file, report]);
    expect([plan.accepted, plan.refused, plan.held, plan.duplicates]).toEqual([6, 0, 0, 3]);
    expect((await accepted('client_id', 'weight_kg', 'r_ohm')).slice(2)).toEqual([
      'P-2 72.5747792 510.0',
      'P-2 72.5747792 511.0',
      'P-3 77.1107029 520.0',
      'P-3 77.1107029 521.0',
    ]);
  });

  test('completes a file with decimal commas, also where it was saved with them', async () => {
    const file = {
      name: 'besuche.csv',
      content:
        'Patienten-Nr.;Messdatum;Gewicht (kg);R;Xc\nP-1;14.03.2025;70,5;500,5;50,1\nP-2;31.02.2025;71,5;501,5;51,1\nP-3;13.03.2025;72,5;x;52,1',
    };
    const rows = await reportOf([file]);
    const report = repaired(rows, ({ client_id: id = '' }) =>
      id === 'P-2' ? { visit_date: '2025-02-28' } : { r_ohm: '502.5' },
    );
    const german = Papa.unparse(
      Papa.parse<string[]>(String(report.content)).data.map((cells) =>
        cells.map((cell) => (/^\d+\.\d+$/.test(cell) ? cell.replace('.', ',') : cell)),
      ),
      { delimiter: ';' },
    ).replace('client_id', 'Client ID');
    expect(german).toContain('502,5');
    for (const content of [report.content, german]) {
      const plan = await planOfFiles(engine(), [file, { name: 'report.csv', content }]);
      expect([plan.accepted, plan.refused, plan.duplicates]).toEqual([3, 0, 2]);
      expect(await accepted('client_id', 'weight_kg', 'r_ohm')).toEqual([
        'P-1 70.5 500.5',
        'P-2 71.5 501.5',
        'P-3 72.5 502.5',
      ]);
    }
  });
});
