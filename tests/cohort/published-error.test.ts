import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import type { Settings } from '../../lib/cohort/settings';
import type { Cohort } from '../../lib/cohort/types/cohort';
import { DEFAULT_CATALOGUE } from '../../lib/measures/catalogue';
import { cohortOf, errorStudy, latestOf, precisionOf, reading, type Cells } from './small-clinic';

let engine: Engine;
beforeAll(async () => {
  engine = await openNodeEngine();
});
afterAll(() => engine.close());

const errorSource = (kind: 'published' | 'none' | 'own'): Partial<Settings> => ({
  errorSource: { kind, alwaysT: false },
});

/** z(0.975)·√2·14 Ω. Quantile: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1: 1.960. */
const Z = 1.959963984540054;
const LSC = Z * Math.SQRT2 * 14;

const client = (name: string, resistance: number, cells: Cells = {}): readonly Cells[] => [
  reading(name, '2025-01-06', { height_cm: '160.0', ...cells }),
  reading(name, '2025-06-06', { height_cm: '160.0', ...cells, r_ohm: resistance.toFixed(1) }),
];

const ROWS = [...client('within', 500 + LSC - 0.1), ...client('beyond', 500 + LSC + 0.1)];

describe('the published between-day error', () => {
  let cohort: Cohort;
  beforeAll(async () => {
    cohort = await cohortOf(engine, ROWS, errorSource('published'));
  });

  test('is tier 4 for R and |Z|: 14 Ω, 36 degrees of freedom, 12 people, provisional, f = z', () => {
    for (const id of ['r', 'z'] as const) {
      const row = precisionOf(cohort, id);
      expect(row).toMatchObject({ tier: 4, provisional: true, clients: 12, outsideDf: 36, pe: 14, within: 0 });
      expect(row.lsc).toBeCloseTo(LSC, 9);
      // χ² interval of the SD at 36 df: 11.385 to 18.185 Ω.
      expect(row.peInterval?.map((end) => Number(end.toFixed(3)))).toEqual([11.385, 18.185]);
    }
  });

  test('judges a change of R on both sides of the threshold', async () => {
    expect((await latestOf(cohort, 'within', 'r')).result).toBe('within');
    expect(await latestOf(cohort, 'beyond', 'r')).toMatchObject({ result: 'up', tier: 4 });
  });

  test('holds per height at the client’s own height', async () => {
    const row = precisionOf(cohort, 'r_h');
    expect(row).toMatchObject({ tier: 4, atOwnValues: true, pe: null, lsc: null, provisional: true });
    const [within, beyond] = [await latestOf(cohort, 'within', 'r_h'), await latestOf(cohort, 'beyond', 'r_h')];
    expect(within.lsc).toBeCloseTo(LSC / 1.6, 9);
    expect([within.result, beyond.result]).toEqual(['within', 'up']);
  });

  test('is carried over to what equations make of the impedance, and says nothing of any other value, and why', async () => {
    const tiers = (tier: number) =>
      DEFAULT_CATALOGUE.measures.map(({ id }) => id).filter((id) => precisionOf(cohort, id).tier === tier);
    expect(new Set(tiers(4))).toEqual(
      new Set(['r', 'z', 'r_h', 'h2_r', 'ffm', 'fm', 'fat_percent', 'ffmi', 'fmi', 'smm', 'smi']),
    );
    expect(tiers(6)).toContain('phase_angle');
    for (const id of tiers(6)) expect(precisionOf(cohort, id).why, id).toBe('not-published');
    // What the mostly-weight-term pattern is judged by.
    expect(precisionOf(cohort, 'ffm_without_weight')).toMatchObject({ tier: 4, atOwnValues: true });
    expect((await latestOf(cohort, 'beyond', 'weight')).result).toBe('no-threshold');
  });

  // By hand from the delta method: PE = 0.518·H²/R²·14 Ω, LSC(1,1) = z·√2·PE. Weight and reactance as they are.
  test.each([
    ['M', 178, 480, 0.997275903, 2.764256975],
    ['F', 165, 580, 0.586907551, 1.626794838],
  ] as const)('of fat-free mass for a client (%s, %i cm, %i Ω) is %d kg', async (sex, height, resistance, pe, lsc) => {
    const seen = (name: string, at: string) => {
      const cells = { sex, height_cm: height.toFixed(1) };
      return [
        reading(name, '2025-01-06', { ...cells, r_ohm: String(resistance) }),
        reading(name, '2025-06-06', { ...cells, r_ohm: at }),
      ];
    };
    const rows = [...seen('same', String(resistance)), ...seen('other', String(resistance + 60))];
    const open = await cohortOf(engine, rows, errorSource('published'));
    const same = await latestOf(open, 'same', 'ffm');
    expect((same.lsc ?? NaN) / (Z * Math.SQRT2)).toBeCloseTo(pe, 9);
    expect(same.lsc).toBeCloseTo(lsc, 9);
    expect(same).toMatchObject({ result: 'within', tier: 4 });
    // At two resistances each end has an error of its own.
    const gradient = (at: number): number => (0.518 * height ** 2) / at ** 2;
    const root = Math.hypot(gradient(resistance), gradient(resistance + 60));
    expect((await latestOf(open, 'other', 'ffm')).lsc).toBeCloseTo(Z * 14 * root, 9);
  });
});

describe('beside what the clinic measured', () => {
  const jump = (size: number) => (person: number, visit: number) => ({
    r_ohm: (500 + (visit === 0 ? 0 : person % 2 === 0 ? size : -size)).toFixed(1),
  });

  test('the published error gives way to an own study of ten degrees of freedom', async () => {
    const cohort = await cohortOf(engine, errorStudy(10, jump(10)), errorSource('published'));
    expect(precisionOf(cohort, 'r')).toMatchObject({ tier: 2, dfBetween: 10 });
    expect(precisionOf(cohort, 'r').why).toBeUndefined();
  });

  test('it never gives less than own repositioning', async () => {
    const repeated = (size: number) =>
      Array.from({ length: 30 }, (_, person) => [
        reading(`p${String(person)}`, '2025-01-06', { reading: 1, r_ohm: '500.0' }),
        reading(`p${String(person)}`, '2025-01-06', { reading: 2, r_ohm: (500 + size).toFixed(1) }),
      ]).flat();
    const rows = [...repeated(40), ...client('a', 520)];
    const cohort = await cohortOf(engine, rows, errorSource('published'));
    // s_w of pairs that differ by 40 Ω: 40/√2.
    expect(precisionOf(cohort, 'r')).toMatchObject({ tier: 4 });
    expect(precisionOf(cohort, 'r').pe).toBeCloseTo(40 / Math.SQRT2, 9);
    expect((await latestOf(cohort, 'a', 'r_h')).lsc).toBeGreaterThan(LSC / 1.6);
  });

  test('“none yet” gives no threshold, no lower limit either, until there is an own study', async () => {
    const repeated = Array.from({ length: 30 }, (_, person) => [
      reading(`p${String(person)}`, '2025-01-06', { reading: 1, r_ohm: '500.0' }),
      reading(`p${String(person)}`, '2025-01-06', { reading: 2, r_ohm: '504.0' }),
    ]).flat();
    const none = await cohortOf(engine, repeated, errorSource('none'));
    expect(precisionOf(none, 'r')).toMatchObject({ tier: 6, lsc: null, why: 'not-chosen' });
    expect(precisionOf(await cohortOf(engine, repeated, errorSource('own')), 'r').tier).toBe(5);
    const studied = await cohortOf(engine, errorStudy(10, jump(10)), errorSource('none'));
    expect(precisionOf(studied, 'r').tier).toBe(2);
  });
});
