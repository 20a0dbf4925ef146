import { readFileSync } from 'node:fs';
import { test } from '@playwright/test';
import { downloadBy } from './support/download-by';
import { expect, openScreen } from './support/open-screen';

test.describe.configure({ timeout: 180_000 });

test('a chosen theme stands after a reload, and the skip link leads to the content', async ({ page }) => {
  await openScreen(page, '/');
  await page.getByText('Display', { exact: true }).click();
  await page.getByLabel('Theme', { exact: true }).selectOption('dark');
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
  await openScreen(page, '/');
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'Skip to the content' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('main')).toBeFocused();
});

test('units follow the person, files keep SI', async ({ page }) => {
  await openScreen(page, '/client/?c=23');
  await page.getByText('Display', { exact: true }).click();
  await page.getByLabel('Mass', { exact: true }).selectOption('lb');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('down 7.9 lb');
  const download = await downloadBy(page, () =>
    page
      .getByRole('region', { name: 'Every comparison of fat-free mass' })
      .getByRole('button', { name: 'Save table as CSV' })
      .click(),
  );
  const text = readFileSync(await download.path(), 'utf8');
  expect(text).toContain('Change [kg]');
  expect(text).toContain(',-3.5');
});
