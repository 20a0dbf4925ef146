import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DuckDBInstance } from '@duckdb/node-api';
import Papa from 'papaparse';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { projectRoot } from '../../lib/cli/site/site-paths';
import type { RawRow } from '../../lib/formats/raw-table';
import { openTables } from '../../lib/import/open-tables';
import { cellsOf, rowsOf } from '../formats/read-table';

const spreadsheetIsInstalled = ((): boolean => {
  try {
    execFileSync('soffice', ['--version'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
})();
if (!spreadsheetIsInstalled)
  process.stderr.write('soffice is not installed: the tests with files of a spreadsheet program are skipped\n');

const folder = mkdtempSync(join(tmpdir(), 'driftline-foreign-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const opened = async (path: string) => {
  const result = await openTables('foreign', new Blob([readFileSync(path)]));
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
};

const refusal = async (path: string): Promise<string> => {
  const result = await openTables('foreign', new Blob([readFileSync(path)]));
  return result.ok ? 'opened' : result.error.code;
};

const ROWS = 300;
const csv = readFileSync(join(projectRoot, 'sample-data/visits.csv'), 'utf8')
  .split('\n')
  .slice(0, ROWS + 1)
  .join('\n');
const original = Papa.parse<string[]>(csv).data;

/** Whether a cell says the same as the original: a number is compared as one, a time of day to the minute. */
const isSame = (cell: unknown, text: string, decimal: '.' | ','): boolean => {
  if (text === '' || cell === '') return cell === text;
  if (/^\d\d:\d\d$/.test(text)) return String(cell).startsWith(`${text}:00`);
  const shown = String(cell);
  if (/^-?\d+(\.\d+)?$/.test(text)) return Number(decimal === ',' ? shown.replace(',', '.') : shown) === Number(text);
  return shown === text;
};

const differences = (rows: readonly RawRow[], decimal: '.' | ','): readonly string[] =>
  rows.flatMap(({ line, cells }, index) =>
    (original[index] ?? []).flatMap((text, place) =>
      isSame(cells[place], text, decimal) ? [] : [`${String(line)}: ${text} became ${String(cells[place])}`],
    ),
  );

describe.skipIf(!spreadsheetIsInstalled)(
  'the demo clinic, saved by a spreadsheet program in a country of decimal commas',
  () => {
    const convert = (source: string, to: string, into: string, from?: string): string => {
      const filter = from === undefined ? [] : [`--infilter=${from}`];
      execFileSync(
        'soffice',
        [
          `-env:UserInstallation=file://${folder}/profile`,
          '--headless',
          ...filter,
          '--convert-to',
          to,
          '--outdir',
          join(folder, into),
          source,
        ],
        { stdio: 'ignore', timeout: 90_000 },
      );
      return join(folder, into, `visits.${to.split(':')[0] ?? ''}`);
    };
    // Tokens of the CSV filter: separator, text mark, character set (76 UTF-8, 1 Windows-1252, 65535 UTF-16), first line, formats, language (1033 English), quote all, as shown.
    const asCsv = (separator: number, characterSet: number): string =>
      `csv:Text - txt - csv (StarCalc):${String(separator)},34,${String(characterSet)},1,,0,false,true`;
    let book = '';

    beforeAll(() => {
      mkdirSync(join(folder, 'profile/user'), { recursive: true });
      writeFileSync(
        join(folder, 'profile/user/registrymodifications.xcu'),
        '<?xml version="1.0" encoding="UTF-8"?><oor:items xmlns:oor="http://openoffice.org/2001/registry"><item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale" oor:op="fuse"><value>de-DE</value></prop></item></oor:items>',
      );
      writeFileSync(join(folder, 'visits.csv'), csv);
      book = convert(join(folder, 'visits.csv'), 'xlsx', 'book', 'CSV:44,34,76,1,,1033,false,true');
    });

    test('as a workbook is read back to the same cells, numbers as numbers and dates as dates', async () => {
      const tables = await opened(book);
      expect(tables.length).toBe(1);
      const rows = await rowsOf(tables[0]);
      expect(rows.map(({ line }) => line)).toEqual(Array.from({ length: ROWS + 1 }, (_, index) => index + 1));
      expect(differences(rows, '.')).toEqual([]);
      const header = original[0] ?? [];
      const first = rows[1]?.cells ?? [];
      expect(typeof first[header.indexOf('r_ohm')]).toBe('number');
      expect(first[header.indexOf('visit_date')]).toBe(original[1]?.[header.indexOf('visit_date')]);
    });

    test.each([
      ['semicolons, UTF-8', 59, 76, ';', 'UTF-8'],
      ['tabs, UTF-16', 9, 65535, '\t', 'UTF-16LE'],
    ])(
      'as text with %s and decimal commas is read back to the same cells',
      async (_, separator, set, delimiter, encoding) => {
        const path = convert(book, asCsv(separator, set), `text-${String(separator)}`);
        const [table] = await opened(path);
        expect([table?.delimiter, table?.encoding]).toEqual([delimiter, encoding]);
        const rows = await rowsOf(table);
        expect(rows.length).toBe(ROWS + 1);
        expect(rows[1]?.cells.some((cell) => /^\d+,\d+$/.test(String(cell)))).toBe(true);
        expect(differences(rows, ',')).toEqual([]);
      },
    );

    test.each([
      ['xls', 'old_workbook'],
      ['ods', 'other_workbook'],
      ['html', 'web_page'],
      ['fods', 'xml'],
      ['pdf', 'pdf'],
    ])('as %s is refused with what it is', async (kind, code) => {
      expect(await refusal(convert(book, kind, 'other'))).toBe(code);
    });
  },
);

describe('a table that a database wrote as Parquet', () => {
  const SELECT = `SELECT 'Zoë' AS client_id, DATE '2025-03-04' AS visit_date, TIME '08:30:00' AS visit_time,
    TIMESTAMP '2025-03-04 08:30:15' AS seen, 70.3::DOUBLE AS w, 70.3::FLOAT AS f, 70.30::DECIMAL(9,2) AS d,
    123456789012345678::DECIMAL(18,0) AS id, true AS ok, NULL::INTEGER AS n, [1,2] AS l, 12345678901::BIGINT AS b
    FROM range(3)`;

  test.each(['uncompressed', 'snappy', 'gzip', 'zstd', 'brotli', 'lz4_raw'])(
    'packed as %s is read back',
    async (codec) => {
      const path = join(folder, `${codec}.parquet`);
      const connection = await (await DuckDBInstance.create(':memory:')).connect();
      await connection.run(`COPY (${SELECT}) TO '${path}' (FORMAT parquet, CODEC '${codec}')`);
      const [header, ...rows] = await cellsOf((await opened(path))[0]);
      expect(header).toEqual([
        'client_id',
        'visit_date',
        'visit_time',
        'seen',
        'w',
        'f',
        'd',
        'id',
        'ok',
        'n',
        'l',
        'b',
      ]);
      const row = [
        'Zoë',
        '2025-03-04',
        '08:30:00',
        '2025-03-04T08:30:15',
        70.3,
        70.3,
        70.3,
        '123456789012345678',
        true,
        '',
        '[1,2]',
        12345678901,
      ];
      expect(rows).toEqual([row, row, row]);
    },
  );
});
