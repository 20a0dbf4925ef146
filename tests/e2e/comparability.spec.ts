import { readFile } from 'node:fs/promises';
import { test, type Page } from '@playwright/test';
import { downloadBy } from './support/download-by';
import { expect, openScreen, shareOpenedPage } from './support/open-screen';
import { section, signAs } from './support/settings-steps';

test.describe.configure({ timeout: 180_000 });

const takingPart = async (page: Page, setting: string): Promise<number> => {
  const row = page
    .getByRole('table', { name: /Results of fat-free mass/ })
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: setting, exact: true }) });
  return Number.parseInt(await row.getByRole('cell').first().innerText(), 10);
};

const STRICT = 'comparable, or by procedure';

test('rules are read in words, edited, kept, undone and taken along as a file; the counts follow', async ({ page }) => {
  shareOpenedPage(page);
  await openScreen(page, '/comparability/');
  const heading = page.getByRole('heading', { level: 1 });
  await expect(heading).toContainText(/\d+ of \d+ pairs of fat-free mass take part: comparable, or by procedure\./);
  const before = await takingPart(page, STRICT);
  const wider = await takingPart(page, '… and with a caution');
  expect(wider).toBeGreaterThan(before);
  expect(await takingPart(page, 'all pairs')).toBeGreaterThan(wider);
  await expect(heading).toContainText(`${String(before)} of`);

  const rules = page.getByRole('region', { name: 'The rules' });
  const fasting = rules.getByRole('listitem').filter({ has: page.getByRole('heading', { name: 'fasting' }) });
  await expect(fasting).toContainText('Default: cannot be compared, 8 hours (common practice, no source)');
  await fasting.getByLabel('Limit, hours: fasting').fill('0');
  await rules.getByRole('button', { name: 'Keep these rules' }).click();
  await expect(rules.getByRole('alert').filter({ hasText: 'fasting' })).toContainText('is not a number above 0');
  await fasting.getByLabel('Limit, hours: fasting').fill('2,5');
  await fasting.getByLabel('Grade: fasting').selectOption('only noted');
  await expect(fasting).toContainText('Fasted for less than 2.5 hours');
  await expect(fasting).toContainText('changed by this clinic');
  await expect(rules).toContainText('1 rule changed here and not kept yet.');
  await rules.getByRole('button', { name: 'Keep these rules' }).click();
  await signAs(page, 'AB');
  await expect(rules).toContainText('The rules were changed');
  await expect.poll(() => takingPart(page, STRICT)).toBeGreaterThan(before);

  await openScreen(page, '/settings/');
  const file = await downloadBy(page, () =>
    section(page, 'Rules, settings file').getByRole('button', { name: 'Save the settings as JSON' }).click(),
  );
  const text = await readFile(await file.path(), 'utf8');
  const saved = JSON.parse(text) as Record<string, unknown>;
  expect(saved['rules']).toEqual([{ id: 'fasting', grade: 'note', limit: 2.5 }]);
  expect(Object.keys(saved)).not.toContain('answers');
  await expect(section(page, 'Log').getByRole('row').nth(2)).toContainText('Settings changed');

  await page.getByRole('heading', { level: 1 }).click();
  await page.keyboard.press('Control+z');
  await expect(page.getByText('Undone: Settings changed.')).toBeVisible();
  await openScreen(page, '/comparability/');
  await expect.poll(() => takingPart(page, STRICT)).toBe(before);
  await openScreen(page, '/settings/');
  await section(page, 'Rules, settings file')
    .getByLabel('Read a settings file')
    .setInputFiles({ name: 'rules.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await expect(section(page, 'Rules, settings file')).toContainText('The settings of rules.json are in force.');
  await openScreen(page, '/comparability/');
  await expect.poll(() => takingPart(page, STRICT)).toBeGreaterThan(before);
  await fasting.getByRole('button', { name: 'Back to default: fasting' }).click();
  await expect(fasting.getByLabel('Limit, hours: fasting')).toHaveValue('8');

  await page.getByText('The same for every value').click();
  await expect(page.getByRole('table', { name: 'The same for every value' })).toContainText('Phase angle');
});

test('the record is shown by site, operator and month in order of name, with counts of the readings', async ({
  page,
}) => {
  shareOpenedPage(page);
  await openScreen(page, '/comparability/?by=operator');
  const record = page.getByRole('region', { name: 'What the record holds' });
  const names = await record
    .getByRole('table', { name: 'One condition: fasting' })
    .getByRole('rowheader')
    .allInnerTexts();
  expect(names.length).toBeGreaterThan(1);
  expect(names).toEqual([...names].sort());
  await expect(record.getByRole('table', { name: /Every condition, 4,267 readings/ })).toContainText(
    /\d of 4,267, \d+\s?%/,
  );
  await record.getByRole('radio', { name: 'month' }).click();
  await expect(record.getByRole('columnheader', { name: 'Month' })).toBeVisible();
  await record.getByLabel('Condition', { exact: true }).selectOption('rested');
  await expect(record.getByRole('table', { name: 'One condition: rested' }).getByRole('rowheader').first()).toHaveText(
    /^20\d\d-\d\d$/,
  );

  await openScreen(page, '/settings/');
  await section(page, 'Words, units, level').getByRole('radio', { name: 'patients' }).click();
  await signAs(page, 'MR');
  await expect(page.getByRole('navigation', { name: 'Screens' }).getByRole('link', { name: 'Patients' })).toBeVisible();
  for (const screen of ['/', '/contact/', '/clients/', '/client/?c=23', '/programs/', '/vectors/', '/comparability/']) {
    await openScreen(page, screen);
    const said = await page.getByRole('main').innerText();
    expect(/.{0,30}\bclients?\b.{0,30}/i.exec(said)?.[0], screen).toBeUndefined();
  }
});
