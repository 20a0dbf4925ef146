import type { Row } from '../../lib/engine/types';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { COLUMNS } from '../../lib/import/columns';
import type { Column } from '../../lib/import/column';
import { rowSchema } from '../../lib/import/row-schema';
import { csv, day, planOf, useEngine } from './judged';

const engine = useEngine();

const ODD = [
  ...[
    '',
    ' ',
    '0',
    '-0',
    '-1',
    '1_000',
    '0x1F',
    '0b11',
    '1e3',
    '1e400',
    '-1e400',
    '1e-400',
    '.5',
    '5.',
    '.',
    '+',
    '+-5',
    '--5',
  ],
  ...[
    'NaN',
    'Infinity',
    '-inf',
    '512,4',
    '1 000',
    '５',
    '1e',
    'e5',
    '1e+5',
    '1.e3',
    '.e3',
    '1d',
    '00012',
    '9999999999',
    '½',
  ],
  ...['2025-02-30', '2024-02-29', '1900-01-01', '2025-3-04', '-025-01-04', '2025-03-4x', '0000-01-01', '0001-01-01'],
  ...['9999-12-31', '04/03/2025', 'infinity', 'epoch', '2025-01-01 BC', '8:30', '08:30', '24:00', '08:60', '08:30:60'],
  ...[
    '08:30:15',
    '8:30:1',
    '08:3',
    '-1:30',
    '+8:30',
    '1:2:3',
    ' 8:30',
    'ab:cd',
    '12:30Z',
    'y',
    'Y',
    'n',
    'yes',
    '1',
    'true',
  ],
  ...[
    'F',
    'f',
    'm',
    'X',
    'female',
    'right',
    'RIGHT',
    'lying',
    'Standing',
    'sitting',
    'none',
    'null',
    'NULL',
    "'",
    '"',
    'y\n',
  ],
];

const digits = fc.string({ unit: fc.constantFrom(...'0123456789.-+e_:, '), maxLength: 10 });
const cellOf = (column: Column): fc.Arbitrary<string> =>
  fc.oneof(
    fc.constantFrom(...ODD),
    digits,
    fc.constantFrom('', ...(column.choices ?? [])),
    fc.double({ noNaN: true }).map(String),
    fc
      .date({ noInvalidDate: true, min: new Date('1800-01-01'), max: new Date('2100-01-01') })
      .map((date) => date.toISOString().slice(0, 10)),
  );
const rowOf = fc.record(Object.fromEntries(COLUMNS.map((column) => [column.name, cellOf(column)])));

/** Dates that import refuses for a reason that a schema need not know. */
const DATE_CODE = /^(short_year|other_calendar)$/;
const CELL_CODE = /^(unreadable_\w+|not_positive)$/;

describe('the schema of a row', () => {
  test('refuses the cells that import refuses, for the same reason, and no other', async () => {
    const rows = fc.sample(rowOf, { seed: 41, numRuns: 1500 });
    const numbered = rows.map((row, index) => ({ ...row, client_id: `C-${String(index)}`, note: '' }));
    const plan = await planOf(engine(), csv(numbered), { today: day('2025-06-30') });
    expect(plan.rows).toBe(rows.length);
    const byImport = new Set(
      (await engine().query("SELECT client_id, column_name, code FROM test_finding WHERE kind = 'refused'"))
        .map((row): Row & { code: string } => ({
          ...row,
          code: DATE_CODE.test(String(row['code'])) ? 'unreadable_date' : String(row['code']),
        }))
        .filter(({ code }) => CELL_CODE.test(code))
        .map((row) => `${String(row['client_id'])} ${String(row['column_name'])} ${row.code}`),
    );
    // What the mapping understands by itself (a day with a time, an AM or PM) is judged in its canonical spelling.
    const judged = (await engine().query(`SELECT ${COLUMNS.map(({ name }) => name).join(', ')} FROM test_cells`)).map(
      (row) => Object.fromEntries(Object.entries(row).map(([name, cell]) => [name, String(cell ?? '')])),
    );
    const bySchema = new Set(
      judged.flatMap((row) =>
        (rowSchema.safeParse(row).error?.issues ?? []).map(
          ({ path, message }) => `${row['client_id'] ?? ''} ${path.map(String).join('.')} ${message}`,
        ),
      ),
    );
    const named = (text: string): string => {
      const [client = '', column = ''] = text.split(' ');
      return `${text}: ${JSON.stringify(Object.entries(numbered.find((row) => row.client_id === client) ?? {}).find(([name]) => name === column)?.[1])}`;
    };
    expect([...byImport].filter((text) => !bySchema.has(text)).map(named)).toEqual([]);
    expect([...bySchema].filter((text) => !byImport.has(text)).map(named)).toEqual([]);
    expect(byImport.size).toBeGreaterThan(10_000);
    const kinds = new Set([...byImport].map((text) => text.split(' ')[2]));
    expect([...kinds].sort()).toEqual(
      ['choice', 'date', 'flag', 'integer', 'number', 'time']
        .map((type) => `unreadable_${type}`)
        .concat('not_positive')
        .sort(),
    );
  });
});
