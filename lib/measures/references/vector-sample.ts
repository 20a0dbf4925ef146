import type { ReferenceFigures, VectorStratum, IndexStratum } from './reference-set';

/** Size, mean and covariance of a bivariate normal sample, as the statistics of ellipses and distances take it. */
interface Sample {
  readonly n: number;
  readonly mean: readonly [number, number];
  readonly cov: { readonly xx: number; readonly xy: number; readonly yy: number };
}

const sample = (n: number, x: ReferenceFigures, y: ReferenceFigures, r: number | undefined): Sample | undefined =>
  r === undefined
    ? undefined
    : { n, mean: [x.mean, y.mean], cov: { xx: x.sd * x.sd, xy: r * x.sd * y.sd, yy: y.sd * y.sd } };

/**
 * A vector stratum as a bivariate sample (R/H, Xc/H in Ω/m): with it come the ellipses and the distance D² of a vector.
 *
 * @param enteredR the correlation that the clinic gives where the source's is not known well enough.
 * @returns undefined where there is no correlation: no ellipse may be drawn.
 */
export const vectorSample = (stratum: VectorStratum, enteredR?: number): Sample | undefined =>
  sample(stratum.n, stratum.rh, stratum.xch, stratum.r ?? enteredR);

/** An index stratum as a bivariate sample, (FFMI, FMI) in kg/m²: the axes of the chart of Hattori 1997. */
export const indexSample = (stratum: IndexStratum): Sample | undefined =>
  sample(stratum.n, stratum.ffmi, stratum.fmi, stratum.r);
