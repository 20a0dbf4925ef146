import { strToU8, zipSync } from 'fflate';
import { parquetWriteBuffer } from 'hyparquet-writer';
import { describe, expect, test } from 'vitest';
import type { RawTable } from '../../lib/formats/raw-table';
import { openTables } from '../../lib/import/open-tables';
import { makeWorkbook } from '../formats/make-workbook';
import { makeXport, makeXportMember } from '../formats/make-xport';
import { cellsOf } from '../formats/read-table';

type Content = string | Uint8Array<ArrayBuffer>;

const opened = async (content: Content, name = 'visits.csv'): Promise<readonly RawTable[]> => {
  const result = await openTables(name, new Blob([content]));
  if (!result.ok) throw new Error(`${result.error.code}: ${result.error.message}`);
  return result.value;
};

const refused = async (content: Content, name = 'visits.csv', limitBytes?: number) => {
  const result = await openTables(name, new Blob([content]), { limitBytes });
  if (result.ok) throw new Error('it was opened');
  return result.error;
};

const CSV = 'client_id,weight_kg\nA,70.3\n';
const WORKBOOK = makeWorkbook({
  sheets: {
    visits: '<row><c t="inlineStr"><is><t>id</t></is></c></row>',
    empty: '',
    more: '<row><c><v>7</v></c></row>',
  },
});
const PARQUET = new Uint8Array(parquetWriteBuffer({ columnData: [{ name: 'id', data: ['A'], type: 'STRING' }] }));
const XPORT = makeXport(makeXportMember('BIX', [{ name: 'ID', text: 3 }], [['A']]));
const ROWS = '{"driftline":"rows","version":1}\n[1,"id"]\n[5,"A"]\n';
const OBSERVATION = `{"resourceType":"Observation","status":"final","code":{"coding":[{"system":"http://loinc.org","code":"29463-7"}]},"subject":{"reference":"Patient/A"},"effectiveDateTime":"2025-03-04","valueQuantity":{"value":70.3,"code":"kg","system":"http://unitsofmeasure.org"}}`;

describe('a file is opened by what it holds, not by its name', () => {
  test.each([
    [
      'text',
      CSV,
      'CSV',
      [''],
      [
        ['client_id', 'weight_kg'],
        ['A', '70.3'],
      ],
    ],
    ['a workbook', WORKBOOK, 'XLSX', ['visits', 'more'], [['id']]],
    ['Parquet', PARQUET, 'Parquet', [''], [['id'], ['A']]],
    ['a SAS transport file', XPORT, 'XPORT', [''], [['ID'], ['A']]],
    ['rows written anew', ROWS, 'rows', [''], [['id'], ['A']]],
  ])('%s', async (_, content, format, names, cells) => {
    const tables = await opened(content, 'export.dat');
    expect(tables.map(({ name }) => name)).toEqual(names);
    expect(tables[0]?.format).toBe(format);
    expect(await cellsOf(tables[0])).toEqual(cells);
  });

  test('FHIR', async () => {
    const [table] = await opened(OBSERVATION, 'export.csv');
    expect([table?.format, table?.headed]).toEqual(['FHIR', true]);
    const [header = [], row = []] = await cellsOf(table);
    expect([row[header.indexOf('client_id')], row[header.indexOf('weight_kg')]]).toEqual(['A', 70.3]);
  });

  test('a text whose first column begins with BM, II or MM is no picture', async () => {
    for (const start of ['BMI', 'II', 'MM', 'PK', 'PAR']) expect((await opened(`${start},b\n1,2\n`)).length).toBe(1);
  });

  test('a text in brackets is no JSON', async () => {
    expect(await cellsOf((await opened('[id],[w]\nA,70\n'))[0])).toEqual([
      ['[id]', '[w]'],
      ['A', '70'],
    ]);
  });
});

describe('what has to be held whole', () => {
  const bundle = (indent: number): string =>
    JSON.stringify({ resourceType: 'Bundle', entry: [{ resource: JSON.parse(OBSERVATION) as object }] }, null, indent);

  test.each([
    ['a Bundle in one line', bundle(0), /one JSON text of more than 1 MB/, /^Save it as NDJSON/],
    ['a Bundle over many lines', bundle(2), /one JSON text of more than 1 MB/, /^Save it as NDJSON/],
    ['a workbook', WORKBOOK, /part of the workbook visits\.csv unpacks to more than 1 MB/, /^Save the sheet as CSV/],
  ])('is too large above a limit, and the way out is said: %s', async (_, content, message, remedy) => {
    expect((await opened(content)).length).toBeGreaterThan(0);
    expect(await refused(content, 'visits.csv', 64)).toEqual({
      code: 'too_large',
      message: expect.stringMatching(message) as string,
      remedy: expect.stringMatching(remedy) as string,
    });
  });

  test('is no NDJSON, however long', async () => {
    const lines = Array.from({ length: 3 }, () => OBSERVATION).join('\n');
    const result = await openTables('visits.ndjson', new Blob([lines]), { limitBytes: OBSERVATION.length + 1 });
    expect(result.ok).toBe(true);
  });
});

describe('a zip', () => {
  test('of several files, folders and a workbook gives a table for each', async () => {
    const bytes = zipSync({
      'a.csv': strToU8(CSV),
      'site 2/b.csv': strToU8(CSV),
      'book.xlsx': WORKBOOK,
      'one.parquet': PARQUET,
      'folder/': new Uint8Array(),
      '__MACOSX/._a.csv': strToU8('x'),
      '.DS_Store': strToU8('x'),
      'README.txt': strToU8('Two exports.'),
      'plot.png': Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
      'nothing.csv': new Uint8Array(),
    });
    const tables = await opened(bytes);
    expect(tables.map(({ name, format }) => [name, format])).toEqual([
      ['a.csv', 'CSV'],
      ['site 2/b.csv', 'CSV'],
      ['book.xlsx/visits', 'XLSX'],
      ['book.xlsx/more', 'XLSX'],
      ['one.parquet', 'Parquet'],
    ]);
    expect(await cellsOf(tables[1])).toEqual([
      ['client_id', 'weight_kg'],
      ['A', '70.3'],
    ]);
  });

  test('inside a zip is refused, and names both', async () => {
    const error = await refused(zipSync({ 'inner.zip': zipSync({ 'a.csv': strToU8(CSV) }) }), 'outer.zip');
    expect([error.code, error.message]).toEqual(['nested_zip', expect.stringContaining('outer.zip › inner.zip')]);
  });

  test('with a password is refused', async () => {
    const bytes = zipSync({ 'a.csv': strToU8(CSV) });
    const directory = bytes.findIndex((_, at) => bytes[at] === 0x50 && bytes[at + 1] === 0x4b && bytes[at + 2] === 1);
    bytes[directory + 8] = 1;
    expect((await refused(bytes)).code).toBe('locked');
  });

  test('that would unpack to more than a gigabyte is refused before it is unpacked', async () => {
    const bytes = zipSync({ 'a.csv': strToU8(CSV), 'b.csv': strToU8(CSV) });
    const view = new DataView(bytes.buffer, bytes.byteOffset);
    for (let at = 0; at + 46 < bytes.length; at += 1)
      if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, 600 * 1024 ** 2, true);
    expect((await refused(bytes)).code).toBe('too_large');
  });

  test.each([
    ['nothing', {}],
    ['folders alone', { 'a/': new Uint8Array() }],
    ['a document alone', { 'a.pdf': strToU8('%PDF-1.7') }],
  ])('of %s holds no table', async (_, files) => {
    expect((await refused(zipSync(files))).code).toBe('zip_nothing');
  });

  test('with a damaged workbook is refused whole, so that nothing is missed', async () => {
    const cut = WORKBOOK.slice(0, WORKBOOK.length - 30);
    expect((await refused(zipSync({ 'a.csv': strToU8(CSV), 'b.xlsx': cut }))).code).toBe('damaged');
  });
});

describe('what cannot be read is named', () => {
  const zipOf = (files: Readonly<Record<string, string>>) =>
    zipSync(Object.fromEntries(Object.entries(files).map(([path, text]) => [path, strToU8(text)])));

  test.each([
    ['no bytes', '', 'empty'],
    ['blanks', ' \r\n\t\n', 'empty'],
    ['separators alone', ',,,\n,,,\n', 'empty'],
    ['a workbook without rows', makeWorkbook({ sheets: { a: '' } }), 'empty'],
    [
      'an old or locked workbook',
      Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, 0, 0]),
      'old_workbook',
    ],
    [
      'a workbook of another program',
      zipOf({ mimetype: 'application/vnd.oasis.opendocument.spreadsheet', 'content.xml': '<x/>' }),
      'other_workbook',
    ],
    ['a binary workbook', zipOf({ '[Content_Types].xml': '<x/>', 'xl/workbook.bin': 'x' }), 'other_workbook'],
    ['a PDF', '%PDF-1.7\n', 'pdf'],
    ['a picture', Uint8Array.from([0xff, 0xd8, 0xff, 0xe0]), 'picture'],
    ['a gzip', Uint8Array.from([0x1f, 0x8b, 8, 0]), 'packed'],
    ['a data set of a statistics program', '$FL2@(#) data file', 'other_program'],
    ['SAS transport of version 8', 'HEADER RECORD*******LIBV8   HEADER RECORD!!!!!!!', 'newer_transport'],
    ['a web page called a workbook', '\n<!DOCTYPE html><html><table><tr><td>1</td></tr></table>', 'web_page'],
    ['a table of a web page', '<table border="1"><tr><td>1</td></tr></table>', 'web_page'],
    ['XML', '<?xml version="1.0"?><Workbook xmlns="urn:x"></Workbook>', 'xml'],
    ['other JSON', '[{"client":"A"}]', 'json'],
    ['FHIR without observations', '{"resourceType":"Patient","id":"A"}', 'fhir_nothing'],
    ['binary', Uint8Array.from({ length: 2000 }, (_, index) => (index * 73) % 29), 'binary'],
    ['Parquet cut off', PARQUET.slice(0, 60), 'damaged'],
    ['a zip cut off', WORKBOOK.slice(0, 200), 'damaged'],
    ['a transport file cut off', XPORT.slice(0, 500), 'damaged'],
    ['FHIR cut off', OBSERVATION.slice(0, 200), 'damaged'],
  ])('%s', async (_, content, code) => {
    const error = await refused(content, 'May.xls');
    expect([error.code, error.message]).toEqual([code, expect.stringContaining('May.xls')]);
    expect(error.remedy).toMatch(/Nothing was changed\.$/);
  });
});

test('opening can be cancelled', async () => {
  await expect(openTables('a.csv', new Blob([CSV]), { signal: AbortSignal.abort() })).rejects.toMatchObject({
    name: 'AbortError',
  });
});
