import type { IsoDate } from '../../core/iso-date';
import type { RuleId } from '../../measures/comparability-rule';
import type { GuardCode, GuardKind } from '../../measures/guard';
import type { AnyMeasureId } from '../../measures/measure-id';
import type { Purpose } from './filter';
import type { Tier } from './precision-row';

/** The grade of a pair of visits. */
export type Comparable = 'comparable' | 'by-procedure' | 'caution' | 'no';

/** The result of the comparison; null where a guard stops or holds it. */
export type ComparisonResult = 'up' | 'down' | 'within' | 'cannot-compare' | 'no-threshold';

/** The exact parts of a change; they sum to it. */
export interface ChangeTerms {
  readonly weight: number;
  readonly resistance: number;
  readonly reactance: number;
  readonly height: number;
  readonly age: number;
}

/** Why a pair is graded or guarded as it is: a broken rule, an unknown condition, or a guard. */
export type Reason =
  RuleId | `unknown_${RuleId}` | GuardCode | 'converted_device' | 'repositioning_only' | 'no_error_study';

/** One value's change between two visits of a client. */
export interface ChangeRow {
  readonly clientKey: number;
  readonly client: string;
  readonly program: string;
  readonly measure: AnyMeasureId;
  readonly purpose: Purpose;
  /** The planned review's week after the start, for the purpose *baseline-review*; null for the others. */
  readonly reviewWeek: number | null;
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly fromVisit: number;
  readonly toVisit: number;
  readonly kFrom: number;
  readonly kTo: number;
  readonly valueFrom: number;
  readonly valueTo: number;
  readonly change: number;
  readonly lsc: number | null;
  readonly tier: Tier;
  /** The group whose own error the threshold rests on; null: everyone's. */
  readonly errorGroup: string | null;
  readonly comparable: Comparable;
  /** Whether the pair takes part under the current setting. */
  readonly admitted: boolean;
  readonly result: ComparisonResult | null;
  readonly guard: GuardKind;
  readonly reasons: readonly Reason[];
  /** Rules that the pair breaks and that the clinic only notes: they grade nothing. */
  readonly noted: readonly RuleId[];
  readonly terms: ChangeTerms | null;
}
