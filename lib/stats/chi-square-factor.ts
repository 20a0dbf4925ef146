import { chiSquareQuantile } from './chi-square-quantile';

/** Constant c of the ellipse of a known bivariate normal distribution, χ²(p; 2): published references of large n only. */
export const chiSquareFactor = (probability: number): number => chiSquareQuantile(probability, 2);
