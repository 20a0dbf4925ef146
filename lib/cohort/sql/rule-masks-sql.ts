import { doubleLiteral } from '../../measures/compile-sql';
import type { ComparabilityRule } from '../../measures/comparability-rule';
import { ruleBit } from '../rules-in-force';

const bits = (parts: readonly string[]): string => (parts.length === 0 ? '0' : `(${parts.join(' | ')})`);

const bitWhen = (when: string, rule: ComparabilityRule): string =>
  `(CASE WHEN ${when} THEN ${String(ruleBit(rule.id))} ELSE 0 END)`;

/** The reading's column whose emptiness leaves a rule unknown; undefined for rules that cannot be unknown. */
const recordedColumn = (rule: ComparabilityRule): string | undefined => {
  const { test } = rule;
  if (test.kind === 'below' || test.kind === 'is') return test.column;
  return test.kind === 'differs' && test.unknownMatters ? test.column : undefined;
};

/** Bits of the rules that a reading breaks by itself. */
export const brokenByReading = (rules: readonly ComparabilityRule[]): string =>
  bits(
    rules.flatMap((rule) => {
      const { test } = rule;
      if (test.kind === 'below') return [bitWhen(`${test.column} < ${doubleLiteral(test.limit)}`, rule)];
      if (test.kind === 'is') return [bitWhen(`${test.column} = ${test.spoiledBy === 'y' ? '1' : '0'}`, rule)];
      return [];
    }),
  );

/** Bits of the rules whose column a reading fills in. */
export const recordedByReading = (rules: readonly ComparabilityRule[]): string =>
  bits(
    rules.flatMap((rule) => {
      const column = recordedColumn(rule);
      return column === undefined ? [] : [bitWhen(`${column} IS NOT NULL`, rule)];
    }),
  );

/** All bits that can be unknown. */
export const recordableMask = (rules: readonly ComparabilityRule[]): number =>
  rules.reduce((mask, rule) => (recordedColumn(rule) === undefined ? mask : mask | ruleBit(rule.id)), 0);

/** Labels that a visit carries for the rules that compare two visits. */
export const labelColumns = (rules: readonly ComparabilityRule[]): readonly string[] =>
  rules.flatMap((rule) => (rule.test.kind === 'differs' ? [rule.test.column] : []));

/** Bits of the labels on which the readings of one visit disagree: then the visit's label is unknown. */
export const labelsInDisagreement = (rules: readonly ComparabilityRule[]): string =>
  bits(
    rules.flatMap((rule) =>
      rule.test.kind === 'differs' && rule.test.unknownMatters
        ? [bitWhen(`MIN(r.${rule.test.column}) <> MAX(r.${rule.test.column})`, rule)]
        : [],
    ),
  );

/** Bits of the rules that two visits `a` and `b` break together. */
export const brokenByPair = (rules: readonly ComparabilityRule[]): string =>
  bits(
    rules.flatMap((rule) => {
      const { test } = rule;
      switch (test.kind) {
        case 'differs':
          return [bitWhen(`a.${test.column} <> b.${test.column}`, rule)];
        case 'height-differs':
          return [
            bitWhen(
              `COALESCE(a.completed_age, 18) >= 18 AND ABS(a.recorded_height_cm - b.recorded_height_cm) > ${doubleLiteral(test.limit)}`,
              rule,
            ),
          ];
        case 'dialysis-timing':
          return [
            bitWhen(
              `a.on_dialysis + b.on_dialysis > 0 AND COALESCE(ABS(a.hours_since_dialysis - b.hours_since_dialysis), 1E9) > ${doubleLiteral(test.limit)}`,
              rule,
            ),
          ];
        default:
          return [];
      }
    }),
  );
