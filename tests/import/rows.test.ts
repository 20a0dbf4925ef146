import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FindingKind } from '../../lib/import/plan';
import { NO_ANSWERS } from '../../lib/import/import-input';
import { codes, csv, day, planOf, planOfFiles, planOfRow, ROW, useEngine, type Options } from './judged';

const engine = useEngine();
const demo = readFileSync(new URL('../../sample-data/visits.csv', import.meta.url), 'utf8');
const readMe = readFileSync(new URL('../../sample-data/README.md', import.meta.url), 'utf8');

const states = async (): Promise<readonly unknown[]> =>
  (await engine().query('SELECT status FROM test_status ORDER BY file_no, line_no')).map((row) => row['status']);

describe('duplicates', () => {
  test('rows equal in every column are one reading, reported once each', async () => {
    const plan = await planOf(engine(), csv([ROW, ROW, { ...ROW, reading: '2' }, ROW]));
    expect(await states()).toEqual(['accepted', 'duplicate', 'accepted', 'duplicate']);
    expect([plan.rows, plan.accepted, plan.duplicates]).toEqual([4, 2, 2]);
    expect(plan.findings.map(({ line, kind }) => [line, kind])).toEqual([
      [3, 'duplicate'],
      [5, 'duplicate'],
    ]);
  });

  test('spaces around a cell make no new reading', async () => {
    await planOf(engine(), csv([ROW, { ...ROW, weight_kg: ' 70 ' }]));
    expect(await states()).toEqual(['accepted', 'duplicate']);
  });

  test('a row that is refused is refused again, and hides no later row', async () => {
    await planOf(engine(), csv([{ ...ROW, r_ohm: '0' }, { ...ROW, r_ohm: '0' }, ROW]));
    expect(await states()).toEqual(['refused', 'refused', 'accepted']);
  });

  test('the same file twice holds no new row', async () => {
    const content = csv([ROW, { ...ROW, visit_date: '2025-03-05' }]);
    const plan = await planOfFiles(
      engine(),
      ['a.csv', 'b.csv'].map((name) => ({ name, content })),
    );
    expect([plan.rows, plan.accepted, plan.duplicates]).toEqual([4, 2, 2]);
  });

  test('a file that cannot be read leaves the others as they are', async () => {
    const plan = await planOfFiles(engine(), [
      { name: 'a.csv', content: csv([ROW]) },
      { name: 'b.csv', content: '' },
    ]);
    expect([plan.accepted, plan.failedFiles.map(({ name }) => name)]).toEqual([1, ['b.csv']]);
  });
});

describe('a question', () => {
  const answered = (decision: 'keep' | 'refuse', value = '700'): Options => ({
    answers: {
      ...NO_ANSWERS,
      farOff: [{ client: 'C-1', visitDate: '2025-03-04', column: 'weight_kg', value, decision }],
    },
  });

  test('sets its row aside until it is answered', async () => {
    const plan = await planOfRow(engine(), { weight_kg: '700' });
    expect([plan.accepted, plan.held, plan.clients, plan.firstVisit]).toEqual([0, 1, 0, null]);
    expect(plan.findings.map(({ kind, client, visitDate, value }) => [kind, client, visitDate, value])).toEqual([
      ['question', 'C-1', '2025-03-04', '700'],
    ]);
  });

  test('answered with keep accepts the row, with a warning', async () => {
    const plan = await planOfRow(engine(), { weight_kg: '700' }, answered('keep'));
    expect([plan.accepted, plan.held, ...codes(plan)]).toEqual([1, 0, 'warning far_off weight_kg']);
    expect(plan.findings[0]?.message).toBe('weight_kg is unusual and was kept as it is, by an answer.');
  });

  test('answered with refuse refuses the row', async () => {
    const plan = await planOfRow(engine(), { weight_kg: '700' }, answered('refuse'));
    expect([plan.refused, ...codes(plan)]).toEqual([1, 'refused far_off weight_kg']);
  });

  test('answered for another value stays a question', async () => {
    expect((await planOfRow(engine(), { weight_kg: '700' }, answered('keep', '701'))).held).toBe(1);
  });

  test('answered for one cell stays a question for the other', async () => {
    const plan = await planOfRow(engine(), { weight_kg: '700', height_cm: '17' }, answered('keep'));
    expect([plan.held, ...codes(plan)]).toEqual([1, 'question far_off height_cm', 'warning far_off weight_kg']);
  });

  test('may be accepted for a whole run', async () => {
    const plan = await planOfRow(engine(), { weight_kg: '700', xc_ohm: '501' }, { acceptQuestions: true });
    expect([plan.accepted, plan.held]).toEqual([1, 0]);
    expect(codes(plan)).toContain('warning far_off weight_kg');
  });
});

describe('the demo clinic', () => {
  test('is judged as its page says, row by row', async () => {
    const plan = await planOf(engine(), demo, { today: day('2026-01-02') });
    const rows = Number(/\| rows in the file +\| (\d+)/.exec(readMe)?.[1]);
    const planted = [
      ...readMe.matchAll(/^\| (\d+) +\|[^|]+\|[^|]+\| (refused|set aside|duplicate|accepted with a warning) +\|$/gm),
    ];
    const stated = planted.map(([, line, state]) => `${String(line)} ${String(state)}`).sort();
    const word: Readonly<Partial<Record<FindingKind, string>>> = {
      refused: 'refused',
      question: 'set aside',
      duplicate: 'duplicate',
      warning: 'accepted with a warning',
    };
    expect(stated.length).toBeGreaterThan(10);
    expect(plan.findings.map(({ kind, line }) => `${String(line)} ${String(word[kind])}`).sort()).toEqual(stated);
    const count = (state: string): number => stated.filter((text) => text.endsWith(state)).length;
    expect([plan.rows, plan.refused, plan.held, plan.duplicates, plan.warnings]).toEqual([
      rows,
      ...['refused', 'set aside', 'duplicate', 'warning'].map(count),
    ]);
    expect(plan.accepted).toBe(rows - count('refused') - count('set aside') - count('duplicate'));
    expect(plan.files[0]?.unknownColumns).toEqual(['room']);
  });

  test('has the clients that its page states, once two spellings are one', async () => {
    const settings = JSON.parse(readFileSync(new URL('../../sample-data/settings.json', import.meta.url), 'utf8')) as {
      answers: readonly { kind: string; ids?: readonly string[]; client: string }[];
    };
    const aliases = settings.answers.flatMap(({ ids, client }) => (ids ?? []).map((id) => ({ id, client })));
    expect(aliases.length).toBeGreaterThan(0);
    const plan = await planOf(engine(), demo, { today: day('2026-01-02'), answers: { ...NO_ANSWERS, aliases } });
    expect(plan.clients).toBe(Number(/\| clients +\| (\d+)/.exec(readMe)?.[1]));
  });
});

describe('whatever happens to a file', () => {
  const lines = demo.split('\n').slice(0, 201);
  const piece = fc.constantFrom(
    ',',
    '"',
    '\n',
    '\r',
    ';',
    '\u0000',
    '-',
    '0',
    '\uFEFF',
    '""',
    "'",
    ',,,,',
    '1e999',
    '\uD800',
  );
  const edit = fc.record({ place: fc.double({ min: 0, max: 1, noNaN: true }), cut: fc.nat(12), piece });

  const edited = (edits: readonly { place: number; cut: number; piece: string }[], copy: number): string => {
    let text = lines.join('\n').replaceAll('\nOM-', `\nCopy ${String(copy)} OM-`);
    const header = lines[0]?.length ?? 0;
    for (const { place, cut, piece: inserted } of edits) {
      const at = header + 1 + Math.floor(place * (text.length - header - 1));
      text = text.slice(0, at) + inserted + text.slice(at + cut);
    }
    return text;
  };

  test('each row is accepted, set aside, a duplicate or refused, and every row that is not accepted says why', async () => {
    const edits = fc.array(fc.array(edit, { minLength: 1, maxLength: 12 }), { minLength: 5, maxLength: 5 });
    await fc.assert(
      fc.asyncProperty(edits, async (copies) => {
        const files = copies.map((each, copy) => ({ name: `${String(copy)}.csv`, content: edited(each, copy) }));
        const plan = await planOfFiles(engine(), files, { today: day('2026-01-02') });
        expect(plan.accepted + plan.held + plan.duplicates + plan.refused).toBe(plan.rows);
        expect(plan.accepted).toBeGreaterThan(600);
        const explained = new Set(
          plan.findings.filter(({ kind }) => kind !== 'warning').map(({ file, line }) => `${file} ${String(line)}`),
        );
        expect(explained.size).toBe(plan.rows - plan.accepted);
        for (const { line, file, message, remedy } of plan.findings) {
          const text = files.find(({ name }) => name === file)?.content ?? '';
          expect(line).toBeGreaterThan(1);
          expect(line).toBeLessThanOrEqual(text.split(/\r\n?|\n/).length);
          expect(message).not.toBe('');
          expect(remedy).not.toBe('');
        }
      }),
      { seed: 20250630, numRuns: 12 },
    );
  });
});
