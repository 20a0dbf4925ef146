import { test } from '@playwright/test';
import { expect, openScreen } from './support/open-screen';

test.describe.configure({ timeout: 180_000 });

test('files without condition columns lead to one question, and the answer makes visits comparable by procedure', async ({
  page,
}) => {
  await openScreen(page, '/import/');
  await page.getByRole('button', { name: /without condition columns/i }).click();
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('link', { name: 'This week' }).click();
  const question = page.getByRole('form', { name: 'Does your clinic measure by a written procedure?' });
  await expect(question).toBeVisible();
  await expect(page.getByRole('region', { name: 'State of the data' })).toContainText(
    'no condition is recorded in these files',
  );
  const declare = question.getByRole('button', { name: 'Declare the procedure' });
  await declare.click();
  await expect(question.getByRole('alert')).toHaveText('Choose at least one condition.');
  for (const condition of await question.getByRole('checkbox').all()) await expect(condition).not.toBeChecked();
  for (const condition of ['fasting for 8 hours or more', 'bladder emptied']) {
    await question.getByLabel(condition).check();
  }
  for (const end of [/^From/, /^Until/]) await expect(question.getByLabel(end)).toHaveValue(/^\d{4}-\d{2}-\d{2}$/);
  await question.getByRole('button', { name: 'There is no written procedure' }).click();
  await page.getByRole('dialog', { name: 'Who is doing this?' }).getByRole('button', { name: 'Do nothing' }).click();
  await declare.click();
  await expect(question.getByRole('alert')).toHaveText('Write your initials, so that it is known who declared it.');
  await question.getByLabel('Your initials').fill('AB');
  await declare.click();
  await expect(question).toHaveCount(0);
  await expect(page.getByRole('region', { name: 'State of the data' })).toContainText('Conditions by procedure.');
  await expect(page.getByRole('region', { name: 'State of the data' })).toContainText(/by procedure [1-9]\d*\s%/);

  await openScreen(page, '/repeatability/');
  await expect(page.getByRole('main')).toContainText(
    /By procedure: at [\d,]+ of [\d,]+ visits a declared procedure stands .+, and [\d,]+ of the clinic’s [\d,]+ comparable/,
  );
  await openScreen(page, '/import/');
  const conditions = page.getByRole('region', { name: 'Conditions' });
  await expect(conditions).toContainText(
    /2 conditions count as met by procedure: all sites, from .+ to .+\(declared by AB\)/,
  );
  await expect(conditions).toContainText('no row records: contact of the electrodes checked');
  await expect(conditions.getByRole('button', { name: 'There is no written procedure' })).toHaveCount(0);
  await conditions.getByRole('button', { name: 'Add conditions' }).click();
  await expect(conditions.getByLabel('bladder emptied')).toBeChecked();
  await conditions.getByLabel('All of these').check();
  await conditions.getByRole('button', { name: 'Keep the change' }).click();
  await expect(conditions).toContainText(/[3-9] conditions count as met by procedure/);
  await expect(conditions).not.toContainText('no row records');
});
