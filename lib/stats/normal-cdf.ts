import cdf from '@stdlib/stats-base-dists-normal-cdf';

/** Standard normal distribution function Φ(z), accurate in the lower tail. Source: @stdlib (erfc). */
export const normalCdf = (z: number): number => cdf(z, 0, 1);
