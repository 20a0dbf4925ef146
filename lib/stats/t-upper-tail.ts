import betainc from '@stdlib/math-base-special-betainc';

/**
 * Student t upper tail P(T ≥ t) on `df` degrees of freedom.
 *
 * @param t any real number.
 * @param df degrees of freedom, > 0.
 * Source: regularised incomplete beta function (Abramowitz & Stegun, chapter 26), @stdlib.
 */
export const tUpperTail = (t: number, df: number): number => {
  if (t < 0) return 1 - tUpperTail(-t, df);
  const squared = t * t;
  if (squared === Infinity) return 0;
  // Of the two equal forms each loses its digits where its argument is next to 1.
  return squared > df
    ? 0.5 * betainc(df / (df + squared), df / 2, 0.5)
    : 0.5 * betainc(squared / (df + squared), 0.5, df / 2, true, true);
};
