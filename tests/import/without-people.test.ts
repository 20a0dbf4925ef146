import { zipSync, strToU8 } from 'fflate';
import { expect, test } from 'vitest';
import type { IsoDate } from '../../lib/core/iso-date';
import type { RawRow } from '../../lib/formats/raw-table';
import { inputsOf } from '../../lib/import/inputs-of';
import { openTables } from '../../lib/import/open-tables';
import { withoutPeople } from '../../lib/import/without-people';

const isZoe = (id: string): boolean => id === 'zoe';

const inputs = async (blob: Blob) => {
  const opened = await inputsOf([{ name: 'file', blob }], { importedOn: '2025-12-31' as IsoDate });
  expect(opened.failedFiles).toEqual([]);
  return opened.inputs;
};

const tablesOf = async (blob: Blob): Promise<Readonly<Record<string, readonly RawRow[]>>> => {
  const opened = await openTables('anew', blob);
  if (!opened.ok) throw new Error(opened.error.message);
  const tables: Record<string, RawRow[]> = {};
  for (const table of opened.value) {
    const rows: RawRow[] = [];
    for await (const batch of table.rows()) rows.push(...batch);
    tables[table.name] = rows;
  }
  return tables;
};

const csv = (...lines: readonly string[]): Blob => new Blob([lines.map((line) => `${line}\n`).join('')]);

test('a file without these people is left alone', async () => {
  const blob = csv('client_id,visit_date,weight_kg', 'a,2025-01-06,80');
  expect(await withoutPeople(await inputs(blob), { isGone: isZoe, corrections: [] })).toBeUndefined();
});

test('their rows go, every other row keeps its line and its cells, and the places are told', async () => {
  const blob = csv(
    'client_id,visit_date,weight_kg,own',
    'a,2025-01-06,80,x',
    'zoe,2025-01-06,60,y',
    '',
    'b,2025-01-06,"7,0",z',
  );
  const given = await inputs(blob);
  const anew = await withoutPeople(given, { isGone: isZoe, corrections: [] });
  if (anew === undefined) throw new Error('nothing was written');
  expect((await tablesOf(anew.blob))['']).toEqual([
    { line: 1, cells: ['client_id', 'visit_date', 'weight_kg', 'own'] },
    { line: 2, cells: ['a', '2025-01-06', '80', 'x'] },
    { line: 5, cells: ['b', '2025-01-06', '7,0', 'z'] },
  ]);
  expect(anew.gone).toEqual([{ source: given[0]?.source, line: 3 }]);
  expect([...anew.rows.values()]).toEqual([2]);
});

test('a record out of order goes if any of its cells names them, else it stays refused', async () => {
  const blob = csv('client_id,visit_date,weight_kg', 'a,2025-01-06,80', 'x,zoe', 'x,y', 'a,b,c,d');
  const anew = await withoutPeople(await inputs(blob), { isGone: isZoe, corrections: [] });
  if (anew === undefined) throw new Error('nothing was written');
  expect((await tablesOf(anew.blob))['']?.slice(2)).toEqual([
    { line: 4, cells: ['x', 'y'], trouble: 'broken_quote' },
    { line: 5, cells: ['a', 'b', 'c', 'd'], trouble: 'broken_quote' },
  ]);
});

test('a row belongs to whom the clinic corrected it to', async () => {
  const blob = csv('client_id,visit_date,weight_kg', 'zoe,2025-01-06,80', 'a,2025-01-06,60', 'a,2025-02-06,61');
  const given = await inputs(blob);
  const at = (line: number, to: string) => ({
    row: { source: given[0]?.source ?? '', line, part: 0 },
    column: 'client_id',
    to,
  });
  const anew = await withoutPeople(given, { isGone: isZoe, corrections: [at(2, 'a'), at(3, 'zoe')] });
  if (anew === undefined) throw new Error('nothing was written');
  expect((await tablesOf(anew.blob))['']?.slice(1).map(({ line, cells }) => [line, cells[0]])).toEqual([
    [2, 'a'],
    [4, 'a'],
  ]);
  expect([anew.gone.map(({ line }) => line), anew.settled.map(({ line }) => line)]).toEqual([[3], [2]]);
});

test('a file of several tables stays one, its tables under their names', async () => {
  const zip = zipSync({
    'north/visits.csv': strToU8('client_id,visit_date,weight_kg\na,2025-01-06,80\nzoe,2025-01-06,60\n'),
    'programs.csv': strToU8('client_id,program,program_start\nzoe,Walking,2025-01-06\na,Walking,2025-01-06\n'),
  });
  const given = await inputs(new Blob([zip]));
  const anew = await withoutPeople(given, { isGone: isZoe, corrections: [] });
  if (anew === undefined) throw new Error('nothing was written');
  const tables = await tablesOf(anew.blob);
  expect(Object.keys(tables).sort()).toEqual(given.map(({ table }) => table.name).sort());
  expect(Object.values(tables).flatMap((rows) => rows.map(({ cells }) => cells[0]))).toEqual([
    'client_id',
    'a',
    'client_id',
    'a',
  ]);
});

test('lines that are no rows go where a word of them is their id: above the header, comments, ids as formulas', async () => {
  const blob = csv(
    'Report for: zoe',
    'client_id,visit_date,weight_kg',
    'a,2025-01-06,80',
    '# zoe came late, twice',
    'End of report (zoe)',
    'End of report',
    '="zoe",2025-01-06',
    'x,"zoe',
  );
  const anew = await withoutPeople(await inputs(blob), { isGone: isZoe, corrections: [] });
  if (anew === undefined) throw new Error('nothing was written');
  expect(await anew.blob.text()).not.toContain('zoe');
  expect((await tablesOf(anew.blob))['']?.map(({ line, cells: [first] }) => [line, first])).toEqual([
    [2, 'client_id'],
    [3, 'a'],
    [6, 'End of report'],
  ]);
});

test('an id of given and family name is found in a record that is out of order', async () => {
  const blob = csv('client_id,visit_date,weight_kg', 'a,2025-01-06,80', 'Zoe,Miller', '# seen by Zoe Miller');
  const isGone = (id: string): boolean => id === 'Zoe Miller';
  const anew = await withoutPeople(await inputs(blob), { isGone, corrections: [] });
  expect(await anew?.blob.text()).not.toContain('Zoe');
});
