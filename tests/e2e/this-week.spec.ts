import { test } from './support/open-clinic';
import { expect, openScreen } from './support/open-screen';

test.describe.configure({ timeout: 180_000 });

test('the first screen answers in a sentence, names both lists and says what they stand on', async ({ page }) => {
  await openScreen(page, '/');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    /^\d+ visits since Monday, \d+ of them usable\. \d+ people to talk to, \d+ to measure again, \d+ to invite\.$/,
  );
  await expect(page.getByRole('main')).toContainText(/With nobody changed, about [\d.]+ of \d+ people checked/);
  await expect(page.getByRole('complementary', { name: 'Invented data' })).toBeVisible();
  const talk = page.getByRole('region', { name: 'Talk to' });
  await expect(talk.getByRole('listitem').first()).toContainText('OM-0023');
  await expect(talk).not.toContainText('OM-0019');
  const state = page.getByRole('region', { name: 'State of the data' });
  await expect(state).toContainText('visits.csv');
  await expect(state).toContainText(/47 degrees of freedom from 47 clients/);
  await expect(state).toContainText(/recorded \d+\s%, by procedure \d+\s%/);
  await expect(page.locator('body')).not.toContainText(/pregnan|true loss|real loss/i);
});

test('a list of more than five leads to all of them and keeps the filter', async ({ page }) => {
  await openScreen(page, '/?site=Quay');
  const all = page.getByRole('region', { name: 'Measure again' }).getByRole('link', { name: /^all \d+$/ });
  const count = Number((await all.innerText()).replace(/\D/g, ''));
  await all.click();
  await expect(page).toHaveURL(/\/contact\/\?site=Quay$/);
  const again = page.getByRole('region', { name: 'Measure again' });
  await again.getByRole('button', { name: `all ${String(count)}` }).click();
  await expect(again.getByRole('link', { name: /^OM-\d{4}$/ })).toHaveCount(count);
});

test('what the address cannot mean is the default', async ({ page }) => {
  await openScreen(page, '/?level=42&value=nonsense&site=Nowhere&from=abc');
  await expect(page.getByLabel('Error at')).toHaveValue('95');
  await expect(page.getByLabel('Value', { exact: true })).toHaveValue('ffm');
  await expect(page.getByLabel('Site')).toHaveValue('');
  await expect(page.getByRole('button', { name: 'Show all again' })).toHaveCount(0);
});

test('a choice in the bar goes into the address, and back takes it out again', async ({ page }) => {
  await openScreen(page, '/');
  await page.getByLabel('Error at').selectOption('80');
  await expect(page).toHaveURL(/\?level=80$/);
  await page.goBack();
  await expect(page.getByLabel('Error at')).toHaveValue('95');
});
