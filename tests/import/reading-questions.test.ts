import { describe, expect, test } from 'vitest';
import { NO_ANSWERS } from '../../lib/import/import-input';
import { codes, csv, planOf, planOfFiles, ROW, useEngine, type Options } from './judged';

const engine = useEngine();

type Cells = Readonly<Record<string, string>>;

const states = async (): Promise<readonly string[]> =>
  (await engine().query('SELECT status, code FROM test_status ORDER BY file_no, line_no, part_no')).map(
    ({ status, code }) => (status === code ? String(status) : `${String(status)} ${String(code)}`),
  );

const files = (...contents: readonly (readonly Cells[])[]) =>
  contents.map((rows, index) => ({ name: `${String(index + 1)}.csv`, content: csv(rows) }));

describe('the same figures twice in one file', () => {
  const rows = [ROW, { ...ROW, note: 'again', waist_cm: '90' }];

  test('are a question, the later row waits', async () => {
    const plan = await planOf(engine(), csv(rows));
    expect(await states()).toEqual(['accepted', 'held']);
    expect(codes(plan)).toEqual(['question same_figures reading']);
    expect(plan.readings).toEqual([
      {
        kind: 'same-figures',
        key: 'same_figures routine//50.0/right/ 500.0/55.0/70.0// 500.0/55.0/70.0//',
        client: 'C-1',
        visitDate: '2025-03-04',
        rows: [2, 3].map((line) => ({ row: { source: 'visits.csv/', line, part: 0 }, file: 'visits.csv', line })),
        differs: [
          { column: 'waist_cm', cells: ['', '90'] },
          { column: 'note', cells: ['', 'again'] },
        ],
      },
    ]);
  });

  test.each([
    ['first', ['accepted', 'duplicate not_this_one']],
    ['last', ['duplicate not_this_one', 'accepted']],
    ['all', ['accepted', 'accepted']],
  ] as const)('answered with %s are decided, also when the file comes again', async (decision, expected) => {
    const key = (await planOf(engine(), csv(rows))).readings[0]?.key ?? null;
    const answers = { ...NO_ANSWERS, readings: [{ client: 'C-1', visitDate: '2025-03-04', key, decision }] };
    const plan = await planOf(engine(), csv(rows), { answers });
    expect([await states(), plan.readings]).toEqual([expected, []]);
    const again = rows.map((row) => ({ ...row, program: 'Walking' }));
    await planOfFiles(engine(), files([{ ...ROW, client_id: 'C-0' }, ...rows], again), { answers });
    expect((await states()).slice(-2)).toEqual(expected);
    const other = { ...answers, readings: [{ client: 'C-1', visitDate: '2025-03-04', key: 'another', decision }] };
    expect((await planOf(engine(), csv(rows), { answers: other })).held).toBe(1);
  });

  test('are two readings where both times are known and differ, or the numbers do', async () => {
    await planOf(
      engine(),
      csv([
        { ...ROW, visit_time: '08:00' },
        { ...ROW, visit_time: '08:10' },
      ]),
    );
    expect(await states()).toEqual(['accepted', 'accepted']);
    await planOf(
      engine(),
      csv([
        { ...ROW, reading: '1' },
        { ...ROW, reading: '2' },
      ]),
    );
    expect(await states()).toEqual(['accepted', 'accepted']);
  });

  test('are accepted for a whole run', async () => {
    const options: Options = { acceptQuestions: true };
    expect(await planOf(engine(), csv(rows), options)).toMatchObject({ accepted: 2, held: 0, readings: [] });
  });
});

describe('one reading number with different figures', () => {
  const rows = [
    { ...ROW, reading: '1' },
    { ...ROW, reading: '1', r_ohm: '512' },
  ];

  test('is a question in one file and across files, answered once for all', async () => {
    const plan = await planOf(engine(), csv(rows));
    expect([await states(), codes(plan)]).toEqual([['accepted', 'held'], ['question same_number reading']]);
    const [question] = plan.readings;
    expect(question).toMatchObject({ kind: 'same-number', differs: [{ column: 'r_ohm', cells: ['500', '512'] }] });
    const [first, second] = rows;
    const apart = await planOfFiles(
      engine(),
      files(first === undefined ? [] : [first], second === undefined ? [] : [second]),
    );
    expect([await states(), apart.readings[0]?.key]).toEqual([['accepted', 'held'], question?.key]);
    const answers = {
      ...NO_ANSWERS,
      readings: [{ client: 'C-1', visitDate: '2025-03-04', key: null, decision: 'last' as const }],
    };
    await planOf(engine(), csv(rows), { answers });
    expect(await states()).toEqual(['duplicate not_this_one', 'accepted']);
  });

  test.each<[string, Cells]>([
    ['time', { visit_time: '09:00' }],
    ['frequency', { frequency_khz: '5' }],
    ['device', { device_id: 'V' }],
  ])('is no question at another %s', async (_, cells) => {
    await planOf(
      engine(),
      csv([
        { ...ROW, reading: '1' },
        { ...ROW, reading: '1', r_ohm: '512', ...cells },
      ]),
    );
    expect(await states()).toEqual(['accepted', 'accepted']);
  });
});
