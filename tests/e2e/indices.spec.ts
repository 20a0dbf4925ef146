import { test } from './support/open-clinic';
import { expect, openScreen } from './support/open-screen';

test.describe.configure({ timeout: 180_000 });

test('indices are plotted for change only, held people are counted apart, and no cut-off is drawn', async ({
  page,
}) => {
  await openScreen(page, '/indices/');
  const main = page.getByRole('main');
  await expect(page.getByRole('heading', { level: 1 })).toContainText(
    /people by fat-free mass and fat mass for their height; \d+ more are held/,
  );
  await expect(main).toContainText('For change only: the equation was made lying and this clinic measures standing');
  await expect(main).toContainText('Kyle 2001');
  const heading = await page.getByRole('heading', { level: 1 }).innerText();
  const [free, held] = (heading.match(/\d+/g) ?? []).map(Number);
  await expect(page.locator('svg .points [data-key]')).toHaveCount((free ?? 0) + (held ?? 0));
  expect(await main.innerText()).not.toMatch(/sarcopeni|malnutrition|stage \d/i);
});

test('one client’s path is drawn from the key in the address and can be put away', async ({ page }) => {
  await openScreen(page, '/indices/');
  const link = page.getByRole('grid', { name: 'Every point' }).getByRole('link').first();
  const key = new URL((await link.getAttribute('href')) ?? '', 'http://host').searchParams.get('c');
  await openScreen(page, `/indices/?c=${key ?? ''}`);
  await expect(page.locator('svg .path [data-key]').first()).toBeVisible();
  const finding = page.getByRole('heading', { level: 1 });
  await expect(finding).toContainText(
    /fat-free mass index [+−]?\d.* error\)|cannot be compared|not judged|no two visits/,
  );
  await page.getByRole('button', { name: 'Show no single client' }).click();
  await expect(page).not.toHaveURL(/[?&]c=/);
  await expect(page.locator('svg .path')).toHaveCount(0);
  await openScreen(page, '/indices/?c=80');
  await expect(finding).toHaveText('OM-0080: the indices are not judged: dialysis.');
  await expect(page.locator('svg .path [data-key]')).toHaveCount(0);
});
