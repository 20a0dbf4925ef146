/**
 * c₄(k): the mean of the sample SD of k normal values is c₄·σ. By c₄(2) = √(2/π) and c₄(k)·c₄(k+1) = √((k−1)/k), which
 * follows from Γ(x + 1) = x·Γ(x).
 *
 * @param k number of values, ≥ 2.
 * Source: any table of control chart constants, for example NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.
 */
export const c4 = (k: number): number => {
  let factor = Math.sqrt(2 / Math.PI);
  for (let n = 2; n < k; n += 1) factor = Math.sqrt((n - 1) / n) / factor;
  return factor;
};
