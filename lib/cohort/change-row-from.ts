import type { IsoDate } from '../core/iso-date';
import type { Row } from '../engine/types';
import type { Measure } from '../measures/measure';
import { isExported } from './is-exported';
import { notedRules, reasonsOf } from './reasons';
import { masksFor, type GradeMasks } from './rules-in-force';
import type { ChangeRow, ChangeTerms, Comparable, ComparisonResult, Reason } from './types/change-row';
import { purposeOf } from './purpose-number';
import type { Tier } from './types/precision-row';

const GRADES: readonly Comparable[] = ['comparable', 'by-procedure', 'caution', 'no'];
const GUARD_KINDS = ['none', 'note', 'hold', 'stop'] as const;

const RESULTS: Readonly<Record<string, ComparisonResult>> = {
  '1': 'up',
  '-1': 'down',
  '0': 'within',
  '2': 'no-threshold',
  '3': 'cannot-compare',
};

/** A part of a change; −0 comes of a zero part with a negative sign and would be written as “−0.0”. */
const partAt = (row: Row, part: string): number => Number(row[`term_${part}`]) + 0;

const termsOf = (row: Row): ChangeTerms | null =>
  row['term_weight'] === null || row['term_weight'] === undefined
    ? null
    : {
        weight: partAt(row, 'weight'),
        resistance: partAt(row, 'resistance'),
        reactance: partAt(row, 'reactance'),
        height: partAt(row, 'height'),
        age: partAt(row, 'age'),
      };

const thresholdReason = (tier: Tier): readonly Reason[] => {
  if (tier === 5) return ['repositioning_only'];
  return tier === 6 ? ['no_error_study'] : [];
};

/** The columns of `change_rows` that a `ChangeRow` is read from. */
export const CHANGE_COLUMNS = `r.purpose, r.review_week, r.client_key, c.client_id, r.program, r.from_no, r.to_no, r.target_no, r.broken, r.unknown,
  r.pair_rank, r.from_date, r.to_date, r.k_from, r.k_to, r.value_from, r.value_to, r.change, r.tier, r.lsc, r.error_group, r.own_error, r.guard_kind,
  r.guard_mask, r.admitted, r.result_code, r.term_weight, r.term_resistance, r.term_reactance, r.term_height, r.term_age`;

/** One row of `change_rows` as the typed answer. */
export const changeRowFrom = (row: Row, measure: Measure, masks: GradeMasks): ChangeRow => {
  const tier = (row['tier'] === null || row['tier'] === undefined ? 6 : Number(row['tier'])) as Tier;
  const result = row['result_code'];
  const graded = masksFor(masks, measure);
  return {
    clientKey: Number(row['client_key']),
    client: String(row['client_id']),
    program: String(row['program']),
    measure: measure.id,
    purpose: purposeOf(Number(row['purpose'])),
    reviewWeek: row['review_week'] === null || row['review_week'] === undefined ? null : Number(row['review_week']),
    from: String(row['from_date']) as IsoDate,
    to: String(row['to_date']) as IsoDate,
    fromVisit: Number(row['from_no']),
    toVisit: Number(row['to_no']),
    kFrom: Number(row['k_from']),
    kTo: Number(row['k_to']),
    valueFrom: Number(row['value_from']),
    valueTo: Number(row['value_to']),
    change: Number(row['change']),
    lsc: row['lsc'] === null || row['lsc'] === undefined ? null : Number(row['lsc']),
    tier,
    errorGroup: row['own_error'] === 1 ? String(row['error_group']) : null,
    comparable: GRADES[Number(row['pair_rank'])] ?? 'no',
    admitted: row['admitted'] === 1,
    result: result === null || result === undefined ? null : (RESULTS[String(result)] ?? null),
    guard: GUARD_KINDS[Number(row['guard_kind'])] ?? 'none',
    reasons: [
      ...reasonsOf(
        {
          broken: Number(row['broken']),
          unknown: Number(row['unknown']),
          guards: Number(row['guard_mask']),
        },
        graded,
      ),
      ...(Number(row['target_no'] ?? -1) >= 0 && !isExported(measure) ? (['converted_device'] as const) : []),
      ...thresholdReason(tier),
    ],
    noted: notedRules(Number(row['broken']), graded),
    terms: termsOf(row),
  };
};
