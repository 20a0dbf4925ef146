import type { IsoDate } from '../../core/iso-date';
import type { ChangeRow, Reason } from './change-row';

/** The last values of the lean value, oldest first, for the strip in the error band. */
export interface StripPoint {
  readonly date: IsoDate;
  readonly value: number;
  readonly comparable: boolean;
}

/** Why someone should be measured again, the strongest first. */
export type AgainReason = 'cannot-compare' | 'other-baseline' | 'fits-less-water' | 'near-threshold' | 'caution';

export interface ContactRow {
  readonly clientKey: number;
  readonly client: string;
  readonly program: string;
  readonly weekOfProgram: number | null;
  /** Baseline→latest change of the clinic's lean value. */
  readonly change: ChangeRow;
  /** What program and phase let expect, in the lean value's unit. */
  readonly expected: number;
  readonly excess: number;
  readonly withoutWeight: { readonly change: number; readonly lsc: number | null } | null;
  readonly phaseAngle: { readonly change: number; readonly lsc: number | null } | null;
  readonly seenAtTwoVisits: boolean;
  readonly fits: 'water' | 'cell-mass' | 'cannot-tell';
  readonly strip: readonly StripPoint[];
}

export interface TalkToRow extends ContactRow {
  readonly list: 'talk-to';
}

export interface MeasureAgainRow {
  readonly list: 'measure-again';
  readonly clientKey: number;
  readonly client: string;
  readonly program: string;
  readonly latest: IsoDate;
  readonly baseline: IsoDate;
  readonly why: AgainReason;
  /** Broken rules or cautions, as codes. */
  readonly reasons: readonly Reason[];
  readonly change: ChangeRow | null;
  readonly strip: readonly StripPoint[];
  /** Another visit that would serve as baseline, where only the baseline is at fault. */
  readonly otherBaseline: IsoDate | null;
}

export interface ContactLists {
  readonly asOf: IsoDate;
  readonly talkTo: readonly TalkToRow[];
  readonly measureAgain: readonly MeasureAgainRow[];
  /** Clients whose lean value was looked at: active program, seen within six weeks, pair that takes part. */
  readonly checked: number;
  /** How many of them error alone would put on Talk to, with its range; null without an own between-day error. */
  readonly byErrorAlone: { readonly about: number; readonly from: number; readonly to: number } | null;
}
