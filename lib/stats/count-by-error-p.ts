import { binomialUpperTail } from './binomial-upper-tail';
import { normalUpperTail } from './normal-upper-tail';

/** Trapezoid rule over ln u in SD of ln u, √(2/ν): its error falls geometrically for an integrand that dies out at both ends. */
const STEP = 1 / 4;
const [BELOW, ABOVE] = [16, 10];
/** Less adds nothing to a double. */
const NEGLIGIBLE = 1e-18;

/**
 * How likely it is that x or more of n unchanged people exceed the threshold in one direction, allowing for a precision
 * error that is itself an estimate: ∫ P(Bin(n, Φ(−f·√(u/ν))) ≥ x)·χ²_ν(u) du. The error is one for all people of a
 * clinic, so their results do not vary independently; with ν → ∞ it is the plain binomial.
 *
 * @param x people beyond, whole. @param n people judged, one change each. @param factor f that multiplies √V.
 * @param df ν of the precision error.
 */
export const countByErrorP = (x: number, n: number, factor: number, df: number): number => {
  if (x <= 0) return 1;
  const sd = Math.sqrt(2 / df);
  let [weighed, weights] = [0, 0];
  for (let place = -BELOW; place <= ABOVE; place += STEP) {
    const ratio = Math.exp(place * sd);
    // χ²_ν(u)·u at u = ν·ratio, but for a constant that the sum of the weights takes out.
    const weight = Math.exp((df / 2) * (place * sd + 1 - ratio));
    if (weight < NEGLIGIBLE) continue;
    weighed += weight * binomialUpperTail(x, n, normalUpperTail(factor * Math.sqrt(ratio)));
    weights += weight;
  }
  return weighed / weights;
};
