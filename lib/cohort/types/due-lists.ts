import type { IsoDate } from '../../core/iso-date';
import type { RuleId } from '../../measures/comparability-rule';
import type { GuardCode } from '../../measures/guard';

/** How a visit was taken: what has to be the same next time. */
export interface WayMeasured {
  readonly device: string | null;
  readonly position: string | null;
  readonly posture: string | null;
  readonly side: string | null;
}

export interface LastVisit extends WayMeasured {
  readonly date: IsoDate;
  readonly site: string | null;
  /** Standard conditions that were not met. */
  readonly notMet: readonly RuleId[];
  /** Standard conditions that its site records and that nobody recorded then. */
  readonly unknown: readonly RuleId[];
  /** What stops values and is known before the next visit; what is never printed is left out. */
  readonly guards: readonly GuardCode[];
  /** On dialysis: hours since the last session, null where unknown; undefined for all others. */
  readonly hoursSinceDialysis?: number | null;
}

/**
 * Why two readings would matter at the next visit: the last change lies near its threshold, so that a smaller error
 * decides; or it is more than error beyond what the program lets expect, so that the next visit has to confirm it.
 */
export type TwiceReason = 'near-threshold' | 'unexpected';

/** A client of an active program with a planned visit or review ahead or missed, in one row. */
export interface DueRow {
  readonly clientKey: number;
  readonly client: string;
  readonly familyName: string | null;
  readonly givenName: string | null;
  readonly program: string;
  /** Which planned time: weeks after the start, and the day it falls on. */
  readonly week: number;
  readonly due: IsoDate;
  readonly when: 'overdue' | 'this-week' | 'next-week';
  /** Where the planned time is a review: until when its window is open. */
  readonly windowTo: IsoDate | null;
  /** The first of the planned times without a visit, where an earlier one than `due` was missed. */
  readonly missedSince: IsoDate | null;
  readonly last: LastVisit | null;
  /** How the baseline was taken, where the last visit was taken in another way. */
  readonly baseline: WayMeasured | null;
  readonly seriesHeightCm: number | null;
  /** An implanted electronic device is recorded at some visit. */
  readonly implant: boolean;
  readonly twice: TwiceReason | null;
}

/** A client of an active program who missed a planned time twelve weeks ago and has not come since. */
export interface NotSeenRow {
  readonly clientKey: number;
  readonly client: string;
  readonly familyName: string | null;
  readonly givenName: string | null;
  readonly program: string;
  /** The last visit; null where there was none. */
  readonly last: IsoDate | null;
  readonly missedSince: IsoDate;
}

/** Who is to be invited, and who has not been seen for long. Each client stands in one of the lists, once. */
export interface DueLists {
  readonly asOf: IsoDate;
  readonly monday: IsoDate;
  /** Whether any program has planned visits or reviews: without them nobody can be due. */
  readonly planned: boolean;
  /** Due this week or next, or overdue; the earliest day first. */
  readonly invite: readonly DueRow[];
  /** The longest unseen first. */
  readonly notSeen: readonly NotSeenRow[];
}
