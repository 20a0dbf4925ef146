import type { DataPoint } from './ellipse';

/** The part of y = slope·x + intercept inside a rectangle, from left to right; undefined where it misses it. */
export const clipLine = (
  slope: number,
  intercept: number,
  [left, right]: readonly [number, number],
  [low, high]: readonly [number, number],
): readonly [DataPoint, DataPoint] | undefined => {
  const atLow = slope === 0 ? left : (low - intercept) / slope;
  const atHigh = slope === 0 ? right : (high - intercept) / slope;
  if (slope === 0 && (intercept < low || intercept > high)) return undefined;
  const from = Math.max(left, Math.min(atLow, atHigh));
  const to = Math.min(right, Math.max(atLow, atHigh));
  if (!(from < to)) return undefined;
  return [
    [from, slope * from + intercept],
    [to, slope * to + intercept],
  ];
};
