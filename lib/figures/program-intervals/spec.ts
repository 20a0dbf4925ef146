import type { Ucum } from '../../core/units';
import type { LinearAxis } from '../linear-axis';

export interface ProgramIntervalData {
  readonly id: string;
  readonly label: string;
  readonly shapeIndex: number;
  /** For example *44 of 62 seen*. */
  readonly nText: string;
  /** Missing where there are too few: a mean is never drawn without its interval. */
  readonly estimate?: { readonly mean: number; readonly low: number; readonly high: number };
  /** LSC of one person for this program's pairs. */
  readonly leastSignificantChange?: number;
}

export interface ProgramIntervalsData {
  readonly title: string;
  readonly unit: Ucum;
  readonly digits: number;
  readonly programs: readonly ProgramIntervalData[];
}

export interface ProgramInterval extends ProgramIntervalData {
  readonly estimateLabel: string;
  readonly focusLabel: string;
}

/** Mean change of each program with its interval on one axis over the error of one person. */
export interface ProgramIntervalsSpec {
  readonly kind: 'program-intervals';
  readonly width: number;
  readonly rowHeight: number;
  readonly axis: LinearAxis;
  readonly programs: readonly ProgramInterval[];
  readonly message?: string;
}
