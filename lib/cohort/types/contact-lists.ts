import type { IsoDate } from '../../core/iso-date';
import type { TalkToRule } from '../settings-parts/contact-settings';
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
  /** Baseline→latest change of the clinic's lean value; of the weight where nothing but the weight is listed. */
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

/** The lean value is down more than its error beyond what program and phase let expect. */
export interface LeanChangeReason {
  readonly rule: 'lean-change';
  /** Seen at one visit, or confirmed by a second within two weeks. */
  readonly sight: 'first' | 'confirmed';
  readonly excess: number;
  readonly lsc: number;
}

/** The lean value falls from visit to visit, beyond what the program lets expect; per month, threshold at 99 %. */
export interface LeanSlopeReason {
  readonly rule: 'lean-slope';
  readonly perMonth: number;
  readonly threshold: number;
  readonly visits: number;
  readonly from: IsoDate;
  readonly to: IsoDate;
}

/** The lean share of a weight loss lies above the clinic's limit, with its whole interval. */
export interface LeanShareReason {
  readonly rule: 'lean-share';
  readonly sharePercent: number;
  readonly intervalPercent: readonly [number, number];
  readonly limitPercent: number;
  /** kg, below 0. */
  readonly weightChange: number;
  readonly lossPercent: number;
}

/** A weight loss of the size of the consensus' criterion that was not meant. */
export interface WeightLossReason {
  readonly rule: 'weight-loss';
  readonly percent: number;
  readonly weightFrom: number;
  readonly weightTo: number;
  readonly lsc: number;
  readonly from: IsoDate;
  readonly to: IsoDate;
  /** The cut-off that was applied, and its words: one phenotypic criterion, never a stage. */
  readonly cutOff: string;
  readonly words: string;
}

export type TalkToReason = LeanChangeReason | LeanSlopeReason | LeanShareReason | WeightLossReason;

/** The latest value against the best of the earlier comparable ones, with that comparison's own threshold. */
export interface BestOfEarlier {
  readonly date: IsoDate;
  readonly change: number;
  readonly threshold: number;
  readonly earlier: number;
}

export interface TalkToRow extends ContactRow {
  readonly list: 'talk-to';
  /** Why, the strongest rule first; values of one family never count twice. */
  readonly reasons: readonly TalkToReason[];
  /** Beside the reasons, never one of them; null under two earlier comparable visits. */
  readonly best: BestOfEarlier | null;
  /** A weight loss of that size of which nobody said whether it was meant: a question, not a finding. */
  readonly asked: WeightLossReason | null;
}

/** How many one rule looked at and listed, and how many error alone would list (about; null where that cannot be said). */
export interface RuleCount {
  readonly rule: TalkToRule;
  readonly checked: number;
  readonly listed: number;
  readonly byErrorAlone: number | null;
}

/** A weight loss of a client who is on no list, of which nobody said whether it was meant. */
export interface WeightQuestion {
  readonly clientKey: number;
  readonly client: string;
  readonly program: string;
  readonly loss: WeightLossReason;
}

/** A level that meets a published criterion, new at the latest visit. */
export interface StatusFinding {
  readonly clientKey: number;
  readonly client: string;
  readonly program: string;
  readonly date: IsoDate;
  readonly measure: 'ffmi' | 'asmi';
  readonly value: number;
  readonly cutOff: string;
  readonly words: string;
  readonly equation: string;
}

export interface MeasureAgainRow {
  readonly list: 'measure-again';
  readonly clientKey: number;
  readonly client: string;
  readonly program: string;
  readonly latest: IsoDate;
  readonly baseline: IsoDate;
  readonly programStart: IsoDate | null;
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
  /** The rules in force, each with what it looked at. */
  readonly rules: readonly RuleCount[];
  readonly weightQuestions: readonly WeightQuestion[];
  readonly status: readonly StatusFinding[];
}
