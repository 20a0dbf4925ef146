import { describe, expect, test } from 'vitest';
import { limitsOfAgreement } from '../../lib/stats/limits-of-agreement';
import { expectPrinted } from './expect-close';

/**
 * First readings of two peak flow meters in 17 people, l/min. Bland JM, Altman DG. Lancet 1986;i:307–310, table 1. The
 * expected values were computed from these data with R 4.2.2; R's limits are with 1.96, ours with z, smaller by 0.000036 SD.
 */
const LARGE = [494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427];
const MINI = [512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451];
const differences = LARGE.map((value, index) => value - (MINI[index] ?? Number.NaN));

describe('limits of agreement', () => {
  test('of two peak flow meters are those of the published data', () => {
    const found = limitsOfAgreement(differences);
    expect(found?.n).toBe(17);
    expect(found?.bias).toBeCloseTo(-2.117647, 6);
    expect(found?.sd).toBeCloseTo(38.76513, 5);
    expect(found?.limits[0]).toBeCloseTo(-78.097301611094 + 36.0155e-6 * 38.76513, 4);
    expect(found?.limits[1]).toBeCloseTo(73.86200749344692 - 36.0155e-6 * 38.76513, 4);
    expect(found?.biasInterval[0]).toBeCloseTo(-22.04884, 4);
    expect(found?.biasInterval[1]).toBeCloseTo(17.81354, 4);
  });

  test('have the exact standard error, and an interval of t times it', () => {
    const found = limitsOfAgreement(differences);
    expectPrinted(found?.limitSe, 16.39490579365342, 11);
    expectPrinted(found?.lowerInterval[0], -112.85155313931085, 8);
    expectPrinted(found?.lowerInterval[1], -43.34025779491259, 8);
    expectPrinted(found?.upperInterval[0], 39.104963677265516, 8);
    expectPrinted(found?.upperInterval[1], 108.61625902166378, 8);
  });

  test('are not given for fewer than three people', () => {
    expect(limitsOfAgreement([])).toBeUndefined();
    expect(limitsOfAgreement([1, 2])).toBeUndefined();
    expect(limitsOfAgreement([1, 2, 3])?.bias).toBe(2);
  });
});
