import { normalCdf } from './normal-cdf';

/** Steps of the trapezoid rule over ±9 SD: its error falls below 1e-14 long before for an integrand that dies out at both ends. */
const STEP = 1 / 32;
const REACH = 9;

/** How often the best of `earlier` unchanged visits lies c or more above the latest, in SD of one visit. */
const chanceBeyond = (c: number, earlier: number): number => {
  let within = 0;
  for (let u = -REACH; u <= REACH; u += STEP) within += Math.exp(-(u * u) / 2) * normalCdf(u + c) ** earlier;
  return 1 - (within * STEP) / Math.sqrt(2 * Math.PI);
};

/**
 * Factor c of the threshold of a visit against the best of m earlier ones: the root of 1 − ∫φ(u)Φ(u + c)^m du = p. The
 * threshold is c·√(V/2); with m = 1 it is the ordinary z·√2.
 *
 * @param earlier m ≥ 1. @param oneSided p, 0.025 at the 95 % level.
 * Source: the maximum of m independent normal values, David and Nagaraja, Order Statistics (from memory); check values
 * computed in R.
 */
export const bestOfEarlierFactor = (earlier: number, oneSided: number): number => {
  let [low, high] = [0, 20];
  while (high - low > 1e-12 * high) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (chanceBeyond(middle, earlier) > oneSided) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};
