import type { BivariateSample } from './bivariate';
import { hotellingOneSample, type HotellingTest } from './hotelling-one-sample';

/**
 * Paired Hotelling T²: whether the mean vector of within-client differences is zero. May mix the sexes, each client
 * being their own control.
 *
 * @param differences n, mean and covariance of the differences. @returns undefined for n < 3 or singular.
 */
export const hotellingPaired = (differences: BivariateSample): HotellingTest | undefined =>
  hotellingOneSample(differences, [0, 0]);
