/**
 * Cochran's C of m sample variances of equal size: the largest as a share of their sum.
 *
 * @returns a fraction in (0, 1]; undefined where there is none, or all are zero.
 * Source: Snedecor & Cochran, Statistical Methods, 7th edition, 1980.
 */
export const cochranC = (variances: readonly number[]): number | undefined => {
  const sum = variances.reduce((total, variance) => total + variance, 0);
  return sum > 0 ? Math.max(...variances) / sum : undefined;
};
