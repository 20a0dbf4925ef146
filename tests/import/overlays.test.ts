import { describe, expect, test } from 'vitest';
import { DamagedFile, type RawRow, type RawTable } from '../../lib/formats/raw-table';
import { canonicalMapping } from '../../lib/import/canonical-mapping';
import { NO_ANSWERS, type ImportInput } from '../../lib/import/import-input';
import { judge } from '../../lib/import/judge';
import { acceptedRows, rowsOfClient } from '../../lib/import/kept-rows';
import type { Progress } from '../../lib/core/progress';
import { codes, csv, gathered, inputsOfFiles, PLAIN, planOf, planOfFiles, ROW, TODAY, useEngine } from './judged';

const engine = useEngine();

const at = (line: number) => ({ source: 'visits.csv/', line, part: 0 });
const ROWS = [ROW, { ...ROW, client_id: 'C-2', r_ohm: '0' }, { ...ROW, client_id: 'C-3' }];
const statuses = async () =>
  (await engine().query('SELECT status FROM test_status ORDER BY order_no')).map((row) => row['status']);

describe('what the clinic lays over its files', () => {
  test('a corrected cell is judged as corrected, the file’s own text is told', async () => {
    const plan = await planOf(engine(), csv(ROWS), {
      corrections: [
        { row: at(2), column: 'r_ohm', to: '510' },
        { row: at(3), column: 'r_ohm', to: '505' },
        { row: at(4), column: 'weight_kg', to: '' },
        { row: at(4), column: 'visit_date', to: '2025-03-05' },
        { row: { ...at(2), source: 'another/' }, column: 'r_ohm', to: '1' },
      ],
    });
    expect([plan.accepted, plan.refused, plan.corrected]).toEqual([3, 0, 4]);
    expect(plan.findings.map(({ line, kind, code, column, value }) => [line, kind, code, column, value])).toEqual([
      [2, 'changed', 'corrected', 'r_ohm', '500'],
      [3, 'changed', 'corrected', 'r_ohm', '0'],
      [4, 'changed', 'corrected', 'visit_date', '2025-03-04'],
      [4, 'changed', 'corrected', 'weight_kg', '70'],
    ]);
    expect(plan.findings[0]?.message).toContain('read as “510”');
    expect(await engine().query('SELECT v_visit_date, v_weight_kg, v_r_ohm FROM test_typed ORDER BY line_no')).toEqual([
      { v_visit_date: '2025-03-04', v_weight_kg: 70, v_r_ohm: 510 },
      { v_visit_date: '2025-03-04', v_weight_kg: 70, v_r_ohm: 505 },
      { v_visit_date: '2025-03-05', v_weight_kg: null, v_r_ohm: 500 },
    ]);
  });

  test('a correction can be wrong too, and is refused for it', async () => {
    const plan = await planOf(engine(), csv([ROW]), { corrections: [{ row: at(2), column: 'r_ohm', to: 'five' }] });
    expect([plan.refused, codes(plan)]).toEqual([1, ['refused unreadable_number r_ohm']]);
  });

  test('a row that was set aside stays out and says so', async () => {
    const plan = await planOf(engine(), csv(ROWS), { setAside: [at(2)] });
    expect([await statuses(), plan.setAside, plan.clients]).toEqual([['set-aside', 'refused', 'accepted'], 1, 1]);
    expect(codes(plan)).toEqual(['set-aside set-aside client_id', 'refused not_positive r_ohm']);
  });

  test('people who were erased stay out, under every spelling, without a word of who they are', async () => {
    const asked: string[] = [];
    const erased = {
      isErased: (client: string) => {
        asked.push(client);
        return client === 'C-2';
      },
    };
    const rows = [
      ...ROWS,
      { ...ROW, client_id: 'two', visit_date: '2025-03-05' },
      { ...ROW, visit_date: '2025-03-06' },
    ];
    const answers = { ...NO_ANSWERS, aliases: [{ id: 'two', client: 'C-2' }] };
    const plan = await planOf(engine(), csv(rows), { erased, answers });
    expect([await statuses(), plan.erased]).toEqual([['accepted', 'erased', 'accepted', 'erased', 'accepted'], 2]);
    expect(asked.toSorted()).toEqual(['C-1', 'C-2', 'C-2', 'C-3', 'two']);
    expect(
      plan.findings.map(({ line, code, client, visitDate, value }) => [line, code, client, visitDate, value]),
    ).toEqual([
      [3, 'erased', null, null, ''],
      [5, 'erased', null, null, ''],
    ]);
    expect(await rowsOfClient(engine(), 'C-2', 'test_')).toEqual([]);
  });

  test('rows = accepted + held + duplicates + refused + set aside + erased', async () => {
    const rows = [...ROWS, ROW, { ...ROW, client_id: 'C-4', height_cm: '17' }, { ...ROW, client_id: 'C-5' }];
    const plan = await planOf(engine(), csv(rows), {
      setAside: [at(4)],
      erased: { isErased: (client) => client === 'C-5' },
    });
    const { accepted, held, duplicates, refused, setAside, erased } = plan;
    expect([plan.rows, accepted, held, duplicates, refused, setAside, erased]).toEqual([6, 1, 1, 1, 1, 1, 1]);
  });
});

describe('the rows of a client', () => {
  test('are given under one id with their corrections, their states and what was kept unused', async () => {
    const rows = [
      { ...ROW, Room: '3' },
      { ...ROW, client_id: 'c1', visit_date: '2025-03-05', r_ohm: '0', Room: '4' },
      { ...ROW, client_id: 'C-2', Room: '5' },
    ];
    await planOf(engine(), csv(rows), {
      answers: { ...NO_ANSWERS, aliases: [{ id: 'c1', client: 'C-1' }] },
      corrections: [{ row: at(2), column: 'weight_kg', to: '71' }],
    });
    const found = await rowsOfClient(engine(), 'C-1', 'test_');
    expect(
      found.map(({ row, file, status, unknown, corrected }) => ({ row, file, status, unknown, corrected })),
    ).toEqual([
      { row: at(2), file: 'visits.csv', status: 'accepted', unknown: { Room: '3' }, corrected: ['weight_kg'] },
      { row: at(3), file: 'visits.csv', status: 'refused', unknown: { Room: '4' }, corrected: [] },
    ]);
    expect(found.map(({ cells }) => [cells['client_id'], cells['weight_kg'], cells['r_ohm'], cells['note']])).toEqual([
      ['C-1', '71', '500', ''],
      ['C-1', '70', '0', ''],
    ]);
    const accepted = await gathered(acceptedRows(engine(), { prefix: 'test_' }));
    expect(accepted.map(({ cells, unknown }) => [cells['client_id'], unknown['Room']])).toEqual([
      ['C-1', '3'],
      ['C-2', '5'],
    ]);
  });
});

const HEADER = Object.keys(ROW);

const tableOf = (rows: (line: number) => AsyncIterable<readonly RawRow[]>): ImportInput => {
  const table: RawTable = {
    name: '',
    format: 'CSV',
    encoding: 'UTF-8',
    delimiter: ',',
    headed: false,
    rows: () => rows(1),
  };
  const mapping = canonicalMapping(HEADER, 1);
  const sha256 = 'a'.repeat(64);
  return { source: 's/', name: 'broken.csv', sha256, bytes: 9, table, mapping, isNew: true, importedOn: TODAY };
};

const manyRows = async function* (count: number, end: () => void): AsyncGenerator<readonly RawRow[]> {
  yield [{ line: 1, cells: HEADER }];
  for (let start = 0; start < count; start += 5_000) {
    await Promise.resolve();
    yield Array.from({ length: 5_000 }, (_, index) => ({
      line: start + index + 2,
      cells: [`B-${String(start + index)}`, '2025-03-04', '70', '500', '55'],
    }));
  }
  end();
};

describe('a long import', () => {
  test('of which a table breaks in the middle takes the other files and nothing of that one', async () => {
    const broken = tableOf(() =>
      manyRows(30_000, () => {
        throw new DamagedFile('the bytes end');
      }),
    );
    const { inputs } = await inputsOfFiles([{ name: 'whole.csv', content: csv([ROW]) }]);
    const plan = await judge(engine(), [broken, ...inputs], PLAIN);
    expect(plan.ok && [plan.value.rows, plan.value.accepted, plan.value.findingCount]).toEqual([1, 1, 0]);
    expect(plan.ok && plan.value.failedFiles.map(({ name, error }) => [name, error.code])).toEqual([
      ['broken.csv', 'damaged'],
    ]);
    expect(plan.ok && plan.value.files.map(({ name }) => name)).toEqual(['whole.csv']);
    const alone = await judge(engine(), [broken], PLAIN);
    expect(!alone.ok && alone.error.code).toBe('damaged');
  });

  test('tells how far it is and stops where it is told to', async () => {
    const controller = new AbortController();
    const told: Progress[] = [];
    const onProgress = (progress: Progress): void => {
      told.push(progress);
      if (progress.rows >= 25_000) controller.abort();
    };
    const endless = tableOf(() => manyRows(1_000_000_000, () => undefined));
    await expect(judge(engine(), [endless], { ...PLAIN, signal: controller.signal, onProgress })).rejects.toMatchObject(
      { name: 'AbortError' },
    );
    expect(told.at(-1)).toMatchObject({ step: 'reading', file: 'broken.csv', rows: 25_000 });
  });

  test('lists at most twenty thousand findings and counts them all', async () => {
    const odd = tableOf(async function* () {
      yield [{ line: 1, cells: HEADER }];
      await Promise.resolve();
      yield Array.from({ length: 21_000 }, (_, index) => ({
        line: index + 2,
        cells: [`B-${String(index)}`, '2025-03-04', '240', '500', '55'],
      }));
      yield [{ line: 30_000, cells: ['B', '2025-03-04', '500', '500', '55'] }];
    });
    const plan = await judge(engine(), [odd], PLAIN);
    expect(plan.ok && [plan.value.findings.length, plan.value.findingCount, plan.value.warnings]).toEqual([
      20_000, 21_001, 21_000,
    ]);
    expect(plan.ok && plan.value.findings.at(-1)).toMatchObject({ kind: 'question', line: 30_000 });
  });
});

describe('the fingerprint of a plan', () => {
  test('is the same for the same decision and another for any other', async () => {
    const files = [{ name: 'visits.csv', content: csv(ROWS) }];
    const print = async (options: Parameters<typeof planOfFiles>[2] = {}, given = files) =>
      (await planOfFiles(engine(), given, options)).fingerprint;
    const first = await print();
    expect(await print()).toBe(first);
    const others = [
      await print({ setAside: [at(2)] }),
      await print({ corrections: [{ row: at(3), column: 'r_ohm', to: '505' }] }),
      await print({ answers: { ...NO_ANSWERS, aliases: [{ id: 'C-3', client: 'C-1' }] } }),
      await print({ erased: { isErased: (client) => client === 'C-3' } }),
      await print({ ignoredColumns: new Set(['weight_kg']) }),
      await print({}, [{ name: 'visits.csv', content: csv([...ROWS, { ...ROW, client_id: 'C-9' }]) }]),
      await print({}, [{ name: 'other.csv', content: csv(ROWS) }]),
    ];
    expect(new Set([first, ...others]).size).toBe(others.length + 1);
  });
});
