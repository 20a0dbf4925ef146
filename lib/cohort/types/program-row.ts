import type { MeasureId } from '../../measures/measure-id';
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
}
