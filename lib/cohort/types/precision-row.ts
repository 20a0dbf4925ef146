import type { AnyMeasureId } from '../../measures/measure-id';

/** Where a threshold comes from, statistics §3: 1 own between-day … 4 published, not the clinic's own … 6 none. */
export type Tier = 1 | 2 | 3 | 4 | 5 | 6;

/**
 * Why a value has no threshold: too little was measured here; the published error says nothing about this value; it was
 * answered that there is none before an own study.
 */
export type NoThreshold = 'not-measured' | 'not-published' | 'not-chosen';

/** The errors of one level: everyone's, and what groups have of their own where the clinic takes the error by groups. */
export interface CohortErrors {
  readonly everyone: readonly PrecisionRow[];
  readonly groups: readonly PrecisionRow[];
}

/** The error of one value. Symbols as in the computation's description: variances, SDs in the value's unit. */
export interface PrecisionRow {
  readonly measure: AnyMeasureId;
  readonly tier: Tier;
  /** People in the between-day clusters (tier 5: with replicates). */
  readonly clients: number;
  readonly sw: number | null;
  readonly dfWithin: number;
  readonly sb: number | null;
  /** Mean square between the days of a cluster (a variance). */
  readonly m: number | null;
  readonly dfBetween: number;
  readonly h: number | null;
  /** f: z or t. */
  readonly factor: number | null;
  /** Precision error of one reading. */
  readonly pe: number | null;
  readonly peInterval: readonly [number, number] | null;
  /** Least significant change for one reading at each end. */
  readonly lsc: number | null;
  readonly lscInterval: readonly [number, number] | null;
  /** Of 100 unchanged people, between … and … would be called changed. */
  readonly changedPer100: readonly [number, number] | null;
  readonly form: 'sd' | 'log';
  readonly provisional: boolean;
  /** V(k₁,k₂) = twoBetween + within · (1/k₁ + 1/k₂); null where there is no threshold. */
  readonly twoBetween: number | null;
  readonly within: number | null;
  /** Tier 4, a value that is made from the impedance: `twoBetween` is the impedance's (Ω²), carried over at each reading's own values. */
  readonly atOwnValues?: true;
  /** Degrees of freedom of an error from outside (tiers 3 and 4). */
  readonly outsideDf?: number;
  /** The group whose own error this is; absent for everyone's. */
  readonly group?: string;
  /** Where there is no threshold. */
  readonly why?: NoThreshold;
}
