import { describe, expect, test } from 'vitest';
import { NO_ANSWERS } from '../../lib/import/import-input';
import { csv, planOfFiles, ROW, useEngine } from './judged';

const engine = useEngine();

type Cells = Readonly<Record<string, string>>;

const states = async (): Promise<readonly string[]> =>
  (await engine().query('SELECT status, code FROM test_status ORDER BY file_no, line_no, part_no')).map(
    ({ status, code }) => (status === code ? String(status) : `${String(status)} ${String(code)}`),
  );

const files = (...contents: readonly (readonly Cells[])[]) =>
  contents.map((rows, index) => ({ name: `${String(index + 1)}.csv`, content: csv(rows) }));

const FULL = { ...ROW, program: 'Walking', program_end: '', device_id: 'U', reading: '1' };

describe('a reading that a later file holds again', () => {
  test('with a changed program end, note or added column is one reading: the later row counts', async () => {
    const plan = await planOfFiles(
      engine(),
      files(
        [FULL, { ...FULL, reading: '2', r_ohm: '502' }],
        [
          { ...FULL, program_end: '2025-06-01', note: 'ended', room: '3' },
          { ...FULL, reading: '2', r_ohm: '502.0', program_end: '2025-06-01', room: '3' },
        ],
      ),
    );
    expect(await states()).toEqual(['duplicate superseded', 'duplicate superseded', 'accepted', 'accepted']);
    expect([plan.accepted, plan.duplicates, plan.readings.length]).toEqual([2, 2, 0]);
    expect(plan.findings.map(({ file, code }) => [file, code])).toEqual([
      ['1.csv', 'superseded'],
      ['1.csv', 'superseded'],
    ]);
  });

  test.each<[string, Cells]>([
    ['figures', { r_ohm: '501' }],
    ['device', { device_id: 'V' }],
    ['frequency', { frequency_khz: '100' }],
    ['side', { side: 'left' }],
    ['purpose', { visit_purpose: 'repeat' }],
    ['day', { visit_date: '2025-03-05' }],
    ['number', { reading: '2' }],
    ['client', { client_id: 'C-2' }],
  ])('is another reading with another %s', async (_, cells) => {
    const first = { ...FULL, reading: cells['r_ohm'] === undefined ? '1' : '' };
    await planOfFiles(engine(), files([first], [{ ...first, ...cells, note: 'x' }]));
    expect(await states()).toEqual(['accepted', 'accepted']);
  });

  test('is another reading where both times are known and differ, and the same where one is unknown', async () => {
    await planOfFiles(engine(), files([{ ...ROW, visit_time: '08:00' }], [{ ...ROW, visit_time: '09:00' }]));
    expect(await states()).toEqual(['accepted', 'accepted']);
    await planOfFiles(engine(), files([{ ...ROW, visit_time: '08:00' }], [{ ...ROW, note: 'x' }]));
    expect(await states()).toEqual(['duplicate superseded', 'accepted']);
  });

  test('is found under two spellings of the client once they are one', async () => {
    await planOfFiles(engine(), files([ROW], [{ ...ROW, client_id: 'c1', note: 'x' }]), {
      answers: { ...NO_ANSWERS, aliases: [{ id: 'c1', client: 'C-1' }] },
    });
    expect(await states()).toEqual(['duplicate superseded', 'accepted']);
  });

  test('without R is known by weight and the exported composition', async () => {
    const exported = { client_id: 'C-1', visit_date: '2025-03-04', weight_kg: '70', ffm_kg: '50', fm_kg: '20' };
    await planOfFiles(
      engine(),
      files(
        [exported],
        [
          { ...exported, note: 'x' },
          { ...exported, ffm_kg: '51', note: 'x' },
        ],
      ),
    );
    expect(await states()).toEqual(['duplicate superseded', 'accepted', 'accepted']);
  });

  test('that cannot be used, or waits, takes no earlier one away', async () => {
    await planOfFiles(engine(), files([ROW], [{ ...ROW, height_cm: '17' }], [{ ...ROW, rested: 'perhaps' }]));
    expect(await states()).toEqual(['accepted', 'held', 'refused']);
  });

  test('three files over is the last one', async () => {
    await planOfFiles(engine(), files([ROW], [{ ...ROW, note: 'a' }], [{ ...ROW, note: 'b' }]));
    expect(await states()).toEqual(['duplicate superseded', 'duplicate superseded', 'accepted']);
  });

  test('keeps what the clinic corrected or set aside, whatever the later file says', async () => {
    const first = { source: '1.csv/', line: 2, part: 0 };
    const later = files([ROW, { ...ROW, visit_date: '2025-03-06' }], [{ ...ROW, note: 'x' }]);
    await planOfFiles(engine(), later, { corrections: [{ row: first, column: 'r_ohm', to: '510' }] });
    expect(await states()).toEqual(['accepted', 'accepted', 'duplicate superseded']);
    expect(await engine().query('SELECT v_r_ohm FROM test_typed WHERE file_no = 1 AND line_no = 2')).toEqual([
      { v_r_ohm: 510 },
    ]);
    await planOfFiles(engine(), later, { setAside: [first] });
    expect(await states()).toEqual(['set-aside', 'accepted', 'duplicate superseded']);
    await planOfFiles(engine(), files([{ ...ROW, r_ohm: '0' }], [{ ...ROW, r_ohm: '0' }]), {
      corrections: [{ row: first, column: 'r_ohm', to: '500' }],
    });
    expect(await states()).toEqual(['accepted', 'duplicate']);
  });
});
