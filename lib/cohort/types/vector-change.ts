import type { IsoDate } from '../../core/iso-date';
import type { Comparable, Reason } from './change-row';
import type { GuardKind } from '../../measures/guard';
import type { Purpose } from './filter';
import type { Ellipse, Matrix2, Pair } from './vector-analysis';

/** The error of R/H and Xc/H together, from the clinic's own study: variances in (Ω/m)². */
export interface VectorError {
  readonly people: number;
  /** ν of the between-day matrix. */
  readonly df: number;
  readonly dfWithin: number;
  readonly h: number;
  readonly repositioning: Matrix2;
  readonly meanSquare: Matrix2;
  readonly dayToDay: Matrix2;
  /** Fewer than 30 degrees of freedom, or from fewer than 15 people. */
  readonly provisional: boolean;
}

/** `beyond`: further from the earlier vector than error alone moves an unchanged person. */
export type VectorResult = 'beyond' | 'within' | 'cannot-compare' | 'no-threshold';

/** A change of the vector (R/H, Xc/H in Ω/m at 50 kHz) between two visits of a client. */
export interface VectorChangeRow {
  readonly clientKey: number;
  readonly client: string;
  readonly program: string;
  readonly purpose: Purpose;
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly fromVisit: number;
  readonly toVisit: number;
  readonly kFrom: number;
  readonly kTo: number;
  readonly start: Pair;
  readonly change: Pair;
  /** V(k₁, k₂); null without an own study of ten or more degrees of freedom. */
  readonly variance: Matrix2 | null;
  /** Δᵀ·V⁻¹·Δ, and c at the chosen level. */
  readonly squared: number | null;
  readonly threshold: number | null;
  readonly comparable: Comparable;
  readonly result: VectorResult | null;
  readonly guard: GuardKind;
  readonly reasons: readonly Reason[];
}

/** A vector of one visit of a client, in order of date. */
export interface ClientVector {
  readonly visit: number;
  readonly rh: number;
  readonly xch: number;
  readonly phaseAngle: number;
  /** A guard stops it: it is shown and joined with nothing. */
  readonly stopped: boolean;
  /** A line from the vector before: the two may be compared. */
  readonly joined: boolean;
}

/** A part of a vector's change in SD units of other people of the same sex, with its own least significant change. */
export interface VectorPart {
  readonly value: number;
  readonly lsc: number;
  readonly beyond: boolean;
}

/** One client's vectors over time. */
export interface ClientVectorPath {
  readonly vectors: readonly ClientVector[];
  /** Baseline → latest of the enrolment that counts now; null where there are no two vectors. */
  readonly change: VectorChangeRow | null;
  /** Where the latest vector would lie by error alone, around the baseline. */
  readonly ellipse: Ellipse | null;
  readonly error: VectorError | null;
  /** Along the fluid and the cell axis; null without error or reference. */
  readonly parts: {
    readonly fluid: VectorPart;
    readonly cell: VectorPart;
    /** People whose spread makes the units. */
    readonly n: number;
    /**
     * Direction in which unchanged people move from day to day here, degrees from the fluid axis in the plane of SD units;
     * null under 30 degrees of freedom: the axis is assumed.
     */
    readonly dayAxisDeg: number | null;
  } | null;
}
