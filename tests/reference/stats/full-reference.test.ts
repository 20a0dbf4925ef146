import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { chiSquareQuantile } from '../../../lib/stats/chi-square-quantile';
import { chiSquareUpperTail } from '../../../lib/stats/chi-square-upper-tail';
import { fQuantile } from '../../../lib/stats/f-quantile';
import { fUpperTail } from '../../../lib/stats/f-upper-tail';
import { quantileType7 } from '../../../lib/stats/quantile-type-7';
import { tQuantile } from '../../../lib/stats/t-quantile';
import { tUpperTail } from '../../../lib/stats/t-upper-tail';
import { expectClose } from '../../stats/expect-close';

const folder = fileURLToPath(new URL('../../../../shared/reference/', import.meta.url));
const present = existsSync(`${folder}distributions-40-digit.json`);
const read = (name: string): unknown => JSON.parse(readFileSync(`${folder}${name}.json`, 'utf8'));

type Row = Readonly<Record<'p' | 'x' | 'df' | 'df1' | 'df2', number>> & {
  readonly q: string;
  readonly upper: number | null;
};
type Rows<Key extends string> = Readonly<Record<Key, readonly Row[]>>;
interface QuantileSets {
  readonly probs: readonly number[];
  readonly sets: Readonly<
    Record<string, { readonly values: readonly number[]; readonly types: { readonly type7: readonly number[] } }>
  >;
}

/** Everything in the optional reference folder beside the checkout; the thinned values of this folder always run. */
describe.skipIf(!present)('the optional reference folder', () => {
  it('holds quantiles to 40 digits that all agree', () => {
    const { qf, qchisq, qt } = read('distributions-40-digit') as Rows<'qf' | 'qchisq' | 'qt'>;
    expect([qf.length, qchisq.length, qt.length]).toEqual([497, 250, 250]);
    for (const { p, df1, df2, q } of qf) expectClose(fQuantile(p, df1, df2), Number(q));
    for (const { p, df, q } of qchisq) expectClose(chiSquareQuantile(p, df), Number(q));
    for (const { p, df, q } of qt) expectClose(tQuantile(p, df), Number(q));
  });

  it('holds upper tails of R that all agree, apart from those below the smallest double', () => {
    const { t_sf: t, chisq, f_sf: f } = read('distributions-r') as Rows<'t_sf' | 'chisq' | 'f_sf'>;
    expect([t.length, chisq.length, f.length]).toEqual([176, 144, 600]);
    const positive = (row: Row): row is Row & { readonly upper: number } => row.upper !== null && row.upper > 0;
    for (const { x, df, upper } of t.filter(positive)) expectClose(tUpperTail(x, df), upper);
    for (const { x, df, upper } of chisq.filter(positive)) expectClose(chiSquareUpperTail(x, df), upper);
    for (const { x, df1, df2, upper } of f.filter(positive)) expectClose(fUpperTail(x, df1, df2), upper);
  });

  it('holds type 7 quantiles that all agree', () => {
    const { probs, sets } = read('quantiles') as QuantileSets;
    expect(Object.keys(sets).length).toBe(6);
    for (const set of Object.values(sets)) {
      probs.forEach((p, index) => {
        expectClose(quantileType7(set.values, p), set.types.type7[index] ?? NaN, 1e-12, 1);
      });
    }
  });
});

describe.runIf(!present)('without the optional reference folder', () => {
  it('runs on the thinned values alone', ({ skip }) => {
    skip('the optional reference folder is not beside the checkout');
  });
});
