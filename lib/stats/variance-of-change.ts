import type { VarianceComponents } from './variance-components';

/**
 * Variance of the difference of two visit values of k₁ and k₂ readings when the client has not changed:
 * V = 2·s_b² + s_w²·(1/k₁ + 1/k₂). Replicates never shrink the day component.
 *
 * Where replicates earn nothing yet V = 2M for every k, never less than 2·s_w². Without a between-day part
 * V = 2·s_w² for every k, a lower limit only.
 *
 * @param readings1 k₁ ≥ 1. @param readings2 k₂ ≥ 1.
 * @returns squared units of the value.
 */
export const varianceOfChange = (components: VarianceComponents, readings1: number, readings2: number): number => {
  const { between, repositioning } = components;
  if (between === undefined) return 2 * repositioning;
  if (between.replicatesEarnNothing) return 2 * Math.max(between.meanSquare, repositioning);
  return 2 * between.dayToDay + repositioning * (1 / readings1 + 1 / readings2);
};
