import type { IsoDate } from '../../core/iso-date';
import type { AnyMeasureId } from '../../measures/measure-id';
import type { LogFormTest } from '../../stats/suggests-log-form';
import type { LogForm } from '../settings-parts/error-study-settings';
import type { Reason } from './change-row';

/** By what groups are told apart. */
export type StudyGrouping = 'device' | 'operator' | 'site' | 'program';

/** One person's visits within a week under the same conditions. */
export interface StudyCluster {
  /** Names the cluster in figures and tables. */
  readonly key: string;
  readonly clientKey: number;
  readonly client: string;
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly visits: number;
  /** Mean and SD of the visit values, in the value's unit. */
  readonly mean: number;
  readonly sd: number;
  /** Second visit − first. */
  readonly difference: number;
  /** Mean of 1/k over the visits, k readings each. */
  readonly reciprocalReadings: number;
  /** Null: not recorded; for an operator also where several measured. */
  readonly device: string | null;
  readonly operator: string | null;
  readonly site: string | null;
  readonly program: string | null;
  /** Made of visits that belong to no study. */
  readonly routine: boolean;
}

/** Mean of second − first: without an interval for fewer than two. */
export interface Drift {
  readonly n: number;
  readonly mean: number;
  readonly interval: readonly [number, number] | null;
  /** The interval excludes zero: a change or an effect of order, which PE holds. */
  readonly excludesZero: boolean;
  /** SD of the differences/√2: PE without the drift, beside PE and never instead. */
  readonly peWithoutDrift: number | null;
}

/** The largest variance against its limit (Cochran's C at 5 %). Shown and kept. */
export interface LargestVariance {
  readonly client: string;
  readonly clientKey: number;
  readonly on: IsoDate;
  /** Variances of this number of values each. */
  readonly of: number;
  readonly among: number;
  readonly c: number;
  readonly limit: number;
  readonly beyond: boolean;
}

/** The error of one group beside that of all. */
export interface StudyGroup {
  readonly by: StudyGrouping;
  /** Null: not recorded. */
  readonly name: string | null;
  readonly kind: 'between' | 'repositioning';
  readonly people: number;
  readonly df: number;
  /** PE of one reading (repositioning: s_w), with its 95 % range. */
  readonly pe: number;
  readonly interval: readonly [number, number];
  /** 30 degrees of freedom of its own. */
  readonly enough: boolean;
}

/** Between-day PE of the clusters that began in one quarter of a year. */
export interface QuarterError {
  /** `2024-Q3`. */
  readonly quarter: string;
  readonly people: number;
  readonly df: number;
  readonly pe: number;
  readonly interval: readonly [number, number];
}

/** Study visits that do not count, and why. A visit can have several reasons. */
export interface LeftOut {
  /** Visits marked for the study that hold the value. */
  readonly visits: number;
  readonly notComparable: number;
  /** Comparable, but no second such day within a week. */
  readonly alone: number;
  readonly reasons: readonly { readonly reason: Reason | 'program_started'; readonly visits: number }[];
}

/** Everything that the clinic's error study says of one value. */
export interface ErrorStudy {
  readonly measure: AnyMeasureId;
  readonly clusters: readonly StudyCluster[];
  readonly leftOut: LeftOut;
  /** Clusters of routine visits among them, where they are switched on. */
  readonly routineClusters: number;
  readonly drift: Drift | null;
  readonly repositioningDrift: Drift | null;
  readonly largest: {
    readonly between: LargestVariance | null;
    readonly repositioning: LargestVariance | null;
  };
  readonly groups: readonly StudyGroup[];
  readonly quarters: readonly QuarterError[];
  readonly logForm: {
    readonly test: LogFormTest | null;
    readonly accepted: LogForm | null;
    /** SD of ln of one reading, by the same two components; null where a value is not above zero. */
    readonly sdOfLogs: number | null;
  };
  /** Between days, per cent. Descriptive. */
  readonly rmsCv: number | null;
}
