import type { IsoDate } from '../../core/iso-date';
import type { Ucum } from '../../core/units';

/** Filled: comparable with the baseline. Hollow: cannot be compared. Grey: the value is held back from judgement. */
export type LanePointState = 'comparable' | 'not-comparable' | 'held';

/** ✓, ✓ with a p, ✕, ?, or a short label such as a position. */
export type ConditionMark = 'met' | 'met-by-procedure' | 'not-met' | 'unknown' | { readonly text: string };

export interface LaneVisit {
  readonly id: string;
  readonly date: IsoDate;
  /** What changed before this visit (*other position*, *other device*): a vertical dotted line with these words. */
  readonly breakBefore?: string;
}

export interface LanePointData {
  readonly key: string;
  readonly visitId: string;
  readonly value: number;
  readonly state: LanePointState;
}

export interface LaneData {
  readonly id: string;
  readonly title: string;
  readonly unit: Ucum;
  readonly digits: number;
  readonly points: readonly LanePointData[];
  readonly baseline?: number;
  /** Least significant change from the baseline, in the lane's unit. */
  readonly leastSignificantChange?: number;
}

export interface ConditionRow {
  readonly label: string;
  /** One per visit, in the order of the visits; undefined where it was not recorded at all. */
  readonly marks: readonly (ConditionMark | undefined)[];
}

export interface TimeLanesData {
  readonly visits: readonly LaneVisit[];
  readonly lanes: readonly LaneData[];
  readonly conditions?: readonly ConditionRow[];
}
