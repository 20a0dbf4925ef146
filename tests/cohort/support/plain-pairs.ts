import type { ComparabilityRule, RuleId } from '../../../lib/measures/comparability-rule';
import type { Comparable } from '../../../lib/cohort/types/change-row';
import { labelOf, numberOf, textOf, type PlainVisit } from './plain-visits';

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** A value of a visit: the mean over the readings that hold it, and how many do. */
export const valueOf = (
  visit: PlainVisit,
  column: string,
): { readonly value: number; readonly k: number } | undefined => {
  const values = visit.rows.flatMap((row) => numberOf(row, column) ?? []);
  return values.length === 0 ? undefined : { value: mean(values), k: values.length };
};

/** A label of a visit; undefined where a reading does not say, or two disagree. */
const visitLabel = (visit: PlainVisit, column: string): string | undefined => {
  const labels = new Set(visit.rows.map((row) => labelOf(row, column)));
  const [only] = labels;
  return labels.size === 1 && only !== '' ? only : undefined;
};

const apart = (a: number | undefined, b: number | undefined): number | undefined =>
  a === undefined || b === undefined ? undefined : Math.abs(a - b);

const onDialysis = (visit: PlainVisit): boolean =>
  visit.rows.some((row) => ['haemo', 'peritoneal'].includes(textOf(row, 'dialysis')));

const breakTogether = ({ test }: ComparabilityRule, a: PlainVisit, b: PlainVisit): boolean => {
  switch (test.kind) {
    case 'differs': {
      const [first, second] = [visitLabel(a, test.column), visitLabel(b, test.column)];
      return first !== undefined && second !== undefined && first !== second;
    }
    case 'height-differs':
      return (
        (a.age ?? 18) >= 18 && (apart(valueOf(a, 'height_cm')?.value, valueOf(b, 'height_cm')?.value) ?? 0) > test.limit
      );
    case 'dialysis-timing':
      return (
        (onDialysis(a) || onDialysis(b)) &&
        (apart(valueOf(a, 'hours_since_dialysis')?.value, valueOf(b, 'hours_since_dialysis')?.value) ?? Infinity) >
          test.limit
      );
    default:
      return false;
  }
};

export interface PlainGrade {
  readonly comparable: Comparable;
  readonly broken: readonly RuleId[];
  readonly unknown: readonly RuleId[];
  readonly noted: readonly RuleId[];
}

/** How two visits may be compared under a rule table, for a value that the device computed or for another. */
export const gradeOf = (
  a: PlainVisit,
  b: PlainVisit,
  rules: readonly ComparabilityRule[],
  exported: boolean,
): PlainGrade => {
  const looked = rules.filter(({ onlyExported }) => exported || onlyExported !== true);
  const isBroken = (rule: ComparabilityRule): boolean =>
    a.broken.has(rule.id) || b.broken.has(rule.id) || breakTogether(rule, a, b);
  const graded = looked.filter(({ grade }) => grade === 'no' || grade === 'caution');
  const broken = graded.filter(isBroken);
  const unknown = graded.filter((rule) => !isBroken(rule) && (a.unknown.has(rule.id) || b.unknown.has(rule.id)));
  const byProcedure = graded.some(({ id }) => a.byProcedure.has(id) || b.byProcedure.has(id));
  const comparable = ((): Comparable => {
    if (broken.some(({ grade }) => grade === 'no')) return 'no';
    if (broken.length > 0 || unknown.length > 0) return 'caution';
    return byProcedure ? 'by-procedure' : 'comparable';
  })();
  const ids = (of: readonly ComparabilityRule[]): readonly RuleId[] => of.map(({ id }) => id);
  return {
    comparable,
    broken: ids(broken),
    unknown: ids(unknown),
    noted: ids(looked.filter((rule) => rule.grade === 'note' && isBroken(rule))),
  };
};

export type PlainPair = readonly [from: PlainVisit, to: PlainVisit];

/** Each visit that holds the value, with the one before that does. */
export const consecutivePairs = (visits: readonly PlainVisit[], column: string): readonly PlainPair[] => {
  const holding = visits.filter((visit) => visit.inSeries && valueOf(visit, column) !== undefined);
  return holding.slice(1).map((to, index) => [holding[index] as PlainVisit, to] as const);
};

const dayNumber = (date: string): number => Date.parse(`${date}T00:00:00Z`) / 86_400_000;

/** Baseline by date alone, and the latest visit after it that holds the value, up to the program's end. */
export const baselinePair = (visits: readonly PlainVisit[], column: string): PlainPair | undefined => {
  const series = visits.filter(({ inSeries }) => inSeries);
  const [row] = visits[0]?.rows ?? [];
  if (row === undefined) return undefined;
  const start = textOf(row, 'program_start');
  const end = textOf(row, 'program_end');
  const daysAfter = ({ date }: PlainVisit): number => dayNumber(date) - dayNumber(start);
  const baseline =
    start === ''
      ? series[0]
      : (series.findLast((visit) => daysAfter(visit) >= -30 && daysAfter(visit) <= 0) ??
        series.find((visit) => daysAfter(visit) > 0 && daysAfter(visit) <= 7));
  if (baseline === undefined || valueOf(baseline, column) === undefined) return undefined;
  const latest = series.findLast(
    (visit) => visit.date > baseline.date && (end === '' || visit.date <= end) && valueOf(visit, column) !== undefined,
  );
  return latest === undefined ? undefined : [baseline, latest];
};
