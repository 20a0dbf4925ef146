import { test } from './support/open-clinic';
import { expect, openScreen } from './support/open-screen';

test.describe.configure({ timeout: 180_000 });

test('both lists give reasons in words, the largest unexpected change first', async ({ page }) => {
  await openScreen(page, '/contact/');
  const talk = page.getByRole('region', { name: 'Talk to' });
  const again = page.getByRole('region', { name: 'Measure again' });
  const first = talk.getByRole('listitem').first();
  await expect(first).toContainText('OM-0023');
  await expect(first).toContainText('Fat-free mass ▼ down 3.6 kg since 8 September 2025 (14 weeks)');
  await expect(first).toContainText('more than this clinic’s measurement error in this estimate');
  await expect(first).toContainText('Seen at two visits');
  await expect(first).toContainText('fits cell mass rather than water');
  await expect(talk.getByRole('listitem').filter({ hasText: 'OM-0058' })).toBeVisible();
  await expect(again.getByRole('listitem').filter({ hasText: 'OM-0007' })).toContainText(
    'another hand-electrode position',
  );
  await expect(again.getByRole('listitem').filter({ hasText: 'OM-0019' })).toContainText('fits less water');
  await expect(again.getByRole('listitem').filter({ hasText: 'OM-0044' })).toContainText('just beyond');
  for (const id of ['OM-0052', 'OM-0120', 'OM-0140', 'OM-0155']) {
    await expect(talk.getByRole('listitem').filter({ hasText: id })).toHaveCount(0);
  }
  await expect(page.locator('body')).not.toContainText(/pregnan|birth/i);
});

test('the head of the list says how many are expected by error alone', async ({ page }) => {
  await openScreen(page, '/contact/');
  const listed = await page.getByRole('region', { name: 'Talk to' }).getByRole('listitem').count();
  await expect(page.getByRole('main')).toContainText(
    new RegExp(
      `\\d+ clients checked: about [\\d.]+ would be on Talk to by measurement error alone \\([\\d.]+ to \\d+\\), ${listed} `,
    ),
  );
});

test('a row leads to the client by a key, not by a name', async ({ page }) => {
  await openScreen(page, '/contact/');
  await page.getByRole('region', { name: 'Talk to' }).getByRole('link', { name: 'OM-0023' }).click();
  await expect(page).toHaveURL(/\/client\/\?c=\d+$/);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('down 3.6 kg since 8 September 2025');
});
