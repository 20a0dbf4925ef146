import { test } from './support/open-clinic';
import { expect, openScreen } from './support/open-screen';
import { savedTable } from './support/saved-table';

test.describe.configure({ timeout: 180_000 });

test('all clients are counted, but only rows in view are drawn', async ({ page }) => {
  await openScreen(page, '/clients/');
  const grid = page.getByRole('grid', { name: 'All clients' });
  await expect(grid).toHaveAttribute('aria-rowcount', '601');
  expect(await grid.getByRole('row').count()).toBeLessThan(80);
});

test('arrow keys, Home and End move the active row, Enter opens it', async ({ page }) => {
  await openScreen(page, '/clients/');
  const grid = page.getByRole('grid', { name: 'All clients' });
  await grid.getByRole('row').nth(1).focus();
  await page.keyboard.press('ArrowDown');
  await expect(grid.locator('tr[data-index="1"]')).toBeFocused();
  await page.keyboard.press('End');
  await expect(grid.locator('tr[data-index="599"]')).toBeFocused();
  await page.keyboard.press('Home');
  await expect(grid.locator('tr[data-index="0"]')).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('article').getByText('OM-0001', { exact: true })).toBeVisible();
});

test('search finds by name and stays out of the address; sorting says its direction', async ({ page }) => {
  await openScreen(page, '/clients/');
  const grid = page.getByRole('grid', { name: 'All clients' });
  await page.keyboard.press('/');
  await page.keyboard.type('huresby');
  await expect(grid.getByRole('link', { name: 'OM-0023' })).toBeVisible();
  expect(page.url()).not.toMatch(/huresby/i);
  await page.getByLabel('Search id or name').fill('');
  const visits = grid.getByRole('columnheader', { name: 'Visits' });
  await visits.getByRole('button').click();
  await expect(visits).toHaveAttribute('aria-sort', 'descending');
  await visits.getByRole('button').click();
  await expect(visits).toHaveAttribute('aria-sort', 'ascending');
});

test('the saved table holds every row and no cell that a spreadsheet would run', async ({ page }) => {
  await openScreen(page, '/clients/');
  const rows = await savedTable(page);
  expect(rows).toHaveLength(600);
  for (const row of rows) {
    for (const cell of Object.values(row)) expect(cell).not.toMatch(/^[=+\-@\t\r](?![\d.]+$)/);
  }
});

test('? lists the keys', async ({ page }) => {
  await openScreen(page, '/clients/');
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog', { name: 'What the keys do' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toHaveCount(0);
});
