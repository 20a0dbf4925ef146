import type { MeasureId } from '../../measures/measure-id';
import type { ChangeSpread } from '../../stats/change-spread';
import type { Purpose } from './filter';

/** One program's outcome for one value. up + down + within + cannotCompare + noThreshold + held + stopped = nPairs. */
export interface ProgramRow {
  readonly program: string;
  readonly measure: MeasureId;
  readonly purpose: Purpose;
  readonly nClients: number;
  readonly nPairs: number;
  /** Pairs whose change enters the mean. */
  readonly nComparable: number;
  /** Of these, pairs that begin with the visit at which another of them ends: the interval treats them as independent. */
  readonly nSharing: number;
  readonly mean: number | null;
  readonly sd: number | null;
  readonly interval: readonly [number, number] | null;
  readonly up: number;
  readonly down: number;
  readonly within: number;
  readonly cannotCompare: number;
  readonly noThreshold: number;
  readonly held: number;
  readonly stopped: number;
  /** What error alone would make of as many people; null without an own between-day error, with several pairs of a person, or where pairs were judged by several errors. */
  readonly byError: ProgramByError | null;
  /**
   * Of the pairs with a result for which something is meant (the client's own column, else the program's settings), how
   * many went as meant; null where nothing is meant for the value.
   */
  readonly asMeant: { readonly n: number; readonly of: number } | null;
}

/** A program's counts and spread against what measurement error alone gives, of up + down + within people. */
export interface ProgramByError {
  /** How likely so many or more are up (down) where nobody changed; the precision error is an estimate. */
  readonly pUp: number;
  readonly pDown: number;
  /** Exact sign test of up against down, two-sided. */
  readonly pUpAgainstDown: number;
  /** Whether the changes vary more than error explains; null in the log form and for fewer than two people. */
  readonly spread: ChangeSpread | null;
  /** The slope of change on first value by error alone: who began high by error comes back. Null as the spread is. */
  readonly slope: number | null;
}
