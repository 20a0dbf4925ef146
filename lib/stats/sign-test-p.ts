import { binomialUpperTail } from './binomial-upper-tail';

/**
 * Exact two-sided sign test: how likely it is that the counts of two opposite results differ as much or more where both
 * are equally likely. Holds whatever the size of the error is. 1 where nothing was counted.
 *
 * @param first count, whole. @param second count, whole.
 * Source: binomial test against ½ (R `binom.test`).
 */
export const signTestP = (first: number, second: number): number =>
  Math.min(1, 2 * binomialUpperTail(Math.max(first, second), first + second, 0.5));
