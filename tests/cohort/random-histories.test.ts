import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { rulesInForce } from '../../lib/cohort/rules-in-force';
import { DEFAULT_SETTINGS } from '../../lib/cohort/settings';
import type { ChangeRow } from '../../lib/cohort/types/change-row';
import type { Cohort } from '../../lib/cohort/types/cohort';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import { expectClose } from '../stats/expect-close';
import { cohortOf, filterFor, type Cells } from './small-clinic';
import { baselinePair, consecutivePairs, type PlainPair } from './support/plain-pairs';
import { COLUMN, resultOf, varianceOf, type PlainValue } from './support/plain-results';
import { plainVisits } from './support/plain-visits';
import { cohorts, randomSettings, rowsOf, STUDY } from './support/random-histories';

/** Planning the statements of a clinic costs more than its rows: cohorts share a clinic, each with sites and people of its own. */
const PER_CLINIC = 84;
const CLINICS = 12;

const RANDOM = fc.sample(cohorts, { seed: 20250301, numRuns: PER_CLINIC * CLINICS });
const SETTINGS = fc.sample(randomSettings, { seed: 20250302, numRuns: CLINICS });
const VALUES: readonly PlainValue[] = ['weight', 'r', 'ffm_exported'];

const rowsOfClinic = (clinic: number): readonly Cells[] => [
  ...STUDY,
  ...RANDOM.slice(clinic * PER_CLINIC, (clinic + 1) * PER_CLINIC).flatMap(rowsOf),
];

let engine: Engine;
beforeAll(async () => {
  engine = await openNodeEngine();
});
afterAll(() => engine.close());

const keyOf = (client: string, from: string, to: string): string => `${client} ${from} ${to}`;
const byKey = (rows: readonly ChangeRow[]): ReadonlyMap<string, ChangeRow> =>
  new Map(rows.map((row) => [keyOf(row.client, row.from, row.to), row]));

/** Rules first, then unknown conditions; what guards say is not compared here. */
const ruleReasons = (row: ChangeRow, rules: ReturnType<typeof rulesInForce>): readonly string[] =>
  row.reasons.filter((reason) => rules.some(({ id }) => reason === id || reason === `unknown_${id}`));

describe('a thousand random cohorts', () => {
  const seen = new Map<string, number>();
  const count = (what: string): void => {
    seen.set(what, (seen.get(what) ?? 0) + 1);
  };

  test.each(Array.from({ length: CLINICS }, (_, clinic) => clinic))(
    'have the pairs, grades, reasons, thresholds and results of plain loops over the rows: clinic %i',
    async (clinic) => {
      const settings = SETTINGS[clinic] ?? DEFAULT_SETTINGS;
      const rules = rulesInForce(settings);
      const rows = rowsOfClinic(clinic);
      const cohort = await cohortOf(engine, rows, settings);
      const clients = plainVisits(rows, rules, settings);
      const differences: unknown[] = [];
      for (const value of VALUES) {
        const variance = varianceOf(value, clients, rules, settings);
        for (const purpose of ['consecutive', 'baseline-latest'] as const) {
          const found = byKey(await cohort.changes(filterFor(value), purpose));
          let expected = 0;
          for (const [client, visits] of clients) {
            const [latest] = [baselinePair(visits, COLUMN[value])];
            const pairs: readonly PlainPair[] =
              purpose === 'consecutive'
                ? consecutivePairs(visits, COLUMN[value])
                : latest === undefined
                  ? []
                  : [latest];
            for (const pair of pairs) {
              expected += 1;
              const row = found.get(keyOf(client, pair[0].date, pair[1].date));
              const about = `${value} of ${client} from ${pair[0].date} to ${pair[1].date}`;
              if (row === undefined) throw new Error(`no ${purpose} pair: ${about}`);
              const plain = resultOf(value, pair, visits, rules, variance);
              const same = (a: number, b: number, scale: number): boolean => Math.abs(a - b) <= 1e-9 * scale;
              const told = [row.comparable, ruleReasons(row, rules), row.noted, row.kFrom, row.kTo, row.result];
              const plainly = [
                plain.grade.comparable,
                [...plain.grade.broken, ...plain.grade.unknown.map((id) => `unknown_${id}`)],
                plain.grade.noted,
                plain.kFrom,
                plain.kTo,
                plain.result,
              ];
              if (JSON.stringify(told) !== JSON.stringify(plainly)) differences.push([about, told, plainly]);
              if (!same(row.change, plain.change, row.valueTo)) differences.push([about, row.change, plain.change]);
              if (plain.lsc !== undefined && !same(row.lsc ?? NaN, plain.lsc, plain.lsc))
                differences.push([about, row.lsc, plain.lsc]);
              count(plain.grade.comparable);
              count(String(plain.result));
            }
          }
          expect(found.size).toBe(expected);
        }
      }
      expect(differences).toEqual([]);
    },
    30_000,
  );

  test('meet every grade and every result many times', () => {
    for (const what of ['comparable', 'by-procedure', 'caution', 'no', 'up', 'down', 'within', 'no-threshold', 'null'])
      expect(seen.get(what) ?? 0, what).toBeGreaterThan(50);
  });
});

type Answers = ReadonlyMap<string, ReadonlyMap<string, ChangeRow>>;

const consecutive = async (cohort: Cohort, level: 80 | 90 | 95 = 95): Promise<Answers> => {
  const answers = new Map<string, ReadonlyMap<string, ChangeRow>>();
  for (const value of [...VALUES, 'ffm', 'r_h'] as const)
    answers.set(value, byKey(await cohort.changes(filterFor(value, { level, comparable: 'all' }), 'consecutive')));
  return answers;
};

/** Every row of one set of answers beside its counterpart in another; both hold the same pairs. */
const besides = (
  a: Answers,
  b: Answers,
  counterpart: (row: ChangeRow) => string = (row) => keyOf(row.client, row.from, row.to),
): readonly (readonly [ChangeRow, ChangeRow])[] =>
  [...a].flatMap(([value, rows]) => {
    const others = b.get(value);
    expect(others?.size, value).toBe(rows.size);
    return [...rows.values()].map((row) => {
      const other = others?.get(counterpart(row));
      if (other === undefined) throw new Error(`${value}: no counterpart of ${counterpart(row)}`);
      return [row, other] as const;
    });
  });

const OPPOSITE: Readonly<Record<string, string>> = { up: 'down', down: 'up' };

describe('what may not matter does not', () => {
  /** Adults without a program, for whom only the order of the visits is time. */
  const plain: readonly Cells[] = rowsOfClinic(0).map((row) => ({
    ...row,
    birth_date: '1960-05-05',
    program: '',
    program_start: '',
    program_end: '',
  }));
  let answers: Answers;
  let levels: readonly Answers[];
  beforeAll(async () => {
    const cohort = await cohortOf(engine, plain);
    answers = await consecutive(cohort);
    levels = [await consecutive(cohort, 80), await consecutive(cohort, 90), answers];
  });

  test('time the other way round gives the same grades and thresholds, and the opposite change and result', async () => {
    const mirror = (date: string): string => {
      const [year, month, day] = date.split('-').map(Number) as [number, number, number];
      const months = 2 * (2025 * 12 + 3) - (year * 12 + month);
      const mirrored = [Math.floor((months - 1) / 12), ((months - 1) % 12) + 1, 29 - day];
      return mirrored.map((part, place) => String(part).padStart(place === 0 ? 4 : 2, '0')).join('-');
    };
    const back = plain.map((row) => ({ ...row, visit_date: mirror(String(row['visit_date'])) })).reverse();
    const mirrored = await consecutive(await cohortOf(engine, back));
    const pairs = besides(answers, mirrored, (row) => keyOf(row.client, mirror(row.to), mirror(row.from)));
    expect(pairs.length).toBeGreaterThan(500);
    for (const [row, other] of pairs) {
      expect([other.comparable, other.kFrom, other.kTo]).toEqual([row.comparable, row.kTo, row.kFrom]);
      expectClose(other.change, -row.change, 1e-9, row.valueTo);
      if (row.lsc !== null) expectClose(other.lsc ?? NaN, row.lsc);
      expect(other.result).toBe(row.result === null ? null : (OPPOSITE[row.result] ?? row.result));
    }
  });

  test('pounds and metres in the file give the results of kilograms and centimetres', async () => {
    const inPounds = plain.map(({ weight_kg = '', height_cm = '', ffm_kg = '', ...row }) => {
      const scaled = (text: string | number, by: number): string => (text === '' ? '' : (Number(text) * by).toFixed(9));
      return {
        ...row,
        weight_lb: scaled(weight_kg, 1 / 0.45359237),
        height_m: scaled(height_cm, 0.01),
        ffm_lb: scaled(ffm_kg, 1 / 0.45359237),
      };
    });
    const others = await consecutive(await cohortOf(engine, inPounds));
    const pairs = besides(answers, others);
    expect(pairs.filter(([row]) => row.measure === 'ffm').length).toBeGreaterThan(50);
    for (const [row, other] of pairs) {
      expectClose(other.valueTo, row.valueTo, 1e-7);
      expectClose(other.change, row.change, 1e-7, row.valueTo);
      expect([other.result, other.comparable]).toEqual([row.result, row.comparable]);
    }
  });

  test('a threshold grows with the level and never with the readings; none, no result; no change, never beyond', () => {
    const [low, middle, high] = levels as [Answers, Answers, Answers];
    for (const [a, b] of [...besides(low, middle), ...besides(middle, high)]) {
      expect(a.lsc === null).toBe(b.lsc === null);
      if (a.lsc !== null && b.lsc !== null) expect(a.lsc).toBeLessThan(b.lsc);
      if (b.result === 'up' || b.result === 'down') expect(a.result).toBe(b.result);
    }
    for (const [value, rows] of answers) {
      const least = (k: (row: ChangeRow) => boolean): readonly number[] =>
        [...rows.values()].filter(k).flatMap(({ lsc }) => lsc ?? []);
      const single = least(({ kFrom, kTo }) => kFrom === 1 && kTo === 1);
      const double = least(({ kFrom, kTo }) => kFrom === 2 && kTo === 2);
      if (value === 'weight' || value === 'r') {
        expect(Math.min(single.length, double.length)).toBeGreaterThan(5);
        expect(Math.max(...double)).toBeLessThan(Math.min(...single));
      }
      for (const row of rows.values()) {
        if (row.tier >= 5 || row.lsc === null) expect(['no-threshold', null]).toContain(row.result);
        if (row.change === 0) expect(['within', 'no-threshold', null]).toContain(row.result);
      }
    }
    const still = besides(answers, answers).filter(([{ change, result }]) => change === 0 && result !== null);
    expect(besides(answers, answers).filter(([{ lsc }]) => lsc !== null).length).toBeGreaterThan(300);
    expect(still.every(([{ result }]) => result === 'within' || result === 'no-threshold')).toBe(true);
  });
});
