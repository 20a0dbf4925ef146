import { fQuantile } from './f-quantile';

/**
 * Critical value of Cochran's C for m variances of k readings each: [1 + (m − 1)/F(1 − α/m; k − 1, (m − 1)(k − 1))]⁻¹.
 * A client above it is shown, never dropped.
 *
 * @param variances m. @param readings k ≥ 2. @param alpha default 0.05. @returns undefined for m < 2 or k < 2.
 */
export const cochranCLimit = (variances: number, readings: number, alpha = 0.05): number | undefined => {
  if (variances < 2 || readings < 2) return undefined;
  const others = variances - 1;
  return 1 / (1 + others / fQuantile(1 - alpha / variances, readings - 1, others * (readings - 1)));
};
