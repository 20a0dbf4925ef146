import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { neutralise, writeCsv } from '../../lib/formats/csv/write-csv';

describe('a CSV file', () => {
  test('ends every line with CRLF and quotes only what needs it (RFC 4180)', () => {
    expect(writeCsv(['a', 'b, c'], [['x "y"', 1.5]])).toBe('a,"b, c"\r\n"x ""y""",1.5\r\n');
  });

  test('reads back as it was written', () => {
    const rows = [
      ['OM-0188', '<img src=x onerror=alert(1)>', 'two\r\nlines'],
      ['שלום', 'semi;colon', '"'],
    ];
    const read = Papa.parse<string[]>(writeCsv(['id', 'name', 'note'], rows), { skipEmptyLines: true });
    expect(read.data).toEqual([['id', 'name', 'note'], ...rows]);
  });

  test('leaves nothing where a number is missing or not finite', () => {
    expect(writeCsv(['a', 'b', 'c'], [[null, Number.NaN, Number.POSITIVE_INFINITY]])).toBe('a,b,c\r\n,,\r\n');
  });

  test.each(['=1+1', '+cmd|x', '-2+3', '@SUM(A1)', '\tx', '\rx', '-x'])(
    'keeps %j from running as a formula',
    (cell) => {
      expect(neutralise(cell)).toBe(`'${cell}`);
    },
  );

  test.each(['-1.4', '+0.5', '-3', '.5', '1e-9', 'OM-0007', ''])('leaves %j as it is', (cell) => {
    expect(neutralise(cell)).toBe(cell);
  });
});
