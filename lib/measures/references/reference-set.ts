import type { Citation } from '../citation';
import type { Verification } from '../equation';

/** The percentiles that an index stratum gives, in this order. */
export const REFERENCE_PERCENTILES = [5, 10, 25, 50, 75, 90, 95] as const;

/** One figure for each of `REFERENCE_PERCENTILES`. */
export type PercentileFigures = readonly [number, number, number, number, number, number, number];

/** How far the figures were verified; derived: computed from open data by a script of the project. */
export type ReferenceVerification = Verification | 'derived-from-open-data';

/** For whom a stratum was made: one sex, ages in completed years [from, below); without an end it is open. */
export interface ReferenceStratum {
  readonly sex: 'F' | 'M';
  readonly ageFrom: number;
  readonly ageBelow?: number;
  /** People in the stratum, where the source says it. */
  readonly n?: number;
}

/** Mean and sample SD (n − 1 in the denominator), and percentiles where they are known. */
export interface ReferenceFigures {
  readonly mean: number;
  readonly sd: number;
  readonly percentiles?: PercentileFigures;
}

/** R/H and Xc/H in Ω/m. Without their correlation `r` there is neither an ellipse nor a distance. */
export interface VectorStratum extends ReferenceStratum {
  readonly n: number;
  readonly rh: ReferenceFigures;
  readonly xch: ReferenceFigures;
  readonly r?: number;
}

/** Fat mass index and fat-free mass index in kg/m², and their correlation where it is known. */
export interface IndexStratum extends ReferenceStratum {
  readonly n: number;
  readonly fmi: ReferenceFigures;
  readonly ffmi: ReferenceFigures;
  readonly r?: number;
}

/** Medians of fat mass index and fat-free mass index in kg/m², where a source gives nothing else: no z score comes from them. */
export interface IndexMedianStratum extends ReferenceStratum {
  readonly fmi: number;
  readonly ffmi: number;
}

/**
 * What stands beside a mean phase angle: the SD of people, or the 95 % confidence interval of the mean. The interval says
 * how well the mean is known, not how people differ: no z score comes from it.
 */
export type PhaseAngleSpread =
  | { readonly kind: 'sd'; readonly sd: number }
  | { readonly kind: 'mean-interval-95'; readonly low: number; readonly high: number };

/** Phase angle in degrees. */
export interface PhaseAngleStratum extends ReferenceStratum {
  readonly mean: number;
  readonly spread: PhaseAngleSpread;
}

/** How the reference was measured. Null where the source that was read does not say it: then it is not comparable unseen. */
export interface ReferenceMethod {
  readonly kind: 'dxa' | 'bia';
  readonly frequencyKhz: number | null;
  readonly posture: 'lying' | 'standing' | null;
  readonly electrodePath: string | null;
}

interface ReferenceHead {
  /** Stored with everything that was judged by it. */
  readonly id: string;
  readonly name: string;
  /** Raised with each change of the figures. */
  readonly version: number;
  /** What must stand beside each use, for example `DXA, unweighted, not norms`. */
  readonly label: string;
  readonly population: string;
  /** People in the whole set. */
  readonly n?: number;
  readonly method: ReferenceMethod;
  readonly citation: Citation;
  readonly verification: ReferenceVerification;
  /** What exactly was read or computed and what was not. */
  readonly verificationNote: string;
  readonly cautions: readonly string[];
}

export interface VectorReferenceSet extends ReferenceHead {
  readonly kind: 'vector';
  readonly strata: readonly VectorStratum[];
}

export interface IndexReferenceSet extends ReferenceHead {
  readonly kind: 'indices';
  readonly strata: readonly IndexStratum[];
}

export interface IndexMedianReferenceSet extends ReferenceHead {
  readonly kind: 'index-medians';
  readonly strata: readonly IndexMedianStratum[];
}

export interface PhaseAngleReferenceSet extends ReferenceHead {
  readonly kind: 'phase-angle';
  readonly strata: readonly PhaseAngleStratum[];
}

/** A reference population as data. Strata of one sex do not overlap; between them there may be gaps. */
export type ReferenceSet = VectorReferenceSet | IndexReferenceSet | IndexMedianReferenceSet | PhaseAngleReferenceSet;

/** The clinic's own clients as a reference: its figures are computed from the visits, never kept here. */
export interface OwnCohortReference {
  readonly kind: 'own-cohort';
  readonly id: 'own-cohort';
  readonly name: string;
  readonly label: string;
  readonly cautions: readonly string[];
}

/** Whether a reference is offered before anybody chose it: nothing from memory is. */
export const isReferenceInForceByDefault = ({ verification }: ReferenceSet): boolean => verification !== 'from-memory';
