import { chiSquareQuantile } from './chi-square-quantile';

/**
 * Confidence interval of a precision error or of a least significant change on ν degrees of freedom:
 * value·√(ν/χ²(1−α/2, ν)) to value·√(ν/χ²(α/2, ν)).
 *
 * @param value PE or LSC. @param df ν > 0. @param level two-sided confidence, default 0.95.
 * Source: χ² interval of a variance, with s_w² taken as known.
 */
export const precisionRange = (value: number, df: number, level = 0.95): readonly [number, number] => {
  const alpha = 1 - level;
  return [
    value * Math.sqrt(df / chiSquareQuantile(1 - alpha / 2, df)),
    value * Math.sqrt(df / chiSquareQuantile(alpha / 2, df)),
  ];
};
