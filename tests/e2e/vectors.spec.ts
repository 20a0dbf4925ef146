import { test } from './support/open-clinic';
import { expect, openScreen } from './support/open-screen';

test.describe.configure({ timeout: 180_000 });

test('vectors show one sex, the clinic’s own baseline and what its ellipses are, and no outside reference', async ({
  page,
}) => {
  await openScreen(page, '/vectors/');
  const main = page.getByRole('main');
  await expect(main).toContainText(
    'where 50, 75 and 95 % of new individuals of this clinic’s own baseline would lie on average',
  );
  await expect(main).toContainText('Published references were made lying and differ, so none is shown.');
  await expect(page.locator('svg path.reference')).toHaveCount(3);
  const women = await page.locator('svg .points [data-key]').count();
  await page.getByRole('radio', { name: 'Men', exact: true }).check();
  await expect(page).toHaveURL(/shown=M/);
  await expect(page.getByRole('heading', { level: 1 })).toContainText(/\bmen\b/i);
  const men = await page.locator('svg .points [data-key]').count();
  expect(women).toBeGreaterThan(100);
  expect(men).toBeGreaterThan(100);
  expect(men).not.toBe(women);
  expect(await main.innerText()).not.toMatch(/oedema|dehydrat/i);
});

test('the filter’s sex decides where it is set', async ({ page }) => {
  await openScreen(page, '/vectors/?sex=M');
  await expect(page.getByRole('heading', { level: 1 })).toContainText(/\bmen\b/i);
  await expect(page.getByText('Sex coding of the equations')).toHaveCount(0);
});

test('a program’s row makes its people stand out', async ({ page }) => {
  await openScreen(page, '/vectors/');
  await page
    .getByRole('grid', { name: 'Mean vectors' })
    .getByRole('row')
    .filter({ hasText: 'Kidney nutrition' })
    .hover();
  const label = page.locator('svg [data-linked]').first();
  await expect(label).toHaveAttribute('aria-label', /Kidney nutrition/);
  expect(await page.locator('svg [data-linked]').count()).toBeGreaterThan(20);
});

test('every pair of programs is compared with both forms of T²', async ({ page }) => {
  await openScreen(page, '/vectors/');
  const rows = page.getByRole('grid', { name: 'Programs compared' }).locator('tbody tr');
  await expect(rows).toHaveCount(10);
  for (const row of await rows.all()) {
    const cells = (await row.locator('td').allInnerTexts()).map((cell) => cell.trim());
    const [, n1, n2, t2, f, df2] = cells.map(Number);
    const degrees = (n1 ?? 0) + (n2 ?? 0) - 3;
    expect(df2).toBe(degrees);
    const expected = ((t2 ?? 0) * degrees) / (2 * (degrees + 1));
    expect(Math.abs((f ?? 0) - expected)).toBeLessThan(0.02);
  }
});
