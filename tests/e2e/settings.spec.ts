import { test } from '@playwright/test';
import { downloadBy } from './support/download-by';
import { expect, openScreen } from './support/open-screen';
import { openSettings, section, signAs } from './support/settings-steps';

test.describe.configure({ timeout: 240_000 });

test('the demo can be deleted by typing its name, and put back; without any clinic the page says so', async ({
  page,
}) => {
  await openScreen(page, '/settings/');
  await page.getByRole('button', { name: 'Delete Oremoor Clinic' }).click();
  const dialog = page.getByRole('dialog', { name: 'Delete Oremoor Clinic?' });
  const confirm = dialog.getByRole('button', { name: 'Delete Oremoor Clinic for good' });
  await expect(confirm).toBeDisabled();
  await page.keyboard.press('Escape');
  await expect(dialog).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Delete Oremoor Clinic' })).toBeFocused();
  await page.keyboard.press('Enter');
  await dialog.getByLabel('To confirm, type: Oremoor Clinic').fill('Oremoor');
  await expect(confirm).toBeDisabled();
  await dialog.getByLabel('To confirm, type: Oremoor Clinic').fill('Oremoor Clinic');
  await confirm.click();
  await signAs(page, 'AB');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('No clinic is kept in this browser');
  await page.getByRole('button', { name: 'Open the demo' }).click();
  await expect(section(page, 'Clinics')).toContainText('Oremoor Clinic');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('How Oremoor Clinic is kept, and who may read it');
});

test('the clinic’s word for people stands on every screen, is logged with initials, undone by a key and done again', async ({
  page,
}) => {
  await openScreen(page, '/settings/');
  await section(page, 'Words, units, level').getByRole('radio', { name: 'patients' }).click();
  await signAs(page, 'MR');
  const rail = page.getByRole('navigation', { name: 'Screens' });
  await expect(rail.getByRole('link', { name: 'Patients' })).toBeVisible();
  const log = section(page, 'Log');
  const newest = log.getByRole('row').nth(1);
  await expect(newest).toContainText('Settings changed');
  await expect(newest).toContainText('MR');
  await page.getByRole('heading', { level: 1 }).click();
  await page.keyboard.press('Control+z');
  await expect(page.getByText('Undone: Settings changed.')).toBeVisible();
  await expect(rail.getByRole('link', { name: 'Clients' })).toBeVisible();
  await page.keyboard.press('Control+Shift+z');
  await expect(page.getByText('Done again: Settings changed.')).toBeVisible();
  await expect(rail.getByRole('link', { name: 'Patients' })).toBeVisible();
});

test('undo stays out of text fields', async ({ page }) => {
  await openScreen(page, '/settings/');
  await section(page, 'Words, units, level').getByRole('radio', { name: 'patients' }).click();
  await signAs(page, 'MR');
  await expect(section(page, 'Log').getByRole('row').nth(1)).toContainText('Settings changed');
  const name = page.getByLabel('Name of the open clinic');
  await name.fill('Another name');
  await name.press('Control+z');
  await expect(page.getByText(/^Undone/)).toHaveCount(0);
  await expect(page.getByRole('navigation', { name: 'Screens' }).getByRole('link', { name: 'Patients' })).toBeVisible();
});

test('the log prints alone, and every saved table is listed with its hash', async ({ page }) => {
  await page.addInitScript(() => {
    window.print = () => {
      const shown = [...document.querySelectorAll('main section[id]')].filter(
        (place) => getComputedStyle(place).display !== 'none',
      );
      document.title = `printed ${shown.map(({ id }) => id).join(' ')}`;
    };
  });
  await openScreen(page, '/settings/');
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => {
    [...document.querySelectorAll('button')].find((button) => button.textContent === 'Print the log')?.click();
  });
  await expect(page).toHaveTitle('printed log');
  await page.emulateMedia({ media: 'screen' });
  const log = section(page, 'Log');
  const download = await downloadBy(page, () => log.getByRole('button', { name: 'Save table as CSV' }).click());
  const listed = section(page, 'Exports').getByRole('row').nth(1);
  await expect(listed).toContainText(download.suggestedFilename());
  await expect(listed).toContainText(/[0-9a-f]{12}/);
  await expect(listed).toContainText('unsigned');
  await expect(log.getByRole('row').nth(1)).toContainText(/File exported.*unsigned/);
});

test('retention names its date, and a date that has passed stands on the first screen', async ({ page }) => {
  await openScreen(page, '/settings/');
  const privacy = section(page, 'Privacy');
  await privacy.getByLabel('Months after the last visit').fill('1');
  await privacy.getByRole('button', { name: 'Set', exact: true }).click();
  await signAs(page, 'AB');
  await expect(privacy).toContainText(/The date has passed|Kept until/);
  await openSettings(page);
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('link', { name: 'This week' }).click();
  const state = page.getByRole('region', { name: 'State of the data' });
  await expect(state).toContainText('the date has passed');
  await expect(state).toContainText('the demo needs none');
});
