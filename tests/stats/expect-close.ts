import { expect } from 'vitest';

/** The project's numerical standard: |a − b| ≤ relative·max(|a|, |b|, SD of the quantity). */
export const expectClose = (actual: number | undefined, expected: number, relative = 1e-9, sd = 0): void => {
  if (actual === undefined) throw new Error(`nothing was computed where ${expected} was expected`);
  const scale = Math.max(Math.abs(actual), Math.abs(expected), sd);
  const apart = Math.abs(actual - expected);
  expect(apart <= relative * scale, `${actual} against ${expected}, apart by ${apart / scale} relative`).toBe(true);
};

/** Agreement with a value that is printed to so many decimals. */
export const expectPrinted = (actual: number | undefined, printed: number, decimals: number): void => {
  if (actual === undefined) throw new Error(`nothing was computed where ${printed} was expected`);
  expect(Math.abs(actual - printed), `${actual} against ${printed}`).toBeLessThanOrEqual(0.5001 * 10 ** -decimals);
};
