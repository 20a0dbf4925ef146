import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { canonicalMapping } from '../../lib/import/canonical-mapping';
import { inputsOf } from '../../lib/import/inputs-of';
import { judge } from '../../lib/import/judge';
import type { Mapping } from '../../lib/import/mapping';
import { judgeFile, PLAIN, planOf, TODAY, useEngine } from './judged';

const spreadsheetIsInstalled = ((): boolean => {
  try {
    execFileSync('soffice', ['--version'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
})();
if (!spreadsheetIsInstalled)
  process.stderr.write('soffice is not installed: the tests with real spreadsheet files are skipped\n');

const engine = useEngine();

const text = (value: string): string =>
  `<table:table-cell office:value-type="string"><text:p>${value}</text:p></table:table-cell>`;
const number = (value: number): string =>
  `<table:table-cell table:style-name="number" office:value-type="float" office:value="${String(value)}"/>`;
const date = (value: string, style: string): string =>
  `<table:table-cell table:style-name="${style}" office:value-type="date" office:date-value="${value}"/>`;

/** A workbook of two rows after OpenDocument 1.2, its dates shown as year-month-day or as day/month/year. */
const workbook = (
  dateStyle: 'iso' | 'local',
  decimalStyle: 'point' | 'comma',
): string => `<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0" xmlns:number="urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0" office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
<office:automatic-styles>
<number:date-style style:name="d1"><number:year number:style="long"/><number:text>-</number:text><number:month number:style="long"/><number:text>-</number:text><number:day number:style="long"/></number:date-style>
<number:date-style style:name="d2"><number:day number:style="long"/><number:text>/</number:text><number:month number:style="long"/><number:text>/</number:text><number:year number:style="long"/></number:date-style>
<number:number-style style:name="n1" ${decimalStyle === 'comma' ? 'number:language="de" number:country="DE"' : 'number:language="en" number:country="GB"'}><number:number number:decimal-places="1" number:min-integer-digits="1"/></number:number-style>
<style:style style:name="iso" style:family="table-cell" style:data-style-name="d1"/>
<style:style style:name="local" style:family="table-cell" style:data-style-name="d2"/>
<style:style style:name="number" style:family="table-cell" style:data-style-name="n1"/>
</office:automatic-styles>
<office:body><office:spreadsheet><table:table table:name="visits">
<table:table-row>${['client_id', 'visit_date', 'weight_kg', 'r_ohm', 'note'].map(text).join('')}</table:table-row>
<table:table-row>${[text('C-1'), date('2025-03-04', dateStyle), number(70.5), number(512.4), text('Zoë, “two”')].join('')}</table:table-row>
<table:table-row>${[text('C-2'), date('2025-03-05', dateStyle), number(81), number(480), text('größer; a | b')].join('')}</table:table-row>
</table:table></office:spreadsheet></office:body></office:document>`;

const ROWS = [
  { v_visit_date: '2025-03-04', v_weight_kg: 70.5, v_r_ohm: 512.4, note: 'Zoë, “two”' },
  { v_visit_date: '2025-03-05', v_weight_kg: 81, v_r_ohm: 480, note: 'größer; a | b' },
];
const typedRows = () =>
  engine().query('SELECT v_visit_date, v_weight_kg, v_r_ohm, note FROM test_typed ORDER BY line_no');

// Tokens of the CSV filter: separator, text mark, character set (76 UTF-8, 1 Windows-1252, 65535 UTF-16), first line, formats, language, quote all, as shown.
const filter = (separator: number, characterSet: number): string =>
  `csv:Text - txt - csv (StarCalc):${String(separator)},34,${String(characterSet)},1,,0,false,true`;

describe.skipIf(!spreadsheetIsInstalled)('a file that a spreadsheet wrote', () => {
  let folder = '';
  const convert = (source: string, to: string): string => {
    execFileSync(
      'soffice',
      [`-env:UserInstallation=file://${folder}/profile`, '--headless', '--convert-to', to, '--outdir', folder, source],
      { stdio: 'ignore', timeout: 90_000 },
    );
    return source.replace(/\.[a-z]+$/, `.${to.split(':')[0] ?? ''}`);
  };
  const written = (name: string, content: string): string => {
    const path = join(folder, `${name}.fods`);
    writeFileSync(path, content);
    return path;
  };
  let book = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'driftline-sheet-'));
    book = convert(written('book', workbook('iso', 'point')), 'xlsx');
  });
  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });

  test('as a workbook gives the rows of its sheet, typed', async () => {
    const plan = await planOf(engine(), readFileSync(book));
    expect([plan.files[0]?.format, plan.rows, plan.accepted, plan.findings.length]).toEqual(['XLSX', 2, 2, 0]);
    expect(await typedRows()).toEqual(ROWS);
  });

  test('as an OpenDocument workbook is refused, with a remedy', async () => {
    const result = await judgeFile(engine(), readFileSync(convert(written('other', workbook('iso', 'point')), 'ods')));
    expect(result.ok).toBe(false);
    expect(!result.ok && result.error.remedy).toMatch(/Nothing was changed\.$/);
  });

  test.each([
    ['commas, UTF-8', 44, 76, ',', 'UTF-8'],
    ['semicolons, UTF-8', 59, 76, ';', 'UTF-8'],
    ['tabs, Windows-1252', 9, 1, '\t', 'Windows-1252'],
    ['semicolons, UTF-16', 59, 65535, ';', 'UTF-16LE'],
  ])('as CSV from a workbook is understood: %s', async (_, separator, characterSet, delimiter, encoding) => {
    const plan = await planOf(engine(), readFileSync(convert(book, filter(separator, characterSet))));
    expect([plan.files[0]?.delimiter, plan.files[0]?.encoding]).toEqual([delimiter, encoding]);
    expect([plan.rows, plan.accepted, plan.findings.length]).toEqual([2, 2, 0]);
    expect(await typedRows()).toEqual(ROWS);
  });

  test('whose dates became 04/03/2025 and decimals 512,4 asks, guesses nothing, and is read once it is told', async () => {
    const path = convert(written('local', workbook('local', 'comma')), filter(59, 76));
    expect(readFileSync(path, 'utf8')).toContain('C-1;04/03/2025;70,5;512,4');
    const file = { name: 'visits.csv', blob: new Blob([readFileSync(path)]) };
    const undecided = await inputsOf([file], { importedOn: TODAY });
    expect(undecided.inputs).toEqual([]);
    expect(undecided.failedFiles.map(({ error }) => [error.code, error.message])).toEqual([
      ['mapping_needed', expect.stringContaining('“visit_date”')],
    ]);
    const unread = await planOf(engine(), readFileSync(path));
    expect(
      unread.findings.filter(({ line }) => line === 2).map(({ column, value, code }) => [column, value, code]),
    ).toEqual([
      ['visit_date', '04/03/2025', 'unreadable_date'],
      ['r_ohm', '512,4', 'unreadable_number'],
      ['weight_kg', '70,5', 'unreadable_number'],
    ]);
    for (const { remedy } of unread.findings) expect(remedy).toContain('Say in the mapping of this column');
    const told = canonicalMapping(['client_id', 'visit_date', 'weight_kg', 'r_ohm', 'note'], 1);
    const mapping: Mapping = {
      ...told,
      columns: told.columns.map((column) =>
        column.to === 'visit_date' ? { ...column, dateOrder: 'dmy' } : { ...column, decimal: ',' },
      ),
    };
    const { inputs } = await inputsOf([file], { importedOn: TODAY, mappings: [mapping] });
    const plan = await judge(engine(), inputs, PLAIN);
    expect(plan.ok && [plan.value.accepted, plan.value.findings.length]).toEqual([2, 0]);
    expect(await typedRows()).toEqual(ROWS);
  });
});
