import { describe, expect, test } from 'vitest';
import { ibmDouble } from '../../lib/formats/xport/ibm-double';
import { kindOfFormat, sasDate } from '../../lib/formats/xport/sas-date';
import { xportTables } from '../../lib/formats/xport/xport-tables';
import { makeXport, makeXportMember } from './make-xport';
import { rowsOf } from './read-table';

const bytes = (hex: string) => Uint8Array.from(hex.match(/../g) ?? [], (byte) => Number.parseInt(byte, 16));

describe('a hexadecimal floating-point number', () => {
  // By hand: sign, exponent − 64 to the base 16, fraction. 118.625 = 0.76A₁₆ × 16²; 70.5 = 0.468₁₆ × 16²;
  // 512.4 = 0.200666…₁₆ × 16³; the greatest is (1 − 16⁻¹⁴) × 16⁶³, the smallest 16⁻⁶⁵.
  test.each([
    ['0000000000000000', 0],
    ['4110000000000000', 1],
    ['C110000000000000', -1],
    ['4080000000000000', 0.5],
    ['4264000000000000', 100],
    ['4276A00000000000', 118.625],
    ['C276A00000000000', -118.625],
    ['4246800000000000', 70.5],
    ['401999999999999A', 0.1],
    ['4320066666666666', 512.4],
    ['0010000000000000', 16 ** -65],
    ['7FFFFFFFFFFFFFFF', 16 ** 63],
  ])('%s is %s', (hex, expected) => {
    expect(ibmDouble(bytes(hex))).toBeCloseTo(expected, 12);
    expect(Math.abs((ibmDouble(bytes(hex)) ?? NaN) - expected)).toBeLessThanOrEqual(1e-15 * Math.abs(expected));
  });

  test('may be cut to fewer bytes', () => {
    expect([ibmDouble(bytes('4110')), ibmDouble(bytes('4276A0')), ibmDouble(bytes('000000'))]).toEqual([1, 118.625, 0]);
  });

  test('is missing in 28 ways', () => {
    const letters = Array.from({ length: 26 }, (_, index) => (0x41 + index).toString(16));
    for (const first of ['2E', '5F', ...letters]) expect(ibmDouble(bytes(`${first}00000000000000`))).toBeNull();
    expect(ibmDouble(bytes('4000000000000000'))).toBe(0);
  });
});

describe('a date', () => {
  // Days and seconds are counted from 1 January 1960; 23,804 days later is 4 March 2025.
  test.each([
    [23804, 'date', '2025-03-04'],
    [0, 'date', '1960-01-01'],
    [-1, 'date', '1959-12-31'],
    [23804 * 86400 + 30600, 'datetime', '2025-03-04T08:30:00'],
    [30600, 'time', '08:30:00'],
    [90000, 'time', 90000],
    [1e12, 'date', 1e12],
  ] as const)('%s as %s is %s', (value, kind, expected) => {
    expect(sasDate(value, kind)).toBe(expected);
  });

  test.each([
    ['DATE', 'date'],
    ['MMDDYY', 'date'],
    ['DDMMYYP', 'date'],
    ['YYMMDD', 'date'],
    ['E8601DA', 'date'],
    ['DATETIME', 'datetime'],
    ['E8601DT', 'datetime'],
    ['TIME', 'time'],
    ['HHMM', 'time'],
    ['BEST', null],
    ['', null],
    ['DOLLAR', null],
    ['F', null],
  ])('is what format %s shows: %s', (format, kind) => {
    expect(kindOfFormat(format)).toBe(kind);
  });
});

describe('a SAS transport file', () => {
  const VARIABLES = [
    { name: 'SEQN', label: 'Respondent' },
    { name: 'SITE', text: 5 },
    { name: 'DAY', format: 'DATE' },
    { name: 'BIXR' },
  ];
  const day = { hex: '445CFC0000000000' }; // 23,804 = 5CFC₁₆
  const MEMBER = makeXportMember('BIX_A', VARIABLES, [
    [{ hex: '4110000000000000' }, 'Quay', day, { hex: '4276A00000000000' }],
    [{ hex: '4120000000000000' }, 'Zo\xEB', { hex: '2E00000000000000' }, { hex: '4100000000000000' }],
  ]);

  test('gives names, numbers, dates, texts without their blanks, and nothing for what is missing', async () => {
    const [table] = await xportTables(new Blob([makeXport(MEMBER)]));
    expect(table).toMatchObject({ name: 'BIX_A', format: 'XPORT', headed: true });
    expect(await rowsOf(table)).toEqual([
      { line: 1, cells: ['SEQN', 'SITE', 'DAY', 'BIXR'] },
      { line: 2, cells: [1, 'Quay', '2025-03-04', 118.625] },
      { line: 3, cells: [2, 'Zoë', '', ''] },
    ]);
  });

  test('may hold several data sets', async () => {
    const other = makeXportMember('DEMO', [{ name: 'SEX', text: 1 }], [['F'], ['M'], ['F']]);
    const tables = await xportTables(new Blob([makeXport(MEMBER, other)]));
    expect(tables.map(({ name }) => name)).toEqual(['BIX_A', 'DEMO']);
    expect((await rowsOf(tables[1])).map(({ cells }) => cells)).toEqual([['SEX'], ['F'], ['M'], ['F']]);
    expect((await rowsOf(tables[0])).length).toBe(3);
  });

  test('of many observations that divide no piece of the file evenly is read whole', async () => {
    const rows = Array.from({ length: 70_000 }, (_, index) => [{ hex: '4110000000000000' }, String(index)]);
    const [table] = await xportTables(
      new Blob([makeXport(makeXportMember('LONG', [{ name: 'A' }, { name: 'N', text: 67 }], rows))]),
    );
    const read = (await rowsOf(table)).slice(1);
    expect(read.length).toBe(70_000);
    expect(read.every(({ line, cells }, index) => cells[1] === String(index) && line === index + 2)).toBe(true);
  });
});
