import type { BivariateSample, Covariance2 } from './bivariate';
import { fUpperTail } from './f-upper-tail';
import { quadraticForm } from './quadratic-form';

/** A two-sample test that does not assume equal covariances. */
export interface UnequalHotellingTest {
  readonly t2: number;
  readonly f: number;
  readonly df1: 2;
  /** ν − 1, need not be whole. */
  readonly df2: number;
  readonly p: number;
}

/** tr((A·B⁻¹)²) + (tr A·B⁻¹)² for symmetric A and positive definite B. */
const traces = (a: Covariance2, b: Covariance2): number => {
  const determinant = b.xx * b.yy - b.xy * b.xy;
  const p11 = (a.xx * b.yy - a.xy * b.xy) / determinant;
  const p12 = (a.xy * b.xx - a.xx * b.xy) / determinant;
  const p21 = (a.xy * b.yy - a.yy * b.xy) / determinant;
  const p22 = (a.yy * b.xx - a.xy * b.xy) / determinant;
  return p11 * p11 + 2 * p12 * p21 + p22 * p22 + (p11 + p22) ** 2;
};

/**
 * Two-sample T² with unequal covariances: T² = dᵀ(S₁/n₁ + S₂/n₂)⁻¹d, F = T²(ν − 1)/(2ν) on (2, ν − 1) with
 * ν = 6/Σ[tr((AᵢA⁻¹)²) + (tr AᵢA⁻¹)²]/(nᵢ − 1), Aᵢ = Sᵢ/nᵢ, A = A₁ + A₂. If it disagrees with the pooled test, use this.
 *
 * @returns undefined where a sample has fewer than 2 or the covariance is singular.
 * Source: Krishnamoorthy & Yu, Stat Probab Lett 2004;66:161–169 (modified Nel & Van der Merwe).
 */
export const hotellingUnequal = (a: BivariateSample, b: BivariateSample): UnequalHotellingTest | undefined => {
  if (a.n < 2 || b.n < 2) return undefined;
  const ofMean = ({ n, cov }: BivariateSample): Covariance2 => ({ xx: cov.xx / n, xy: cov.xy / n, yy: cov.yy / n });
  const ofA = ofMean(a);
  const ofB = ofMean(b);
  const total = { xx: ofA.xx + ofB.xx, xy: ofA.xy + ofB.xy, yy: ofA.yy + ofB.yy };
  const t2 = quadraticForm([a.mean[0] - b.mean[0], a.mean[1] - b.mean[1]], total);
  if (t2 === undefined) return undefined;
  const df = 6 / (traces(ofA, total) / (a.n - 1) + traces(ofB, total) / (b.n - 1));
  if (df <= 1) return undefined;
  const f = (t2 * (df - 1)) / (2 * df);
  return { t2, f, df1: 2, df2: df - 1, p: fUpperTail(f, 2, df - 1) };
};
