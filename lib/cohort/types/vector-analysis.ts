/** An ellipse: centre, half axes a ≥ b in Ω/m, angle of the major axis in degrees. */
export interface Ellipse {
  readonly cx: number;
  readonly cy: number;
  readonly a: number;
  readonly b: number;
  readonly angleDeg: number;
}

export type Pair = readonly [number, number];
export type Matrix2 = readonly [Pair, Pair];

/** How people were measured; null where it is not recorded. */
export interface MeasuredAs {
  readonly posture: 'standing' | 'lying' | null;
  readonly electrodePath: string | null;
}

/** People in no group, each under the first reason that holds. */
export interface VectorsLeftOut {
  readonly noVector: number;
  /** No coding F or M: ellipses and tests are of one sex. */
  readonly noSex: number;
  readonly otherFrequency: number;
  readonly stopped: number;
}

/** A program's mean vector (R/H, Xc/H in Ω/m) at its clients' latest visits, one sex. */
export interface VectorGroup {
  readonly program: string;
  readonly sex: 'F' | 'M';
  readonly n: number;
  readonly mean: Pair;
  readonly cov: Matrix2 | null;
  readonly confidence95: Ellipse | null;
  /** The ways in which its people were measured, the most frequent first. */
  readonly ways: readonly (MeasuredAs & { readonly n: number })[];
}

/** Hotelling's paired T² of a program's baseline→latest vectors, sexes pooled (each client is their own control). */
export interface VectorPaired {
  readonly program: string;
  readonly n: number;
  readonly mean: Pair;
  readonly t2: number | null;
  readonly f: number | null;
  readonly df1: number;
  readonly df2: number | null;
  readonly p: number | null;
}

/** Two programs of one sex: pooled T² and the form for unequal covariances. */
export interface VectorBetween {
  readonly a: string;
  readonly b: string;
  readonly sex: 'F' | 'M';
  readonly nA: number;
  readonly nB: number;
  readonly t2: number | null;
  readonly f: number | null;
  readonly df1: number;
  readonly df2: number | null;
  readonly p: number | null;
  readonly t2Unequal: number | null;
  readonly fUnequal: number | null;
  readonly df2Unequal: number | null;
  readonly pUnequal: number | null;
  readonly mahalanobisD: number | null;
}

/**
 * Where 50, 75 and 95 % of new individuals of the cohort's own baseline would lie on average, one sex and one way of
 * measuring: that of most of the people shown.
 */
export interface VectorReference extends MeasuredAs {
  readonly sex: 'F' | 'M';
  readonly n: number;
  readonly provisional: boolean;
  /** People of this sex who were measured in another way at their baseline, and are not in it. */
  readonly otherWays: number;
  readonly mean: Pair;
  readonly ellipses: readonly { readonly level: 0.5 | 0.75 | 0.95; readonly ellipse: Ellipse }[];
}

/** One client's latest vector. */
export interface VectorPoint {
  readonly clientKey: number;
  readonly client: string;
  readonly program: string;
  readonly sex: 'F' | 'M';
  readonly date: string;
  readonly rh: number;
  readonly xch: number;
  readonly phaseAngle: number;
}

export interface VectorAnalysis {
  readonly groups: readonly VectorGroup[];
  readonly paired: readonly VectorPaired[];
  readonly between: readonly VectorBetween[];
  readonly reference: readonly VectorReference[];
  readonly points: readonly VectorPoint[];
  readonly leftOut: VectorsLeftOut;
}
