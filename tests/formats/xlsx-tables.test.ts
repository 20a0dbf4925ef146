import readExcelFile from 'read-excel-file/node';
import writeExcelFile from 'write-excel-file/node';
import { describe, expect, test } from 'vitest';
import { kindOfCode } from '../../lib/formats/xlsx/number-format';
import { serialToIso } from '../../lib/formats/xlsx/serial-to-iso';
import { xlsxTables } from '../../lib/formats/xlsx/xlsx-tables';
import { readDirectory } from '../../lib/formats/zip/read-directory';
import { makeWorkbook } from './make-workbook';
import { rowsOf } from './read-table';

const tablesOf = async (bytes: Uint8Array<ArrayBuffer>) => {
  const blob = new Blob([bytes]);
  return xlsxTables(blob, await readDirectory(blob));
};

const cell = (value: string, style = 0): string => `<c s="${String(style)}"><v>${value}</v></c>`;

describe('a serial number', () => {
  // ECMA-376-1, 18.17.4.1: serial 1 is 1900-01-01, 59 is 1900-02-28, 61 is 1900-03-01; in the 1904 system 0 is 1904-01-01.
  test.each([
    [1, 'date', false, '1900-01-01'],
    [59, 'date', false, '1900-02-28'],
    [60, 'date', false, 60],
    [61, 'date', false, '1900-03-01'],
    [45720, 'date', false, '2025-03-04'],
    [44258, 'date', true, '2025-03-04'],
    [0, 'date', true, '1904-01-01'],
    [2958465, 'date', false, '9999-12-31'],
    [2958466, 'date', false, 2958466],
    [-1, 'date', false, -1],
    [45720.5, 'date', false, '2025-03-04T12:00:00'],
    [45720, 'datetime', false, '2025-03-04T00:00:00'],
    [45720.354166666664, 'datetime', false, '2025-03-04T08:30:00'],
    [0.354166666666667, 'time', false, '08:30:00'],
    [0.354166666666667, 'time', true, '08:30:00'],
    [45720.354166666664, 'time', false, '2025-03-04T08:30:00'],
    [1.5, 'duration', false, '36:00:00'],
    [70.5, 'number', false, 70.5],
  ] as const)('%s shown as %s (1904: %s) is %s', (serial, kind, is1904, expected) => {
    expect(serialToIso(serial, kind, is1904)).toBe(expected);
  });
});

describe('a format code', () => {
  test.each([
    ['dd/mm/yyyy', 'date'],
    ['[$-409]d-mmm-yy;@', 'date'],
    ['mmm yyyy', 'date'],
    ['mmmm', 'date'],
    ['yyyy-mm-dd hh:mm', 'datetime'],
    ['h:mm AM/PM', 'time'],
    ['mm:ss.0', 'time'],
    ['[h]:mm:ss', 'duration'],
    ['General', 'number'],
    ['0.00', 'number'],
    ['0.0" days"', 'number'],
    ['#,##0\\ \\d', 'number'],
    ['[Red]0.0', 'number'],
    ['0.00E+00', 'number'],
    ['0_d', 'number'],
    ['@', 'number'],
  ])('%s is %s', (code, kind) => {
    expect(kindOfCode(code)).toBe(kind);
  });
});

describe('a workbook', () => {
  test('gives texts, numbers, truth values, dates, formula results, errors and gaps with the rows of the sheet', async () => {
    const bytes = makeWorkbook({
      texts: [
        '<t>client_id</t>',
        '<r><t>Zo</t></r><r><t xml:space="preserve">ë &amp; co_x000D_</t></r><rPh><t>X</t></rPh>',
      ],
      formats: ['yyyy-mm-dd', 'hh:mm'],
      sheets: {
        visits: `<row r="3"><c r="A3" t="s"><v>0</v></c><c r="B3" t="inlineStr"><is><t>day</t></is></c><c r="E3" t="str"><f>1</f><v>w</v></c></row>
          <row r="4"/><row r="5"><c r="A5" s="1"/></row>
          <row r="7"><c r="A7" t="s"><v>1</v></c><c r="B7" s="1"><v>45720</v></c><c r="D7" t="b"><v>1</v></c><c r="E7"><f>A1*2</f><v>70.299999999999997</v></c></row>
          <row><c t="e"><v>#DIV/0!</v></c><c s="2"><v>0.5</v></c><c t="d"><v>2025-03-04T00:00:00</v></c></row>`,
      },
    });
    const [table] = await tablesOf(bytes);
    expect(table).toMatchObject({ name: 'visits', format: 'XLSX', headed: false });
    expect(await rowsOf(table)).toEqual([
      { line: 3, cells: ['client_id', 'day', '', '', 'w'] },
      { line: 7, cells: ['Zoë & co\n', '2025-03-04', '', true, 70.3] },
      { line: 8, cells: ['#DIV/0!', '12:00:00', '2025-03-04', '', ''] },
    ]);
  });

  test('counts days from 1904 where it says so', async () => {
    const bytes = makeWorkbook({
      formats: ['d.m.yyyy'],
      is1904: true,
      sheets: { a: `<row>${cell('44258', 1)}</row>` },
    });
    expect((await rowsOf((await tablesOf(bytes))[0]))[0]?.cells).toEqual(['2025-03-04']);
  });

  test('gives its visible sheets before the hidden ones', async () => {
    const bytes = makeWorkbook({ sheets: { lists: '', visits: '', notes: '' }, hidden: ['lists'] });
    expect((await tablesOf(bytes)).map(({ name }) => name)).toEqual(['visits', 'notes', 'lists']);
  });

  test('of prefixed elements is the same workbook', async () => {
    const sheet = '<x:row r="2"><x:c r="B2"><x:v>7</x:v></x:c></x:row>';
    const [table] = await tablesOf(makeWorkbook({ sheets: { a: sheet } }));
    expect(await rowsOf(table)).toEqual([{ line: 2, cells: ['', 7] }]);
  });

  test('of many rows comes in batches, each row with its number', async () => {
    const rows = Array.from(
      { length: 12_000 },
      (_, index) => `<row r="${String(index + 1)}">${cell(String(index))}${cell('1.5')}</row>`,
    );
    const [table] = await tablesOf(makeWorkbook({ sheets: { a: rows.join('') } }));
    const sizes: number[] = [];
    let last = -1;
    for await (const batch of table?.rows() ?? []) {
      sizes.push(batch.length);
      for (const { line, cells } of batch) {
        expect(cells[0]).toBe(last + 1);
        expect(line).toBe(last + 2);
        last += 1;
      }
    }
    expect(sizes).toEqual([5000, 5000, 2000]);
  });

  test('that another library wrote is read as a third one reads it', async () => {
    const data = [
      [{ value: 'id' }, { value: 'day' }, { value: 'w' }, { value: 'ok' }],
      [
        { value: 'Zoë "A" <b>' },
        { value: new Date(Date.UTC(2025, 2, 4)), format: 'dd/mm/yyyy' },
        { value: 70.3 },
        { value: true },
      ],
      [
        { value: 'C-2' },
        { value: new Date(Date.UTC(1999, 11, 31)), format: 'dd/mm/yyyy' },
        { value: -0.5 },
        { value: false },
      ],
    ];
    const bytes = await writeExcelFile(data).toBuffer();
    const [sheet] = await readExcelFile(bytes);
    const expected = (sheet?.data ?? []).map((row) =>
      row.map((value) => (value instanceof Date ? value.toISOString().slice(0, 10) : value)),
    );
    expect(expected.length).toBe(3);
    const [table] = await tablesOf(new Uint8Array(bytes));
    expect((await rowsOf(table)).map(({ cells }) => cells)).toEqual(expected);
  });
});
