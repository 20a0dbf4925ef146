import { gzipSync, strToU8, zipSync } from 'fflate';
import { parquetWriteBuffer, type ColumnSource } from 'hyparquet-writer';
import { describe, expect, test } from 'vitest';
import { openTables } from '../../lib/import/open-tables';
import { makeWorkbook } from '../formats/make-workbook';
import { makeXport, makeXportMember } from '../formats/make-xport';

/** A generator of numbers from 0 to below 1 (a multiplicative congruential one, modulus 2³¹ − 1), the same every time. */
const seeded = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
};

const CASES = 80;
const SLOWEST_MS = 4000;

const csv = strToU8(
  `client_id;visit_date;weight_kg;note\n${Array.from({ length: 60 }, (_, index) => `C-${String(index)};2025-03-04;70,${String(index)};"größer; ""a""\nb"`).join('\n')}\n`,
);
const cell = (text: string, place: number): string =>
  place === 0 ? `<c t="s"><v>${text}</v></c>` : `<c s="1"><v>${text}</v></c><c t="inlineStr"><is><t>x</t></is></c>`;
const workbook = makeWorkbook({
  texts: ['<t>Zoë</t>', '<r><t>a</t></r>'],
  formats: ['yyyy-mm-dd'],
  sheets: {
    one: Array.from(
      { length: 40 },
      (_, row) => `<row r="${String(row + 1)}">${[String(row % 2), '45720.5'].map(cell).join('')}</row>`,
    ).join(''),
    two: '<row r="1"><c><v>7</v></c></row>',
  },
});
const columnData: ColumnSource[] = [
  { name: 'id', data: Array.from({ length: 300 }, (_, index) => `C-${String(index % 7)}`), type: 'STRING' },
  { name: 'w', data: Array.from({ length: 300 }, (_, index) => (index % 5 === 0 ? null : index / 3)), type: 'DOUBLE' },
  { name: 'n', data: Int32Array.from({ length: 300 }, (_, index) => index), type: 'INT32' },
];
const observation = (index: number): string =>
  `{"resourceType":"Observation","id":"o${String(index)}","status":"final","code":{"coding":[{"system":"http://loinc.org","code":"29463-7"}]},"subject":{"reference":"Patient/${String(index % 5)}"},"effectiveDateTime":"2025-03-0${String(1 + (index % 9))}T08:30:00Z","valueQuantity":{"value":${String(70 + index)},"code":"kg"}}`;
const observations = Array.from({ length: 40 }, (_, index) => observation(index));

const FILES: Readonly<Record<string, Uint8Array>> = {
  semicolons: csv,
  'UTF-16': Uint8Array.from([
    0xff,
    0xfe,
    ...[...'a,b\n1,"x\ny"\n'.repeat(60)].flatMap((sign) => [sign.charCodeAt(0), 0]),
  ]),
  'a workbook': workbook,
  'Parquet, Snappy': new Uint8Array(parquetWriteBuffer({ columnData, rowGroupSize: 100 })),
  'Parquet, GZIP': new Uint8Array(
    parquetWriteBuffer({ columnData, codec: 'GZIP', compressors: { GZIP: (bytes) => gzipSync(bytes) } }),
  ),
  'SAS transport': makeXport(
    makeXportMember(
      'BIX',
      [
        { name: 'ID', text: 5 },
        { name: 'DAY', format: 'DATE' },
      ],
      Array.from({ length: 40 }, (_, index) => [String(index), { hex: '445CFC0000000000' }]),
    ),
  ),
  'FHIR lines': strToU8(observations.join('\n')),
  'a FHIR Bundle': strToU8(
    `{"resourceType":"Bundle","entry":[${observations.map((text) => `{"resource":${text}}`).join(',')}]}`,
  ),
  'rows written anew': strToU8(`{"driftline":"rows","version":1}\n${'[1,"a",70.3,true]\n'.repeat(50)}`),
  'a zip': zipSync({ 'a.csv': csv, 'b/book.xlsx': workbook, 'c.csv': [csv, { level: 0 }] }),
};

/** What becomes of a file: the rows that were read, or the code of the refusal. Throws what no file may cause. */
const outcome = async (bytes: Uint8Array): Promise<string> => {
  const opened = await openTables('file', new Blob([bytes.slice()]));
  if (!opened.ok) return opened.error.code;
  let rows = 0;
  for (const table of opened.value)
    try {
      for await (const batch of table.rows()) rows += batch.length;
    } catch (error) {
      if (error instanceof Error && error.name === 'DamagedFile') return 'damaged while read';
      throw error;
    }
  return `${String(rows)} rows`;
};

const settled = async (bytes: Uint8Array): Promise<string> => {
  const start = performance.now();
  const result = await outcome(bytes);
  expect(performance.now() - start).toBeLessThan(SLOWEST_MS);
  return result;
};

describe.each(Object.entries(FILES))('%s', (name, bytes) => {
  test('is read while it is whole', async () => {
    expect(await settled(bytes)).toMatch(/^[1-9]\d* rows$/);
  });

  test('cut off anywhere is refused or read as far as it goes, in time', async () => {
    const random = seeded(bytes.length + name.length);
    const seen = new Set<string>();
    for (let trial = 0; trial < CASES; trial += 1)
      seen.add(await settled(bytes.subarray(0, Math.floor(random() * bytes.length))));
    const most = Number.parseInt(await settled(bytes), 10);
    // A quoted cell that is cut open ends with its line, so that its other lines count for themselves.
    for (const result of seen) expect(Number.parseInt(result, 10) || 0).toBeLessThanOrEqual(most + 1);
  });

  test('with bits turned over is refused or read, in time', async () => {
    const random = seeded(2 * bytes.length + name.length);
    const seen = new Set<string>();
    for (let trial = 0; trial < CASES; trial += 1) {
      const changed = bytes.slice();
      for (let flip = 0; flip <= trial % 4; flip += 1) {
        const place = Math.floor(random() * changed.length);
        changed[place] = (changed[place] ?? 0) ^ (1 << Math.floor(random() * 8));
      }
      seen.add(await settled(changed));
    }
    for (const result of seen) expect(result).toMatch(/^(\d+ rows|damaged while read|[a-z_]+)$/);
  });
});

describe('bytes by chance', () => {
  test.each([2, 7, 256])('of %s kinds are refused or read, in time', async (kinds) => {
    const random = seeded(kinds);
    const alphabet = kinds === 256 ? null : strToU8('",\n;a7\t');
    for (let trial = 0; trial < CASES; trial += 1) {
      const bytes = Uint8Array.from({ length: Math.floor(random() * 5000) }, () => {
        const pick = Math.floor(random() * kinds);
        return alphabet?.[pick] ?? pick;
      });
      expect(await settled(bytes)).toMatch(/./);
    }
  });

  test.each([
    'PK\x03\x04',
    'PAR1',
    'HEADER RECORD*******LIBRARY HEADER RECORD!!!!!!!',
    '{"resourceType":',
    '{"driftline":"rows","version":1}\n',
  ])('behind the beginning %j are refused or read, in time', async (start) => {
    const random = seeded(start.length);
    for (let trial = 0; trial < CASES; trial += 1) {
      const tail = Uint8Array.from({ length: Math.floor(random() * 3000) }, () => Math.floor(random() * 256));
      expect(await settled(Uint8Array.from([...strToU8(start), ...tail, ...strToU8(start.slice(0, 4))]))).toMatch(/./);
    }
  });
});
