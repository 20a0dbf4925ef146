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
  await expect(first).toContainText(/falls by \d\.\d\d\skg a month over 4 comparable visits since 8 September 2025/);
  await expect(talk.getByRole('listitem').filter({ hasText: 'OM-0058' })).toContainText(
    /63\s% is lean by estimate \(\d+\s% to \d+\s% with the error of both\), above this clinic’s limit of 35\s%/,
  );
  await expect(again.getByRole('listitem').filter({ hasText: 'OM-0007' }).last()).toContainText(
    'another hand-electrode position',
  );
  await expect(again.getByRole('listitem').filter({ hasText: 'OM-0019' }).last()).toContainText('fits less water');
  await expect(again.getByRole('listitem').filter({ hasText: 'OM-0044' }).last()).toContainText('just beyond');
  for (const id of ['OM-0052', 'OM-0120', 'OM-0140', 'OM-0155']) {
    await expect(talk.getByRole('listitem').filter({ hasText: id })).toHaveCount(0);
  }
  await expect(page.locator('body')).not.toContainText(/pregnan|birth/i);
});

test('Measure again shows the first of each reason, and all of them at a press', async ({ page }) => {
  await openScreen(page, '/contact/');
  const again = page.getByRole('region', { name: 'Measure again' });
  await expect(again.getByRole('heading', { name: /^Only the baseline is at fault · \d+$/ })).toBeVisible();
  const links = again.getByRole('link', { name: /^OM-\d{4}$/ });
  expect(await links.count()).toBeLessThanOrEqual(15);
  const all = again.getByRole('button', { name: /^all \d+$/ });
  const n = Number((await all.textContent())?.slice('all '.length));
  await all.click();
  await expect(links).toHaveCount(n);
  await expect(again.getByRole('button', { name: 'Use 8 December 2025 as baseline of OM-0066' })).toBeVisible();
  const listed = async (name: string): Promise<readonly string[]> =>
    page
      .getByRole('region', { name })
      .getByRole('link', { name: /^OM-\d{4}$/ })
      .allTextContents();
  const [talkTo, toMeasure] = [await listed('Talk to'), await listed('Measure again')];
  expect(talkTo).toEqual(expect.arrayContaining(['OM-0023', 'OM-0058']));
  expect(toMeasure).toEqual(expect.arrayContaining(['OM-0007', 'OM-0019', 'OM-0044', 'OM-0066']));
  const onNone = ['OM-0031', 'OM-0052', 'OM-0071', 'OM-0080', 'OM-0093', 'OM-0101', 'OM-0112', 'OM-0120', 'OM-0133'];
  for (const id of [...onNone, 'OM-0140', 'OM-0155', 'OM-0160', 'OM-0171', 'OM-0188']) {
    expect([talkTo.includes(id), toMeasure.includes(id)], id).toEqual([false, false]);
  }
  expect(talkTo.filter((id) => toMeasure.includes(id))).toEqual([]);
});

test('each rule says what it looked at and listed', async ({ page }) => {
  await openScreen(page, '/contact/');
  const row = (rule: string) =>
    page.getByRole('region', { name: 'What each rule looked at' }).getByRole('row', { name: rule });
  await expect(row('Change beyond error and expectation')).toContainText(/\d+\s*\d\.\d\s*5$/);
  await expect(row('Weight loss that was not meant')).toContainText('–');
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
