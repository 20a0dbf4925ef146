import { test } from './support/open-clinic';
import { expect, openScreen } from './support/open-screen';

test.describe.configure({ timeout: 180_000 });

test('programs stand in the order of their names with counts of N and no claim of a cause', async ({ page }) => {
  await openScreen(page, '/programs/');
  const table = page.getByRole('grid', { name: 'Every program, in numbers' });
  await expect(table.locator('[data-row-name]')).toHaveText([
    /^Before surgery/,
    /^Check-ups only/,
    /^Kidney nutrition/,
    /^Strength, 65 and over/,
    /^Weight management/,
  ]);
  const text = await page.getByRole('main').innerText();
  expect(text).toContain('not compared with people who did not take part');
  expect(text).toContain('tend to move back on their own');
  expect(text).not.toMatch(/\b(works|effective|because)\b/i);
  for (const row of await table.locator('tbody tr').all()) {
    const cells = await row.locator('td').allInnerTexts();
    const counts = cells.slice(7).map((cell) => /^(\d+)\/(\d+)/.exec(cell.trim()));
    const n = counts.map((match) => Number(match?.[1]));
    expect(n.every(Number.isInteger)).toBe(true);
    expect(n.reduce((sum, value) => sum + value, 0)).toBe(Number(cells[2]));
    expect(Number(counts[0]?.[2])).toBe((n[0] ?? 0) + (n[1] ?? 0) + (n[2] ?? 0));
  }
});

test('the way visits are paired is kept in the address', async ({ page }) => {
  await openScreen(page, '/programs/');
  await page.getByRole('radio', { name: 'Visit to visit' }).check();
  await expect(page).toHaveURL(/purpose=consecutive/);
  await expect(page.getByRole('main')).toContainText('share visits');
  await page.reload();
  await expect(page.getByRole('radio', { name: 'Visit to visit' })).toBeChecked();
});

test('a row of the table makes its interval stand out', async ({ page }) => {
  await openScreen(page, '/programs/');
  const row = page.getByRole('grid').getByRole('row').filter({ hasText: 'Kidney nutrition' });
  await row.hover();
  await expect(page.locator('svg [data-linked]')).toHaveAttribute('data-key', 'Kidney nutrition');
});

test('one program gives a sentence with its size, and the arrow keys lead along the intervals', async ({ page }) => {
  await openScreen(page, '/programs/?program=Before+surgery');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('In Before surgery, mean fat-free mass');
  await openScreen(page, '/programs/');
  const points = page.locator('svg [data-key]');
  await points.first().focus();
  await page.keyboard.press('ArrowDown');
  await expect(points.nth(1)).toBeFocused();
});
