import { readFileSync, writeFileSync } from 'node:fs';
import { test } from '@playwright/test';
import { expect, openScreen } from './support/open-screen';
import { backUp, beginClinic, openSettings, section, signAs, typeTwice } from './support/settings-steps';

test.describe.configure({ timeout: 300_000 });

const PASSPHRASE = 'blue heron lamp';

test('a backup brings back what stood when it was made; undo brings back what stood before the restore', async ({
  page,
}) => {
  await beginClinic(page, 'Harbour');
  const keeping = section(page, 'Keeping');
  const heading = page.getByRole('heading', { level: 1 });
  await expect(keeping).toContainText('Never backed up.');
  const path = await backUp(page, null);
  await expect(keeping).toContainText('Last backed up today. Nothing was changed since.');
  await page.getByLabel('Name of the open clinic').fill('North Street');
  await page.getByRole('button', { name: 'Rename', exact: true }).click();
  await expect(heading).toContainText('How North Street is kept');
  await expect(keeping).toContainText('One change since.');
  await keeping.getByLabel('Choose a backup file').setInputFiles(path);
  await expect(keeping).toContainText('North Street will hold what the backup holds.');
  await keeping.getByRole('button', { name: 'Restore', exact: true }).click();
  await expect(heading).toContainText('How Harbour is kept');
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('link', { name: 'This week' }).click();
  await expect(page.getByRole('region', { name: 'State of the data' })).toContainText('backed up today');
  await page
    .getByRole('button', { name: /^Undo: Backup restored/ })
    .first()
    .click();
  await expect(page.getByRole('banner')).toContainText('North Street');
});

test('a sealed backup opens with its passphrase alone, and not at all after one byte was changed', async ({
  page,
}, testInfo) => {
  await beginClinic(page, 'Harbour');
  const keeping = section(page, 'Keeping');
  const path = await backUp(page, PASSPHRASE);
  const restore = async (file: string, passphrase: string): Promise<void> => {
    await keeping.getByLabel('Choose a backup file').setInputFiles(file);
    await keeping.getByRole('radio', { name: 'as a new clinic beside it' }).click();
    await keeping.getByLabel('The file is sealed. Its passphrase:').fill(passphrase);
    await keeping.getByRole('button', { name: 'Restore', exact: true }).click();
  };
  await restore(path, 'not the passphrase');
  await expect(keeping.getByRole('alert')).toContainText('The passphrase does not open this file');
  const bytes = readFileSync(path);
  const place = bytes.length - 40;
  bytes[place] = (bytes[place] ?? 0) ^ 1;
  const broken = testInfo.outputPath('broken-backup');
  writeFileSync(broken, bytes);
  await restore(broken, PASSPHRASE);
  await expect(keeping.getByRole('alert')).toContainText(/damaged|changed/);
  await expect(section(page, 'Clinics').getByRole('listitem')).toHaveCount(2);
  await restore(path, PASSPHRASE);
  await expect(section(page, 'Clinics').getByRole('listitem')).toHaveCount(3);
});

test('a sealed clinic is locked until its passphrase is given, in this tab and in a new one', async ({
  page,
  context,
}) => {
  await openScreen(page, '/settings/');
  const passphrase = section(page, 'Passphrase');
  const seal = passphrase.getByRole('button', { name: 'Seal the clinic' });
  await typeTwice(passphrase, PASSPHRASE);
  await expect(seal).toBeDisabled();
  await passphrase.getByLabel('I understand that a forgotten passphrase means losing the data.').check();
  await passphrase.getByLabel('The same again').fill('another one, not the same');
  await expect(passphrase).toContainText('The two are not the same.');
  await expect(seal).toBeDisabled();
  await passphrase.getByLabel('The same again').fill(PASSPHRASE);
  await seal.click();
  await signAs(page, 'AB');
  await expect(passphrase).toContainText('The clinic is sealed with a passphrase in this browser.');
  await page.getByRole('button', { name: 'Lock now' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('The clinic is locked');
  await expect(page.getByText('OM-0')).toHaveCount(0);
  await page.getByLabel('Passphrase', { exact: true }).fill('wrong');
  await page.getByRole('button', { name: 'Unlock' }).click();
  await expect(page.getByText('The passphrase does not open this.')).toBeVisible();
  const other = await context.newPage();
  await other.goto('/');
  await expect(other.getByRole('heading', { level: 1 })).toHaveText('The clinic is locked');
  await other.close();
  // Not a touch from here on: the clock alone goes on.
  await page.clock.install();
  await page.getByLabel('Passphrase', { exact: true }).fill(PASSPHRASE);
  await page.getByRole('button', { name: 'Unlock' }).click();
  const heading = page.getByRole('heading', { level: 1 });
  await expect(heading).toContainText('How Oremoor Clinic is kept');
  await page.clock.fastForward('13:00');
  await expect(heading).toContainText('How Oremoor Clinic is kept');
  await page.clock.fastForward('02:10');
  await expect(heading).toHaveText('The clinic is locked');
});

test('of two tabs one writes; the other says so, follows, and may take over', async ({ page, context }) => {
  await openScreen(page, '/settings/');
  const reader = await context.newPage();
  await openScreen(reader, '/settings/');
  const notice = reader.getByRole('complementary', { name: 'This tab reads only' });
  await expect(notice).toBeVisible();
  await expect(page.getByRole('complementary', { name: 'This tab reads only' })).toHaveCount(0);
  await expect(reader.getByLabel('Name of the open clinic')).toBeDisabled();
  await page.getByLabel('Name of the open clinic').fill('North Street');
  await page.getByRole('button', { name: 'Rename', exact: true }).click();
  await signAs(page, 'AB');
  await expect(reader.getByRole('heading', { level: 1 })).toContainText('How North Street is kept');
  await notice.getByRole('button', { name: 'Take over' }).click();
  await expect(notice).toHaveCount(0);
  await expect(page.getByRole('complementary', { name: 'This tab reads only' })).toBeVisible();
  await openSettings(page);
  await expect(page.getByLabel('Name of the open clinic')).toBeDisabled();
});

test('the first start says once where the data lies', async ({ page }) => {
  await openScreen(page, '/settings/');
  const notice = page.getByRole('complementary', { name: 'Where the data lies' });
  await expect(notice).toContainText('Another log-in on this PC does not see it');
  await notice.getByRole('button', { name: 'Understood' }).click();
  await expect(notice).toHaveCount(0);
  const trace = 'No trace of an earlier visit was here when this page was opened.';
  await expect(section(page, 'Keeping')).toContainText(trace);
  await openScreen(page, '/settings/');
  await expect(notice).toHaveCount(0);
  await expect(section(page, 'Keeping')).not.toContainText(trace);
});
