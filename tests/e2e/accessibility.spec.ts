import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { test, type Page } from '@playwright/test';
import type { AxeResults } from 'axe-core';
import { expect, openScreen } from './support/open-screen';

test.describe.configure({ timeout: 180_000 });

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const routes = [
  '/',
  '/contact/',
  '/clients/',
  '/client/?c=23',
  '/programs/',
  '/vectors/',
  '/indices/',
  '/repeatability/',
  '/import/',
];

const violationsOf = async (page: Page): Promise<readonly string[]> => {
  await page.evaluate(axe);
  const results = await page.evaluate(() =>
    (window as unknown as { axe: { run(options: object): Promise<AxeResults> } }).axe.run({
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
    }),
  );
  expect(results.passes.length).toBeGreaterThan(10);
  return results.violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
};

for (const route of routes) {
  test(`${route} has no violation of WCAG 2.2 AA that axe finds, in both themes, and fits a narrow window`, async ({
    page,
  }) => {
    await page.emulateMedia({ reducedMotion: 'reduce', colorScheme: 'light' });
    await openScreen(page, route);
    expect(await violationsOf(page), 'light').toEqual([]);
    await page.emulateMedia({ reducedMotion: 'reduce', colorScheme: 'dark' });
    expect(await violationsOf(page), 'dark').toEqual([]);
    await page.setViewportSize({ width: 390, height: 844 });
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow).toBeLessThanOrEqual(0);
  });
}

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
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page
      .getByRole('region', { name: 'Every comparison of fat-free mass' })
      .getByRole('button', { name: 'Save table as CSV' })
      .click(),
  ]);
  const text = readFileSync(await download.path(), 'utf8');
  expect(text).toContain('Change [kg]');
  expect(text).toContain(',-3.5');
});
