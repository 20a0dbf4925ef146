import { test } from './support/open-clinic';
import { expect, openScreen } from './support/open-screen';

test.describe.configure({ timeout: 180_000 });

test('repeatability answers how large a change must be, with its range and what it stands on', async ({ page }) => {
  await openScreen(page, '/repeatability/');
  const main = page.getByRole('main');
  await expect(main).toContainText('How large must a change be here?');
  await expect(page.getByRole('heading', { level: 1 })).toContainText(
    /A change of fat-free mass must reach 1\.\d\s?kg \(1\.\d to [12]\.\d\)/,
  );
  await expect(main).toContainText('47 people');
  await expect(main).toContainText(/Of 100 people who did not change, between \d+ and \d+ would be called changed\./);
  const planner = page.getByRole('region', { name: 'Plan an error study' });
  await planner.getByLabel('People').fill('12');
  await planner.getByLabel('Days each').fill('3');
  await planner.getByLabel('Readings each day').fill('2');
  await expect(planner).toContainText('24 degrees of freedom between days and 36 of repositioning');
  await expect(planner).toContainText('Not enough: with 3 days each it takes 15 people.');
  await planner.getByRole('button', { name: 'Show the sheet' }).click();
  const sheet = planner.getByRole('group', { name: 'Study sheet' });
  await expect(sheet.locator('tbody tr')).toHaveCount(12 * 3 * 2);
  await page.emulateMedia({ media: 'print' });
  await expect(sheet).toBeVisible();
  await page.emulateMedia({ media: null });
  await planner.getByRole('button', { name: 'Hide the sheet' }).click();
});

test('repositioning alone would ask for less than both parts', async ({ page }) => {
  await openScreen(page, '/repeatability/');
  const parts = page.getByRole('region', { name: 'Why one reading repeated at once is not enough' });
  const sizes = (await parts.locator('dd').allInnerTexts()).map((text) => Number.parseFloat(text));
  expect(sizes).toHaveLength(2);
  expect(sizes[0]).toBeLessThan((sizes[1] ?? 0) / 2);
});

test('a value without an error study has no threshold', async ({ page }) => {
  await openScreen(page, '/repeatability/?value=ecw_exported');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('is not known here yet');
  const row = page
    .getByRole('grid', { name: 'Every value' })
    .getByRole('row')
    .filter({ hasText: 'extracellular water' });
  await expect(row).toContainText('none');
});

test('a lower level of error asks for a smaller change', async ({ page }) => {
  const size = async (level: number): Promise<number> => {
    await openScreen(page, `/repeatability/?level=${level}`);
    const text = await page.getByRole('heading', { level: 1 }).innerText();
    return Number.parseFloat(/must reach ([\d.]+)/.exec(text)?.[1] ?? '');
  };
  const [narrow, wide] = [await size(80), await size(95)];
  expect(narrow).toBeGreaterThan(0);
  expect(narrow).toBeLessThan(wide);
});
