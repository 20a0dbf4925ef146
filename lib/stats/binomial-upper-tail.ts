import betainc from '@stdlib/math-base-special-betainc';

/**
 * P(X ≥ x) of a binomial count X of n with probability p each.
 *
 * @param x 0 ≤ x ≤ n, whole. @param n whole. @param p 0 … 1.
 * Source: regularised incomplete beta, P(X ≥ x) = I_p(x, n − x + 1) (Abramowitz & Stegun, 26.5.24), @stdlib.
 */
export const binomialUpperTail = (x: number, n: number, p: number): number => {
  if (x <= 0) return 1;
  if (x > n || p <= 0) return 0;
  if (p >= 1) return 1;
  return betainc(p, x, n - x + 1);
};
