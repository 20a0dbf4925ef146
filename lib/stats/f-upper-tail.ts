import betainc from '@stdlib/math-base-special-betainc';

/**
 * F upper tail P(F ≥ f) on (df1, df2) degrees of freedom.
 *
 * @param f statistic; f ≤ 0 gives 1.
 * Source: regularised incomplete beta with the degrees of freedom swapped (Abramowitz & Stegun, chapter 26), @stdlib.
 */
export const fUpperTail = (f: number, df1: number, df2: number): number => {
  if (f <= 0) return 1;
  if (f === Infinity) return 0;
  return betainc(df2 / (df2 + df1 * f), df2 / 2, df1 / 2);
};
