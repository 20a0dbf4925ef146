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
    const counts = cells.slice(7, 14).map((cell) => /^(\d+)\/(\d+)/.exec(cell.trim()));
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
  const row = page
    .getByRole('grid', { name: 'Every program, in numbers' })
    .getByRole('row')
    .filter({ hasText: 'Kidney nutrition' });
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

test('a planned review says who was seen of those due; a sensitivity is named wherever its figures stand', async ({
  page,
}) => {
  await openScreen(page, '/programs/');
  await page.getByRole('radio', { name: 'Baseline to review' }).check();
  await page.getByLabel('Planned review').selectOption('12');
  const main = page.getByRole('main');
  await expect(main).toContainText('from baseline to the planned review of week 12');
  await expect(main).not.toContainText(/sensitivity:/i);
  const table = page.getByRole('grid', { name: 'Every program, in numbers' });
  const row = table.getByRole('row').filter({ hasText: 'Weight management' });
  const cells = async () => (await row.locator('td').allInnerTexts()).map((cell) => cell.trim());
  const [, due, seen] = await cells();
  const [n, of] =
    /^(\d+)\/(\d+)/
      .exec(seen ?? '')
      ?.slice(1)
      .map(Number) ?? [];
  expect(of).toBe(Number(due));
  expect(n).toBeGreaterThan(0);
  expect(n).toBeLessThanOrEqual(Number(due));
  const byDefault = await cells();
  await page.getByLabel('Visit of the window').selectOption('first-in-window');
  await expect(page).toHaveURL(/visit=first-in-window/);
  await expect(main.getByText('sensitivity: first in window', { exact: true })).toBeVisible();
  await expect(page.getByRole('figure')).toContainText('Sensitivity: first in window.');
  // The first visit of the window is not always the closest, and other pairs can be compared.
  await expect.poll(async () => (await cells())[5]).not.toBe(byDefault[5]);
  const other = await cells();
  expect(other.slice(1, 3)).toEqual(byDefault.slice(1, 3));
  expect(other[3]).not.toBe(byDefault[3]);
  await expect(table.getByRole('row').filter({ hasText: 'Before surgery' })).toHaveCount(0);
});

test('the interval of a mean stays one of 95 % at another level of error, and says so', async ({ page }) => {
  const interval = async (): Promise<readonly string[]> => {
    const row = page
      .getByRole('grid', { name: 'Every program, in numbers' })
      .getByRole('row')
      .filter({ hasText: 'Weight management' });
    return (await row.locator('td').allInnerTexts()).slice(4, 7);
  };
  await openScreen(page, '/programs/');
  const at95 = await interval();
  await openScreen(page, '/programs/?level=80');
  await expect(page.getByRole('columnheader', { name: '95 % interval from' })).toBeVisible();
  await expect(page.getByRole('main')).not.toContainText('80 % interval');
  expect(await interval()).toEqual(at95);
});

test('who went as intended is counted of those judged', async ({ page }) => {
  await openScreen(page, '/programs/?value=weight');
  const row = page
    .getByRole('grid', { name: 'Every program, in numbers' })
    .getByRole('row')
    .filter({ hasText: 'Weight management' });
  const cells = (await row.locator('td').allInnerTexts()).map((cell) =>
    /^(\d+)\/(\d+)/.exec(cell.trim())?.slice(1).map(Number),
  );
  const [, down] = cells.slice(7, 9);
  expect(cells[14]?.[0]).toBe(down?.[0]);
  await expect(page.getByRole('main')).toContainText('A count, not an effect.');
});
