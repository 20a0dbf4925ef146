import type { ComparisonResult } from '../../../lib/cohort/types/change-row';
import type { Settings } from '../../../lib/cohort/settings';
import type { ComparabilityRule } from '../../../lib/measures/comparability-rule';
import { gradeOf, valueOf, type PlainPair } from './plain-pairs';
import { numberOf, textOf, type PlainVisit } from './plain-visits';

/** z of 95 %, two-sided. */
const Z = 1.959963984540054;

export type PlainValue = 'weight' | 'r' | 'ffm_exported';

export const COLUMN: Readonly<Record<PlainValue, string>> = {
  weight: 'weight_kg',
  r: 'r_ohm',
  ffm_exported: 'ffm_kg',
};

/** Recorded to one decimal: the variance of rounding, δ²/12. */
const ROUNDING = 0.1 ** 2 / 12;

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
const squares = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + (value - mean(values)) ** 2, 0);

/** Repositioning variance: visits with two or more readings, cross-checks excepted. */
const repositioning = (visits: readonly PlainVisit[], column: string): number => {
  const replicated = visits
    .filter(({ purpose }) => purpose !== 'crosscheck')
    .map(({ rows }) => rows.flatMap((row) => numberOf(row, column) ?? []))
    .filter(({ length }) => length >= 2);
  const df = replicated.reduce((sum, { length }) => sum + length - 1, 0);
  return Math.max(replicated.reduce((sum, values) => sum + squares(values), 0) / df, ROUNDING);
};

/** V(k₁, k₂) of a value; undefined where nobody was measured on two comparable days often enough. */
export type PlainVariance = ((k1: number, k2: number) => number) | undefined;

/**
 * The variance of a change, of pairs of study visits (two dates of one week each):
 * V = 2·s_b² + s_w²·(1/k₁ + 1/k₂), s_b² = max(0, M − h·s_w²); an entered error is never below repositioning.
 */
export const varianceOf = (
  value: PlainValue,
  clients: ReadonlyMap<string, readonly PlainVisit[]>,
  rules: readonly ComparabilityRule[],
  settings: Settings,
): PlainVariance => {
  const column = COLUMN[value];
  const within = repositioning([...clients.values()].flat(), column);
  if (value === 'ffm_exported') {
    const { errorSource } = settings;
    const entered = errorSource.kind === 'entered' ? errorSource.values[0]?.betweenDaySd : undefined;
    return entered === undefined ? undefined : () => 2 * Math.max(entered ** 2, within);
  }
  const studied = [...clients.values()].flatMap((visits) => {
    const [first, second] = visits.filter(({ purpose }) => purpose === 'precision');
    if (first === undefined || second === undefined) return [];
    const { comparable } = gradeOf(first, second, rules, false);
    if (comparable === 'no' || comparable === 'caution') return [];
    const [a, b] = [valueOf(first, column), valueOf(second, column)];
    return a === undefined || b === undefined ? [] : [[a, b] as const];
  });
  if (studied.length < 30) return undefined;
  const between = mean(studied.map(([a, b]) => squares([a.value, b.value])));
  const h = mean(studied.map(([a, b]) => (1 / a.k + 1 / b.k) / 2));
  const day = Math.max(0, between - h * within);
  return (k1, k2) => 2 * day + within * (1 / k1 + 1 / k2);
};

const median = (values: readonly number[]): number | undefined => {
  const sorted = [...values].sort((a, b) => a - b);
  const [low, high] = [sorted[Math.floor((sorted.length - 1) / 2)], sorted[Math.ceil((sorted.length - 1) / 2)]];
  return low === undefined || high === undefined ? undefined : (low + high) / 2;
};

/** The height that stands for all visits of an adult: the median of the measured ones, else of all. */
const seriesHeight = (visits: readonly PlainVisit[]): number | undefined => {
  const first = visits.filter(({ age }) => (age ?? 18) >= 18).map(({ rows }) => rows[0] ?? {});
  const measured = first.filter((row) => ['', 'measured'].includes(textOf(row, 'height_source')));
  const heights = (rows: typeof first): readonly number[] => rows.flatMap((row) => numberOf(row, 'height_cm') ?? []);
  return median(heights(measured)) ?? median(heights(first));
};

const has = (visit: PlainVisit, column: string, ...cells: readonly string[]): boolean =>
  visit.rows.some((row) => cells.includes(textOf(row, column)));

/** Whether a pair is stopped or held for a value. */
const guarded = (value: PlainValue, [a, b]: PlainPair, visits: readonly PlainVisit[]): boolean => {
  const between = visits.slice(visits.indexOf(a), visits.indexOf(b) + 1);
  if (between.some((visit) => has(visit, 'pregnant', 'y'))) return true;
  if ((a.age ?? 18) < 18 || (b.age ?? 18) < 18) return true;
  if (value !== 'ffm_exported') return false;
  const height = seriesHeight(visits);
  return [a, b].some((visit) => {
    const weight = valueOf(visit, 'weight_kg')?.value;
    const bmi = weight === undefined || height === undefined ? undefined : weight / (height / 100) ** 2;
    return has(visit, 'oedema', 'y') || has(visit, 'dialysis', 'haemo') || bmi === undefined || bmi < 16 || bmi > 34;
  });
};

export interface PlainResult {
  readonly change: number;
  readonly kFrom: number;
  readonly kTo: number;
  readonly lsc: number | undefined;
  readonly grade: ReturnType<typeof gradeOf>;
  /** Under the strict setting; null where a guard stops or holds it. */
  readonly result: ComparisonResult | null;
}

/** What a pair is and gives, under the strict setting, two-sided at 95 %. */
export const resultOf = (
  value: PlainValue,
  pair: PlainPair,
  visits: readonly PlainVisit[],
  rules: readonly ComparabilityRule[],
  variance: PlainVariance,
): PlainResult => {
  const [from, to] = [valueOf(pair[0], COLUMN[value]), valueOf(pair[1], COLUMN[value])];
  if (from === undefined || to === undefined) throw new Error('a pair without the value');
  const grade = gradeOf(...pair, rules, value === 'ffm_exported');
  const change = to.value - from.value;
  const lsc = variance === undefined ? undefined : Z * Math.sqrt(variance(from.k, to.k));
  const result = ((): ComparisonResult | null => {
    if (guarded(value, pair, visits)) return null;
    if (grade.comparable === 'no' || grade.comparable === 'caution') return 'cannot-compare';
    if (lsc === undefined) return 'no-threshold';
    const slack = 1e-9 * Math.max(Math.abs(from.value), Math.abs(to.value), lsc);
    if (change === 0 || Math.abs(change) < lsc - slack) return 'within';
    return change > 0 ? 'up' : 'down';
  })();
  return { change, kFrom: from.k, kTo: to.k, lsc, grade, result };
};
