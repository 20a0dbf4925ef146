import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { RawTable } from '../../../lib/formats/raw-table';
import { openTables } from '../../../lib/import/open-tables';
import { mappingQuestions } from '../../../lib/import/mapping-questions';
import { answered, dialectOf, expectedRows, visitOf, writeDialect, type Dialect, type Visit } from './dialects';
import { asked, cellsOf, mappedRows, tableOf, understood } from './tables';

const opened = async (bytes: Uint8Array): Promise<RawTable> => {
  const tables = await openTables('visits.csv', new Blob([Uint8Array.from(bytes)]));
  const [table] = tables.ok ? tables.value : [];
  if (table === undefined) throw new Error(tables.ok ? 'no table' : tables.error.message);
  return table;
};

const imported = async (visits: readonly Visit[], dialect: Dialect) => {
  const table = await opened(writeDialect(visits, dialect));
  const { profile, mapping, questions } = await understood(table);
  const settled = questions.reduce((before, question) => answered(before, question, dialect), mapping);
  return {
    questions: asked(questions),
    open: asked(mappingQuestions(settled, profile)),
    rows: (await mappedRows(table, settled)).map(cellsOf),
  };
};

const visitsOf = fc.array(visitOf, { minLength: 1, maxLength: 8 });

describe('a file in any dialect', () => {
  test('gives the rows that were written, once its questions are answered', async () => {
    await fc.assert(
      fc.asyncProperty(visitsOf, dialectOf, async (visits, dialect) => {
        const { rows, open } = await imported(visits, dialect);
        expect(open).toEqual([]);
        expect(rows).toEqual(expectedRows(visits, dialect));
      }),
      { seed: 20_250_304, numRuns: 250 },
    );
  });

  test('whose dates could all be read both ways is never read without the question', async () => {
    const bothWays = visitOf.map((visit): Visit => ({
      ...visit,
      date: [visit.date[0], visit.date[1], 1 + (visit.date[2] % 12)],
    }));
    const numeric = dialectOf.map((dialect): Dialect => ({
      ...dialect,
      dates: dialect.dates === 'dmy' ? 'dmy' : 'mdy',
    }));
    await fc.assert(
      fc.asyncProperty(fc.array(bothWays, { minLength: 1, maxLength: 6 }), numeric, async (visits, dialect) => {
        expect((await imported(visits, dialect)).questions).toContain('date-order visit_date');
      }),
      { seed: 7, numRuns: 100 },
    );
  });

  test('whose sexes are digits is never read without the question', async () => {
    const coded = dialectOf.map((dialect): Dialect => ({ ...dialect, sexWords: { F: '0', M: '1' } }));
    const known = visitOf.map((visit): Visit => ({ ...visit, sex: visit.sex === '' ? 'F' : visit.sex }));
    await fc.assert(
      fc.asyncProperty(fc.array(known, { minLength: 1, maxLength: 6 }), coded, async (visits, dialect) => {
        expect((await imported(visits, dialect)).questions).toContain('words sex');
      }),
      { seed: 8, numRuns: 50 },
    );
  });

  test('whose weights could be kilograms or pounds is never read without the question', async () => {
    const heavy = visitOf.map((visit): Visit => ({ ...visit, weight: 700 + (visit.weight % 600) }));
    const unnamed = dialectOf.map((dialect): Dialect => ({ ...dialect, brackets: 'none' }));
    await fc.assert(
      fc.asyncProperty(fc.array(heavy, { minLength: 1, maxLength: 6 }), unnamed, async (visits, dialect) => {
        expect((await imported(visits, dialect)).questions).toContain('unit weight_kg');
      }),
      { seed: 9, numRuns: 50 },
    );
  });
});

describe('numbers with three digits behind a comma', () => {
  test('alone in their table are never read without the question', async () => {
    const either = fc
      .tuple(fc.integer({ min: 1, max: 999 }), fc.integer({ min: 0, max: 999 }))
      .map(([whole, part]) => `${String(whole)},${String(part).padStart(3, '0')}`);
    await fc.assert(
      fc.asyncProperty(
        fc.array(either, { minLength: 1, maxLength: 20 }),
        fc.constantFrom('weight_kg', 'Weight (kg)', 'Xc [Ohm]', 'Waist, cm'),
        async (cells, name) => {
          const { questions } = await understood(
            tableOf([['ID', 'Visit date', name], ...cells.map((cell) => ['C-1', '2025-03-25', cell])]),
          );
          expect(asked(questions).filter((question) => question.startsWith('decimal'))).toHaveLength(1);
        },
      ),
      { seed: 10, numRuns: 100 },
    );
  });
});

describe('any table at all', () => {
  const cell = fc.oneof(
    fc.string({ maxLength: 12 }),
    fc.constantFrom(
      'ID',
      'Date',
      'Weight',
      'R1',
      'R2',
      '70,5',
      '1,234',
      '04/05/2025',
      '',
      'F',
      '1',
      '\u00A0',
      '5\'11"',
    ),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.boolean(),
  );
  const table = fc.array(fc.array(cell, { maxLength: 6 }), { maxLength: 12 });

  test('is understood without a fault, and every row below the header comes out with its line', async () => {
    await fc.assert(
      fc.asyncProperty(table, fc.constantFrom('CSV' as const, 'XLSX' as const), async (rows, format) => {
        const raw = tableOf(rows, format);
        const { profile, mapping } = await understood(raw);
        const lines = new Set((await mappedRows(raw, mapping)).map(({ line }) => line));
        expect(profile.rows).toBe(lines.size);
        expect(profile.columns.every(({ filled }) => filled <= profile.rows)).toBe(true);
      }),
      { seed: 11, numRuns: 250 },
    );
  });
});
