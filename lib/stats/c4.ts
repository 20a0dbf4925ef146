/**
 * c₄(k) = √(2/(k − 1))·Γ(k/2)/Γ((k − 1)/2): the mean of the sample SD of k normal values is c₄·σ. Computed from
 * c₄(2) = √(2/π) by c₄(k)·c₄(k + 1) = √((k − 1)/k), which follows from Γ(x + 1) = x·Γ(x).
 *
 * @param k number of values, a whole number ≥ 2.
 * Source: SAS/QC User’s Guide, Functions, “C4 Function”: the formula, and c₄(5) = 0.939985603.
 */
export const c4 = (k: number): number => {
  let factor = Math.sqrt(2 / Math.PI);
  for (let n = 2; n < k; n += 1) factor = Math.sqrt((n - 1) / n) / factor;
  return factor;
};
