import type { RuleId } from '../../measures/comparability-rule';
import type { MeasureId } from '../../measures/measure-id';
import type { ComparableSetting, Purpose } from './filter';

/** What the completeness of the record is shown by. */
export type CoverageBy = 'site' | 'operator' | 'month';

/**
 * How completely one condition stands beside the readings of a site, an operator or a calendar month. Counts are
 * readings; met + notMet + byProcedure + unknown + notRecorded = readings.
 */
export interface CoverageRow {
  /** The site, the operator, or the month as YYYY-MM; null where the rows do not name one. */
  readonly group: string | null;
  readonly rule: RuleId;
  readonly readings: number;
  /** Recorded and not against the rule; for a label that two visits share or not: recorded. */
  readonly met: number;
  readonly notMet: number;
  readonly byProcedure: number;
  readonly unknown: number;
  readonly notRecorded: number;
}

/**
 * What one setting of comparability makes of all pairs of a value.
 * up + down + within + cannotCompare + noThreshold + held + stopped = nPairs.
 */
export interface SettingRow {
  readonly setting: ComparableSetting;
  readonly measure: MeasureId;
  readonly purpose: Purpose;
  readonly nPairs: number;
  /** Pairs that the setting lets take part and that no guard stops or holds. */
  readonly nComparable: number;
  readonly up: number;
  readonly down: number;
  readonly within: number;
  readonly cannotCompare: number;
  readonly noThreshold: number;
  readonly held: number;
  readonly stopped: number;
}
