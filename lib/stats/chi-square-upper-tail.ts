import gammainc from '@stdlib/math-base-special-gammainc';
import { LARGEST_GAMMA_DF } from './large-df';

/**
 * χ² upper tail P(X ≥ x) on `df` degrees of freedom.
 *
 * @param x statistic; x ≤ 0 gives 1.
 * @param df degrees of freedom, in (0, 1000].
 * @throws RangeError above 1,000 df, where the library's incomplete gamma function is wrong.
 * Source: upper regularised incomplete gamma function (Abramowitz & Stegun, chapter 26), @stdlib.
 */
export const chiSquareUpperTail = (x: number, df: number): number => {
  if (df > LARGEST_GAMMA_DF) throw new RangeError(`χ² tail on ${df} df: at most ${LARGEST_GAMMA_DF} are supported`);
  return x <= 0 ? 1 : gammainc(x / 2, df / 2, true, true);
};
