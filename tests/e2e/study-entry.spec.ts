import { test, type Page } from '@playwright/test';
import { commitPlan } from './support/import-steps';
import { expect, openScreen } from './support/open-screen';
import { beginClinic } from './support/settings-steps';

test.describe.configure({ timeout: 240_000 });

const openRepeatability = async (page: Page): Promise<void> => {
  const screens = page.getByRole('navigation', { name: 'Screens' });
  await screens.getByRole('link', { name: 'Repeatability', exact: true }).click();
  await expect(page.getByRole('region', { name: 'Readings of the study by hand' })).toBeVisible();
};

test('readings of the study typed by hand go through Import, count in the study, and undo takes them back', async ({
  page,
}) => {
  await beginClinic(page, 'Northmoor');
  await openScreen(page, '/repeatability/?value=weight');
  const main = page.getByRole('main');
  const entry = page.getByRole('region', { name: 'Readings of the study by hand' });
  const study = page.getByRole('region', { name: 'What the study stands on' });
  await expect(study).toContainText('No person was measured again on another day within a week');

  await entry.getByLabel('Fasted (h)').fill('12');
  await entry.getByLabel('Since exercise (h)').fill('24');
  await entry.getByLabel('Since alcohol (h)').fill('48');
  await entry.getByLabel('Electrode path').fill('hand-to-foot');
  await entry.getByLabel('Posture').selectOption('lying');
  await entry.getByLabel('Electrode position').fill('A');
  await entry.getByRole('checkbox', { name: /^No large drink/ }).check();
  const rows = [
    ['S-1', '2025-02-03', '80.0'],
    ['S-1', '2025-02-05', '80.6'],
    ['S-2', '2025-02-03', '70.2'],
    ['S-2', '2025-02-05', '70.0'],
    ['S-3', '2025-02-05', '-4'],
  ] as const;
  await entry.getByLabel('Device, row 1').fill('Unit 1');
  for (const [index, [client, date, weight]] of rows.entries()) {
    const row = String(index + 1);
    await expect(entry.getByLabel(`Device, row ${row}`)).toHaveValue('Unit 1');
    await entry.getByLabel(`Client, row ${row}`).fill(client);
    await entry.getByLabel(`Date, row ${row}`).fill(date);
    await entry.getByLabel(`Weight (kg), row ${row}`).fill(weight);
    if (index < rows.length - 1) await entry.getByLabel(`Weight (kg), row ${row}`).press('Enter');
  }

  await entry.getByRole('button', { name: 'Check 5 readings in Import' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('64 of 65 rows can be used as they are.');
  await openRepeatability(page);
  await expect(entry.getByLabel('Client, row 5')).toHaveValue('S-3');
  await expect(entry).toContainText('They stay here, in this tab, until they are');

  await entry.getByRole('button', { name: 'Check 5 readings in Import' }).click();
  await expect(main).toContainText('weight_kg');
  await commitPlan(page);
  await openRepeatability(page);
  await expect(entry).toContainText('5 readings are imported; the table is empty again.');
  await expect(study).toContainText('2 person-weeks with two or more comparable days');

  await page.getByRole('button', { name: /^Undo/ }).first().click();
  await expect(study).toContainText('No person was measured again on another day within a week');
});
