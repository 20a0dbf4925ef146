import fc from 'fast-check';
import { linearRegression, variance } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { binomialUpperTail } from '../../lib/stats/binomial-upper-tail';
import { changeSpread } from '../../lib/stats/change-spread';
import { countByErrorP } from '../../lib/stats/count-by-error-p';
import { normalUpperTail } from '../../lib/stats/normal-upper-tail';
import { signTestP } from '../../lib/stats/sign-test-p';
import { slopeFromError } from '../../lib/stats/slope-from-error';
import { tQuantile } from '../../lib/stats/t-quantile';
import { expectClose, expectPrinted } from './expect-close';

const Z = 1.959963984540054;

describe('as many people beyond the threshold by error alone', () => {
  // R 4.2.2: pbinom(x − 1, n, .025, lower = FALSE); the mixture by integrate() over dchisq.
  test.each([
    [6, 100, 0.039915852251, 0.1376200473643, 0.0948187036695, 0.0715251045135],
    [12, 200, 0.00484897413207, 0.0986124972216, 0.0627248472539, 0.0278271204901],
    [20, 500, 0.0288679093445, 0.2536738356743, 0.1745735538662, 0.1292249033176],
  ])('%i of %i', (x, n, plain, by30, byT30, by100) => {
    expectPrinted(binomialUpperTail(x, n, 0.025), plain, 12);
    expectPrinted(countByErrorP(x, n, Z, 30), by30, 12);
    expectPrinted(countByErrorP(x, n, tQuantile(0.975, 30), 30), byT30, 12);
    expectPrinted(countByErrorP(x, n, Z, 100), by100, 12);
  });

  test('is the plain binomial where the error is known, and falls with the count', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 10, max: 200 }), (n, df) => {
        let before = 1;
        for (let x = 0; x <= Math.min(n, 12); x += 1) {
          const p = countByErrorP(x, n, Z, df);
          expect(p).toBeLessThanOrEqual(before + 1e-12);
          before = p;
        }
        expect(countByErrorP(1, n, Z, 1e7)).toBeCloseTo(binomialUpperTail(1, n, normalUpperTail(Z)), 5);
      }),
      { seed: 3, numRuns: 30 },
    );
  });
});

test('gains against losses: 12 and 4 by the exact sign test', () => {
  // R 4.2.2: binom.test(12, 16)$p.value.
  expectPrinted(signTestP(12, 4), 0.0768127441406, 12);
  expect(signTestP(4, 12)).toBe(signTestP(12, 4));
  expect([signTestP(0, 0), signTestP(3, 3)]).toEqual([1, 1]);
});

test('the spread of 40 changes against their error', () => {
  // R 4.2.2: pf(1.2 / 0.72, 39, 30, lower = FALSE).
  const found = changeSpread(1.2, 0.72, 40, 30);
  expectPrinted(found?.f, 1.6667, 4);
  expectPrinted(found?.p, 0.0752157857, 9);
  expectPrinted(found?.trueSd, Math.sqrt(0.48), 12);
  expect(changeSpread(0.5, 0.72, 40, 30)?.trueSd).toBe(0);
  expect([changeSpread(1, 0, 40, 30), changeSpread(1, 1, 1, 30)]).toEqual([undefined, undefined]);
});

// Every combination of a true value and the errors of two visits once: nobody changed, and error is unrelated to all else.
test('the slope that error alone makes is the least-squares slope where nobody changed', () => {
  const [spread, error] = [3, 0.8];
  const signs = [-1, 1];
  const points = signs.flatMap((truth) =>
    signs.flatMap((first) =>
      signs.map((second) => [truth * spread + first * error, (second - first) * error] as [number, number]),
    ),
  );
  const firstVariance = variance(points.map(([value]) => value));
  expectClose(slopeFromError(error ** 2, firstVariance) ?? NaN, linearRegression(points).m);
});

test('the slope that error alone makes, from its formula by hand', () => {
  expectPrinted(slopeFromError(0.6 ** 2, 9 ** 2), -0.004444444, 9);
  expectPrinted(slopeFromError(0.15 ** 2, 0.6 ** 2), -0.0625, 12);
  expect(slopeFromError(0.36, 0)).toBeUndefined();
});
