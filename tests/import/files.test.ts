import { zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { codes, csv, judgeFile, planOf, ROW, useEngine } from './judged';

const engine = useEngine();

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

const utf16 = (text: string, littleEndian: boolean, mark: boolean): Uint8Array => {
  const units = mark ? `\uFEFF${text}` : text;
  const view = new DataView(new ArrayBuffer(2 * units.length));
  for (let index = 0; index < units.length; index += 1)
    view.setUint16(2 * index, units.charCodeAt(index), littleEndian);
  return new Uint8Array(view.buffer);
};

const HEADER = 'client_id,visit_date,weight_kg,note';
const PNG = new Uint8Array([
  ...[0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d, 0x49, 0x48, 0x44, 0x52, 0, 0, 0, 1, 0, 0, 0, 1],
  ...[8, 6, 0, 0, 0, 0x1f, 0x15, 0xc4, 0x89, 0, 0, 0, 0x0d, 0x49, 0x44, 0x41, 0x54, 0x78, 0xda, 0x63, 0xfc],
]);
const OLD_WORKBOOK = new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...new Uint8Array(504)]);

describe('a file that is no visit export', () => {
  test.each<[string, string | Uint8Array, string]>([
    ['no bytes', '', 'empty'],
    ['spaces and line ends', '  \r\n\t\n \n', 'empty'],
    ['only a byte order mark', '\uFEFF', 'empty'],
    ['only separators', ',,,\n,,,\n', 'empty'],
    ['a header alone', HEADER, 'header_only'],
    ['a header and blank lines', `${HEADER}\n\n,,,\n`, 'header_only'],
    ['other columns', 'name,age\nA,3\n', 'wrong_columns'],
    ['prose', 'Dear colleague,\nthe export follows.\n', 'wrong_columns'],
    ['a column twice', `${HEADER},Weight_kg\nC-1,2025-03-04,70,,71\n`, 'duplicate_columns'],
    ['a picture', PNG, 'picture'],
    ['an old workbook', OLD_WORKBOOK, 'old_workbook'],
    ['a workbook without its parts', zipSync({ 'xl/workbook.xml': bytes('<workbook/>') }), 'damaged'],
  ])('is refused with its name and a remedy: %s', async (_, content, code) => {
    const result = await judgeFile(engine(), content);
    expect(result.ok).toBe(false);
    if (result.ok) return;
    expect(result.error.code).toBe(code);
    expect(result.error.message).toContain('visits.csv');
    expect(result.error.remedy).toMatch(/Nothing was changed\.$/);
  });
});

test('a zip archive of a CSV file is read', async () => {
  const plan = await planOf(engine(), zipSync({ 'visits.csv': bytes(csv([ROW])) }));
  expect([plan.rows, plan.accepted]).toEqual([1, 1]);
});

const TEXT = `${HEADER}\r\nC-1,2025-03-04,70.5,Zoë – größer\r\nC-2,2025-03-05,71,“two”\r\n`;
const NOTES = ['Zoë – größer', '“two”'];

describe('the encoding of a file', () => {
  test.each<[string, Uint8Array, string]>([
    ['UTF-8', bytes(TEXT), 'UTF-8'],
    ['UTF-8 with a mark', bytes(`\uFEFF${TEXT}`), 'UTF-8'],
    ['UTF-16LE with a mark', utf16(TEXT, true, true), 'UTF-16LE'],
    ['UTF-16BE with a mark', utf16(TEXT, false, true), 'UTF-16BE'],
    ['UTF-16LE without one', utf16(TEXT, true, false), 'UTF-16LE'],
    ['UTF-16BE without one', utf16(TEXT, false, false), 'UTF-16BE'],
    // Windows-1252 of the same text: ë 0xEB, – 0x96, ö 0xF6, ß 0xDF, “ 0x93, ” 0x94 (WHATWG Encoding, index windows-1252).
    [
      'Windows-1252',
      new Uint8Array(
        [...TEXT].map(
          (sign) =>
            new Map([...'–“”'].map((key, index) => [key, [0x96, 0x93, 0x94][index] ?? 0])).get(sign) ??
            sign.charCodeAt(0),
        ),
      ),
      'Windows-1252',
    ],
  ])('%s is recognised', async (_, content, encoding) => {
    const plan = await planOf(engine(), content);
    expect(plan.files[0]?.encoding).toBe(encoding);
    expect([plan.rows, plan.accepted]).toEqual([2, 2]);
    const rows = await engine().query('SELECT note FROM test_typed ORDER BY line_no');
    expect(rows.map((row) => row['note'])).toEqual(NOTES);
  });
});

describe('the shape of a file', () => {
  test.each([',', ';', '\t', '|'])('may separate its cells by %j', async (separator) => {
    const text = `\n${TEXT.replaceAll(',', separator)}`;
    const plan = await planOf(engine(), text);
    expect(plan.files[0]?.delimiter).toBe(separator);
    expect(plan.accepted).toBe(2);
  });

  test('may mix line ends, hold blank lines and quoted line ends; lines are counted as an editor counts them', async () => {
    const text = [
      `${HEADER}\r\n`,
      'C-1,2025-03-04,70,"two\r\nlines"\r', // lines 2 and 3
      '\n', // belongs to the CR before
      '\n', // line 4
      'C-2,2025-03-04,heavy,\r', // line 5
      ',,,\n', // line 6
      'C-3,2025-03-04,70,"a ""b"", c\n\n"\n', // lines 7 to 9
      'C-4,2025-13-04,70,', // line 10
    ].join('');
    const plan = await planOf(engine(), text);
    expect([plan.rows, plan.accepted, plan.refused]).toEqual([4, 2, 2]);
    expect(plan.findings.map(({ line, column, value }) => [line, column, value])).toEqual([
      [5, 'weight_kg', 'heavy'],
      [10, 'visit_date', '2025-13-04'],
    ]);
    const rows = await engine().query('SELECT note FROM test_typed WHERE note IS NOT NULL ORDER BY line_no');
    expect(rows.map((row) => row['note'])).toEqual(['two\nlines', 'a "b", c\n\n']);
  });

  test('a row with another number of cells is refused, the others are kept', async () => {
    const text = `${HEADER}\nC-1,2025-03-04\nC-2,2025-03-04,70,,,x\nC-3,2025-03-04,70,\n`;
    const plan = await planOf(engine(), text);
    expect([plan.rows, plan.accepted, plan.refused]).toEqual([3, 1, 2]);
    expect(plan.findings.map(({ line, code, value }) => [line, code, value])).toEqual([
      [2, 'ragged', 'C-1,2025-03-04'],
      [3, 'ragged', 'C-2,2025-03-04,70,,,x'],
    ]);
  });

  test('a quotation mark that is never closed costs its own row and no other', async () => {
    const text = `${HEADER}\nC-1,2025-03-04,70,"open\nC-2,2025-03-04,70,\nC-3,2025-03-04,70,"closed"\nC-4,2025-03-04,70,"open`;
    const plan = await planOf(engine(), text);
    expect([plan.rows, plan.accepted, plan.refused]).toEqual([4, 2, 2]);
    expect(plan.findings.map(({ line, code }) => [line, code])).toEqual([
      [2, 'broken_quote'],
      [5, 'broken_quote'],
    ]);
  });

  test('columns in another order, with capitals and spaces, are the same columns', async () => {
    const plan = await planOf(engine(), ' Weight_kg ,CLIENT_ID,visit_date\n70,C-1,2025-03-04\n');
    expect(plan.accepted).toBe(1);
    expect(plan.files[0]?.unknownColumns).toEqual([]);
  });

  test('unknown columns are named, and tell two rows apart', async () => {
    const plan = await planOf(
      engine(),
      'client_id,visit_date,weight_kg,Room\nC-1,2025-03-04,70,1\nC-1,2025-03-04,70,2\n',
    );
    expect(plan.files[0]?.unknownColumns).toEqual(['Room']);
    expect([plan.accepted, plan.held, plan.duplicates]).toEqual([1, 1, 0]);
    expect(codes(plan)).toEqual(['question same_figures reading']);
  });

  test('a hundred thousand broken quotes do not hold the import up', async () => {
    const result = await judgeFile(engine(), `${HEADER}\n${'C-1,2025-03-04,70,"open\n'.repeat(100_000)}`);
    expect(result.ok && result.value.refused === result.value.rows && result.value.rows > 0).toBe(true);
  });
});

describe('a text cell', () => {
  test.each([
    ['ten thousand characters', 'x'.repeat(10_000)],
    ['a NUL character', 'a\u0000b'],
    ['right-to-left text and marks', '\u202Eאבג\u202C abc'],
    ['a formula', '=HYPERLINK("http://example.org","x")'],
    ['markup', '<img src=x onerror=alert(1)>'],
    ['an SQL statement', "'; DROP TABLE readings; --"],
    ['a backslash, a dollar and a percent sign', '\\N $1 %s {0}'],
    ['the word NULL', 'NULL'],
    ['an emoji of several code points', '👩🏽‍⚕️'],
  ])('is kept as it was written: %s', async (_, note) => {
    const plan = await planOf(engine(), csv([{ ...ROW, note, family_name: note }]));
    expect([plan.accepted, ...codes(plan)]).toEqual([1]);
    expect(await engine().query('SELECT note, family_name FROM test_typed')).toEqual([{ note, family_name: note }]);
  });

  test('of twenty million characters does not stop the import', async () => {
    const plan = await planOf(engine(), csv([{ ...ROW, note: 'x'.repeat(20_000_000) }, ROW]));
    expect(plan.rows).toBe(2);
    expect([plan.accepted, ...codes(plan)]).toEqual([1, 'refused too_long']);
  });

  test('with half of a surrogate pair is read with a replacement character', async () => {
    const plan = await planOf(engine(), utf16(csv([{ ...ROW, note: 'a\uD83D' }]), true, true));
    expect(plan.accepted).toBe(1);
  });

  test('marks that cannot be seen make no second client', async () => {
    const plan = await planOf(
      engine(),
      csv([
        ROW,
        { ...ROW, client_id: '\u200EC-1\u200F', visit_date: '2025-03-05' },
        { ...ROW, client_id: 'C-1\u00A0', visit_date: '2025-03-06' },
      ]),
    );
    expect([plan.accepted, plan.clients]).toEqual([3, 1]);
  });

  test('hostile text in a cell that must be a number is quoted in the finding and does no more', async () => {
    const value = "'); DROP TABLE test_raw; --";
    const plan = await planOf(engine(), csv([{ ...ROW, weight_kg: value }]));
    expect(plan.findings.map((finding) => finding.value)).toEqual([value]);
    expect(await engine().query('SELECT COUNT(*) AS n FROM test_cells')).toEqual([{ n: 1 }]);
  });
});
