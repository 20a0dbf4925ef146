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
