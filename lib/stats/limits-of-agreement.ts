import { meanInterval } from './mean-interval';
import { normalQuantile } from './normal-quantile';
import { tQuantile } from './t-quantile';

/** Agreement of two ways to get the same value: first minus second, in the value's unit. */
export interface LimitsOfAgreement {
  readonly n: number;
  readonly bias: number;
  readonly sd: number;
  readonly biasInterval: readonly [number, number];
  /** Bias ± z·SD, z = 1.959964: between them lie about 95 of 100 differences. */
  readonly limits: readonly [number, number];
  /** SE of a limit, √(s²(1/n + z²/(2(n − 1)))): exact, where 1986 had √(3s²/n). */
  readonly limitSe: number;
  /** 95 % interval of each limit, t on n − 1 times that SE. */
  readonly lowerInterval: readonly [number, number];
  readonly upperInterval: readonly [number, number];
}

/**
 * Limits of agreement from differences, one per person. Bland JM, Altman DG. Lancet 1986;i:307–310, with z = 1.959964
 * instead of 2 (Stat Methods Med Res 1999;8:135–160).
 *
 * @returns undefined for fewer than three people.
 */
export const limitsOfAgreement = (differences: readonly number[]): LimitsOfAgreement | undefined => {
  const n = differences.length;
  if (n < 3) return undefined;
  const bias = differences.reduce((total, difference) => total + difference, 0) / n;
  const sd = Math.sqrt(differences.reduce((total, difference) => total + (difference - bias) ** 2, 0) / (n - 1));
  const interval = meanInterval({ n, mean: bias, sd });
  if (interval === undefined) return undefined;
  const z = normalQuantile(0.975);
  const limits = [bias - z * sd, bias + z * sd] as const;
  const limitSe = sd * Math.sqrt(1 / n + z ** 2 / (2 * (n - 1)));
  const half = tQuantile(0.975, n - 1) * limitSe;
  return {
    n,
    bias,
    sd,
    biasInterval: interval,
    limits,
    limitSe,
    lowerInterval: [limits[0] - half, limits[0] + half],
    upperInterval: [limits[1] - half, limits[1] + half],
  };
};
