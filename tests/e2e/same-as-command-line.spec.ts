import { execFileSync } from 'node:child_process';
import type { Page } from '@playwright/test';
import { test } from './support/open-clinic';
import { expect, openScreen } from './support/open-screen';
import { savedTable } from './support/saved-table';

interface Numbers {
  readonly [name: string]: number | null;
}

interface CohortDocument {
  readonly precision: readonly (Numbers & { readonly measure: string })[];
  readonly programs: readonly (Numbers & {
    readonly program: string;
    readonly measure: string;
    readonly purpose: string;
    readonly ci: readonly [number, number] | null;
  })[];
  readonly vectors: {
    readonly groups: readonly {
      readonly program: string;
      readonly sex: string;
      readonly n: number;
      readonly mean: readonly number[];
    }[];
    readonly paired: readonly (Numbers & { readonly program: string })[];
    readonly between: readonly (Numbers & { readonly a: string; readonly b: string; readonly sex: string })[];
  };
}

let cohort: CohortDocument;

test.beforeAll(() => {
  const text = execFileSync(
    process.execPath,
    [
      '--import',
      'tsx',
      'lib/cli/cohort.ts',
      'sample-data/visits.csv',
      '--settings',
      'sample-data/settings.json',
      '--today',
      '2026-01-02',
    ],
    { maxBuffer: 2 ** 28, stdio: ['ignore', 'pipe', 'ignore'] },
  );
  cohort = JSON.parse(String(text)) as CohortDocument;
});

/** |a − b| ≤ 1e-9·max(|a|, |b|, SD of the quantity). */
const expectSame = (shown: string | undefined, computed: number | null | undefined, sd: number, what: string): void => {
  if (computed === null || computed === undefined) {
    expect(shown ?? '', what).toBe('');
    return;
  }
  expect(shown, what).toMatch(/\d/);
  const value = Number(shown);
  expect(Math.abs(value - computed), what).toBeLessThanOrEqual(
    1e-9 * Math.max(Math.abs(value), Math.abs(computed), sd),
  );
};

/** The cell under the column whose title begins so. */
const under = (row: Readonly<Record<string, string>> | undefined, start: string): string | undefined =>
  Object.entries(row ?? {}).find(([title]) => title.startsWith(start))?.[1];

const opened = async (page: Page, path: string): Promise<void> => {
  await openScreen(page, path);
  await expect(page.getByRole('button', { name: 'Save table as CSV' }).first()).toBeVisible({ timeout: 30_000 });
};

test('programs in the browser have the counts and numbers of the command line, for every value', async ({ page }) => {
  test.setTimeout(180_000);
  const measures = [...new Set(cohort.programs.map((row) => row.measure))];
  await opened(page, '/programs/');
  for (const measure of measures) {
    await page.getByLabel('Value', { exact: true }).selectOption(measure);
    await expect(page).toHaveURL(measure === 'ffm' ? /programs/ : new RegExp(`value=${measure}\\b`));
    await expect(page.locator('[aria-busy="true"]')).toHaveCount(0);
    const expected = cohort.programs.filter((row) => row.measure === measure && row.purpose === 'baseline-latest');
    await expect
      .poll(async () => (await savedTable(page)).map((row) => [row['Program'], row['Pairs']].join()))
      .toEqual(expected.map((row) => [row.program, row['n_pairs']].join()));
    const shown = await savedTable(page);
    for (const [index, row] of expected.entries()) {
      const line = shown[index] ?? {};
      const titled = (start: string): string | undefined => under(line, start);
      const sd = row['sd'] ?? 0;
      const what = `${measure} ${row.program}`;
      expect(
        [titled('▲'), titled('▼'), titled('●'), titled('○'), titled('held'), titled('stopped')].map(Number),
        what,
      ).toEqual(['up', 'down', 'within', 'cannot_compare', 'held', 'stopped'].map((name) => row[name]));
      expectSame(titled('Mean change'), row['mean'], sd, what);
      expectSame(titled('95 % interval from'), row.ci?.[0], sd, what);
      expectSame(titled('95 % interval to'), row.ci?.[1], sd, what);
    }
  }
});

test('the error study in the browser has the numbers of the command line', async ({ page }) => {
  await opened(page, '/repeatability/');
  const shown = (await savedTable(page)).filter((row) => row['LSC'] !== '');
  const expected = cohort.precision.filter((row) => row['lsc'] !== null);
  expect(shown.length).toBeGreaterThanOrEqual(expected.length);
  for (const row of expected) {
    const line = shown.find((candidate) => Math.abs(Number(candidate['LSC']) - (row['lsc'] ?? 0)) < 1e-7);
    expect(line, row.measure).toBeDefined();
    expectSame(line?.['PE'], row['pe'], 0, row.measure);
    expectSame(under(line, 'SD, between days'), row['s_b'], 0, row.measure);
    expectSame(under(line, 'SD, repositioning'), row['s_w'], 0, row.measure);
  }
});

test('vectors in the browser have the numbers of the command line', async ({ page }) => {
  await opened(page, '/vectors/');
  const means = await savedTable(page, 0);
  const women = cohort.vectors.groups.filter((group) => group.sex === 'F');
  expect(women.length).toBeGreaterThan(3);
  for (const group of women) {
    const line = means.find((row) => row['Program'] === group.program);
    expect(Number(line?.['n']), group.program).toBe(group.n);
    expectSame(line?.['R/H [Ohm/m]'], group.mean[0], 0, group.program);
    expectSame(line?.['Xc/H [Ohm/m]'], group.mean[1], 0, group.program);
  }
  const between = await savedTable(page, 1);
  for (const pair of cohort.vectors.between.filter((row) => row.sex === 'F')) {
    const line = between.find((row) => row['Pair'] === `${pair.a} – ${pair.b}`);
    expectSame(line?.['T²'], pair['t2'], 0, `${pair.a} ${pair.b}`);
    expectSame(line?.['p'], pair['p'], 1, `${pair.a} ${pair.b}`);
    expectSame(line?.['p, unequal'], pair['p_u'], 1, `${pair.a} ${pair.b}`);
  }
  const paired = await savedTable(page, 2);
  for (const row of cohort.vectors.paired) {
    const line = paired.find((candidate) => candidate['Program'] === row.program);
    expectSame(line?.['T²'], row['t2'], 0, row.program);
    expectSame(line?.['F'], row['f'], 0, row.program);
  }
});
