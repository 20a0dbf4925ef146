import { normalCdf } from './normal-cdf';

/** Standard normal upper tail P(Z ≥ z), by the symmetry Φ(−z), so that small tails keep all their digits. */
export const normalUpperTail = (z: number): number => normalCdf(-z);
