import type { BivariateSample } from '../../../lib/stats/bivariate';
import values from './values/hotelling-and-ellipse.json';

/** Sepal length and width of fifty flowers of a species, in cm, as sufficient statistics. */
export const irisSample = (species: keyof typeof values.ellipse): BivariateSample => {
  const { n, mean, cov } = values.ellipse[species];
  return {
    n,
    mean: [mean[0] ?? NaN, mean[1] ?? NaN],
    cov: { xx: cov[0]?.[0] ?? NaN, xy: cov[0]?.[1] ?? NaN, yy: cov[1]?.[1] ?? NaN },
  };
};
