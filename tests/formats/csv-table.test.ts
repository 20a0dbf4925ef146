import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { csvTable } from '../../lib/formats/csv/csv-table';
import { detectDelimiter } from '../../lib/formats/csv/detect-delimiter';
import { detectEncoding } from '../../lib/formats/csv/detect-encoding';
import { recordCutter } from '../../lib/formats/csv/record-cutter';
import type { RawRow } from '../../lib/formats/raw-table';
import { cellsOf, rowsOf } from './read-table';

const tableOfBlob = async (blob: Blob) => {
  const encoding = await detectEncoding(blob);
  return encoding === null ? null : csvTable('', blob, encoding);
};

const tableOf = (content: string | Uint8Array<ArrayBuffer>) => tableOfBlob(new Blob([content]));

const utf16 = (text: string, littleEndian: boolean, mark: boolean): Uint8Array<ArrayBuffer> => {
  const view = new DataView(new ArrayBuffer(2 * text.length + (mark ? 2 : 0)));
  [...(mark ? '\uFEFF' : ''), ...text].forEach((sign, index) => {
    view.setUint16(2 * index, sign.charCodeAt(0), littleEndian);
  });
  return new Uint8Array(view.buffer);
};

const cut = (text: string, delimiter: string, piece = text.length): readonly RawRow[] => {
  const cutter = recordCutter(delimiter);
  const rows: RawRow[] = [];
  for (let at = 0; at < text.length; at += piece) rows.push(...cutter.push(text.slice(at, at + piece), false));
  return [...rows, ...cutter.push('', true)];
};

describe('the csv-spectrum files', () => {
  const folder = dirname(createRequire(import.meta.url).resolve('csv-spectrum'));
  const names = readdirSync(join(folder, 'csvs')).map((file) => file.replace(/\.csv$/, ''));

  test('are all there', () => {
    expect(names.length).toBeGreaterThanOrEqual(12);
  });

  test.each(names)('%s parses to its expected values', async (name) => {
    const [header = [], ...records] = await cellsOf(
      await tableOf(new Uint8Array(readFileSync(join(folder, 'csvs', `${name}.csv`)))),
    );
    const expected = JSON.parse(readFileSync(join(folder, 'json', `${name}.json`), 'utf8')) as unknown;
    // A quoted line end is one line end, whichever system wrote it.
    const plain = JSON.parse(JSON.stringify([expected].flat()).replaceAll('\\r\\n', '\\n')) as unknown;
    const objects = records.map((cells) => Object.fromEntries(header.map((key, place) => [String(key), cells[place]])));
    // The values of this one name another telephone number than its CSV file (version 2.0.0).
    if (name === 'location_coordinates') {
      expect(plain).toMatchObject([{ 'Contact Phone Number': '1234567890' }]);
      for (const object of objects) {
        expect(object['Contact Phone Number']).toBe('2095257564');
        object['Contact Phone Number'] = '1234567890';
      }
    }
    expect(objects).toEqual(plain);
  });
});

describe('the cutter of records', () => {
  const cell = fc.string({ unit: fc.constantFrom('a', '7', ' ', '"', ',', ';', '\n', '\t', 'é') });

  test('gives what was written, whatever the separator, the line end and the pieces', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(cell, { minLength: 1, maxLength: 5 }), { maxLength: 8 }),
        fc.constantFrom(',', ';', '\t', '|'),
        fc.constantFrom('\n', '\r\n', '\r'),
        fc.integer({ min: 1, max: 9 }),
        (rows, delimiter, end, piece) => {
          const quoted = rows.map((row) => row.map((text) => `"${text.replaceAll('"', '""')}"`).join(delimiter) + end);
          const expected = rows.filter((row) => row.some((text) => text.trim() !== ''));
          expect(cut(quoted.join(''), delimiter, piece).map(({ cells }) => cells)).toEqual(expected);
        },
      ),
      { seed: 11, numRuns: 300 },
    );
  });

  test('agrees with papaparse on every text whose quotes papaparse calls in order', () => {
    let compared = 0;
    fc.assert(
      fc.property(fc.array(cell, { maxLength: 12 }), fc.integer({ min: 1, max: 5 }), (parts, piece) => {
        const text = parts.join(',');
        const { data, errors } = Papa.parse<string[]>(text, { delimiter: ',', newline: '\n' });
        if (errors.some(({ type }) => type === 'Quotes')) return;
        compared += 1;
        const expected = data.filter((cells) => cells.some((value) => value.trim() !== ''));
        expect(cut(text, ',', piece).map(({ cells }) => cells)).toEqual(expected);
      }),
      { seed: 12, numRuns: 1500 },
    );
    expect(compared).toBeGreaterThan(300);
  });

  test('cuts the same records from any pieces, broken quotes among them', () => {
    fc.assert(
      fc.property(fc.array(cell, { maxLength: 14 }), fc.integer({ min: 1, max: 5 }), (parts, piece) => {
        expect(cut(parts.join(','), ',', piece)).toEqual(cut(parts.join(','), ','));
      }),
      { seed: 13, numRuns: 800 },
    );
  });

  test('ends a record with broken quotes at its first line and takes no other with it', () => {
    expect(cut('a,b\n1,"open\n2,x\n3,"closed"\n4,"bad"x\n5,"open', ',')).toEqual([
      { line: 1, cells: ['a', 'b'] },
      { line: 2, cells: ['1', '"open'], trouble: 'broken_quote' },
      { line: 3, cells: ['2', 'x'] },
      { line: 4, cells: ['3', 'closed'] },
      { line: 5, cells: ['4', '"bad"x'], trouble: 'broken_quote' },
      { line: 6, cells: ['5', '"open'], trouble: 'broken_quote' },
    ]);
  });

  test('counts blank lines and quoted line ends as an editor counts them', () => {
    const text = 'a,b\r\n\r\n1,"two\r\nlines"\r\n,\n2,x\r3,y';
    expect(cut(text, ',', 3).map(({ line, cells }) => [line, ...cells])).toEqual([
      [1, 'a', 'b'],
      [3, '1', 'two\nlines'],
      [6, '2', 'x'],
      [7, '3', 'y'],
    ]);
  });

  test.each([
    ['a quote that is never closed', 'a,"open\n'],
    ['a quote closed and opened again', 'x","y\n'],
    ['a quote before text', '"a"b\n'],
  ])('a hundred thousand lines with %s take seconds, not minutes', (_, line) => {
    const start = performance.now();
    const rows = cut(line.repeat(100_000), ',', 1_000_000);
    expect(rows.length).toBeGreaterThan(0);
    expect(performance.now() - start).toBeLessThan(20_000);
  });

  test('cuts a line of five million characters and goes on with the next', () => {
    const rows = cut(`a,b\n${'x'.repeat(5_000_000)}\n1,2\n"${'y'.repeat(5_000_000)}\n3,4\n`, ',', 1_000_000);
    expect(rows.map(({ line }) => line)).toEqual([1, 2, 3, 4, 5]);
    expect(rows.map(({ cells }) => String(cells[0]).length > 1_000_000)).toEqual([false, true, false, true, false]);
    expect(rows.at(-1)?.cells).toEqual(['3', '4']);
  });
});

describe('the separator', () => {
  test.each([
    ['commas', 'a,b,c\n1,2,3\n', ','],
    ['semicolons', 'a;b;c\n1;2;3\n', ';'],
    ['tabs', 'a\tb\tc\n1\t2\t3\n', '\t'],
    ['bars', 'a|b|c\n1|2|3\n', '|'],
    ['semicolons with decimal commas', 'id;r;xc;w\nA;512,4;50,1;70,5\nB;500,1;49,2;81,3\n', ';'],
    ['tabs with decimal commas', 'id\tr\txc\nA\t512,4\t50,1\nB\t500,1\t49,2\n', '\t'],
    ['semicolons, decimal commas and no header', '512,4;50,1\n500,1;49,2\n', ';'],
    ['semicolons below lines of prose', 'Clinic, Quay, export\nof 3 May, all\n\nid;w\nA;70,5\nB;71\nC;72\nD;73\n', ';'],
    ['commas with prose in quotes', 'id,note\nA,"a; b; c"\nB,"d; e; f"\n', ','],
    ['commas with semicolons in every note', 'id,w,note\nA,70,a; b\nB,71,c; d\nC,72,e; f\n', ','],
    ['one column', 'id\nA\nB\n', ','],
  ])('is found: %s', (_, text, delimiter) => {
    expect(detectDelimiter(text, true)).toBe(delimiter);
  });

  test('is the one that a line for spreadsheets names, which is left out and counted', async () => {
    const table = await tableOf('sep=|\r\na,b|c\r\n1,2|3\r\n');
    expect(table?.delimiter).toBe('|');
    expect(await rowsOf(table)).toEqual([
      { line: 2, cells: ['a,b', 'c'] },
      { line: 3, cells: ['1,2', '3'] },
    ]);
  });
});

describe('the encoding', () => {
  const TEXT = 'id,note\r\nA,Zoë – größer “two” €\r\n';
  const CELLS = [
    ['id', 'note'],
    ['A', 'Zoë – größer “two” €'],
  ];
  // Windows-1252: ë 0xEB, – 0x96, ö 0xF6, ß 0xDF, “ 0x93, ” 0x94, € 0x80 (WHATWG Encoding, index windows-1252).
  const PAGE: Readonly<Record<string, number>> = {
    ë: 0xeb,
    '–': 0x96,
    ö: 0xf6,
    ß: 0xdf,
    '“': 0x93,
    '”': 0x94,
    '€': 0x80,
  };
  const page = (text: string) => Uint8Array.from(text, (sign) => PAGE[sign] ?? sign.charCodeAt(0));
  const utf8 = (text: string) => new TextEncoder().encode(text);

  test.each([
    ['UTF-8', utf8(TEXT), 'UTF-8'],
    ['UTF-8 with a mark', utf8(`\uFEFF${TEXT}`), 'UTF-8'],
    ['UTF-16LE with a mark', utf16(TEXT, true, true), 'UTF-16LE'],
    ['UTF-16BE with a mark', utf16(TEXT, false, true), 'UTF-16BE'],
    ['UTF-16LE without one', utf16(TEXT, true, false), 'UTF-16LE'],
    ['UTF-16BE without one', utf16(TEXT, false, false), 'UTF-16BE'],
    ['Windows-1252', page(TEXT), 'Windows-1252'],
  ])('%s is recognised and read', async (_, bytes, encoding) => {
    const table = await tableOf(bytes);
    expect(table?.encoding).toBe(encoding);
    expect(await cellsOf(table)).toEqual(CELLS);
  });

  test('is not called UTF-8 before the last byte was seen', async () => {
    const filler = 'A,plain text of no particular interest\r\n'.repeat(150_000);
    const table = await tableOfBlob(new Blob([utf8(filler), page('B,größer\r\n')]));
    expect(table?.encoding).toBe('Windows-1252');
    expect((await rowsOf(table)).at(-1)?.cells).toEqual(['B', 'größer']);
  });

  test('may change between lines where two exports were joined: each line is read by itself', async () => {
    const joined = new Blob([utf8('id,note\nA,größer\nB,Zoë\nC,ß\n'), page('D,größer\n')]);
    const table = await tableOfBlob(joined);
    expect(table?.encoding).toBe('UTF-8 and Windows-1252');
    expect((await cellsOf(table)).slice(1).map((cells) => cells[1])).toEqual(['größer', 'Zoë', 'ß', 'größer']);
  });

  test('holds across the border of two pieces of the file', async () => {
    const line = `${'€'.repeat(1365)},1\n`; // 4098 bytes: no piece of 4 MiB ends with a line or a character
    const rows = await cellsOf(await tableOfBlob(new Blob([utf8(line.repeat(2100))])));
    expect(rows.length).toBe(2100);
    expect(rows.every(([text]) => text === '€'.repeat(1365))).toBe(true);
  });

  test('of bytes that are no text is none', async () => {
    expect(await tableOf(Uint8Array.from({ length: 3000 }, (_, index) => (index * 7919) % 31))).toBeNull();
  });
});

test('a reading that is cancelled rejects with an AbortError and tells its bytes', async () => {
  const table = await tableOfBlob(new Blob(['a,b\n', '1,2\n'.repeat(3_000_000)]));
  const controller = new AbortController();
  const seen: number[] = [];
  const reading = (async () => {
    for await (const batch of table?.rows({ signal: controller.signal, onBytes: (bytes) => seen.push(bytes) }) ?? []) {
      expect(batch.length).toBeLessThanOrEqual(5000);
      if (seen.length > 1) controller.abort();
    }
  })();
  await expect(reading).rejects.toMatchObject({ name: 'AbortError' });
  expect(seen).toEqual([4 * 1024 * 1024, 8 * 1024 * 1024]);
});
