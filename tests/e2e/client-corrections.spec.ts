import { test } from '@playwright/test';
import { downloadBy } from './support/download-by';
import { chooseFiles, commitPlan, countOf, giveFiles } from './support/import-steps';
import { openClient } from './support/open-client';
import { expect, openScreen } from './support/open-screen';
import { openSettings, section, signAs } from './support/settings-steps';
import { visitExport } from './support/visit-export';

test.describe.configure({ timeout: 300_000 });

test('a reading is corrected on the client’s page, said everywhere, and taken back by undo', async ({ page }) => {
  await openScreen(page, '/clients/');
  await openClient(page, 'OM-0023');
  const heading = page.getByRole('heading', { level: 1 });
  await expect(heading).toContainText('Fat-free mass is down 3.6 kg');
  const readings = page.getByRole('region', { name: 'Readings as filed' });
  await readings.getByRole('button', { name: /^Correct the reading of 12 Dec 2025/ }).click();
  const dialog = page.getByRole('dialog', { name: 'Correct the reading of 12 Dec 2025' });
  await dialog.getByLabel('New value').fill('71.2');
  await dialog.getByRole('button', { name: 'Correct', exact: true }).click();
  await expect(dialog.getByRole('alert')).toHaveText('Write a reason: it stands beside the value.');
  await dialog.getByLabel('Reason').fill('typed twice');
  await dialog.getByRole('button', { name: 'Correct', exact: true }).click();
  await signAs(page, 'AB');
  await expect(dialog).toHaveCount(0);
  await expect(heading).not.toContainText('3.6 kg');
  await expect(readings.getByRole('row').filter({ hasText: '12 Dec 2025' })).toContainText('one value corrected');
  await expect(page.getByRole('region', { name: 'Corrected and set aside' })).toContainText(
    '12 Dec 2025, weight: 71.2 instead of 78.5.',
  );
  await expect(page.getByText(/version [0-9a-f]+ · 1 value was corrected by the clinic$/)).toBeVisible();
  const download = await downloadBy(page, () => readings.getByRole('button', { name: 'Save table as CSV' }).click());
  expect(download.suggestedFilename()).toMatch(/^driftline-client-readings-[0-9a-f]+-with-corrections\.csv$/);
  await page.getByRole('button', { name: /^Undo: Reading corrected/ }).click();
  await expect(heading).toContainText('Fat-free mass is down 3.6 kg');
  await expect(readings).not.toContainText('one value corrected');
});

test('a reading set aside leaves every comparison and comes back; a note stays', async ({ page }) => {
  await openScreen(page, '/clients/');
  await openClient(page, 'OM-0023');
  const pairs = page.getByRole('region', { name: 'Every comparison of fat-free mass' });
  await expect(pairs).toContainText('1 Dec 2025');
  const readings = page.getByRole('region', { name: 'Readings as filed' });
  await readings.getByRole('button', { name: /^Set aside the reading of 1 Dec 2025/ }).click();
  const dialog = page.getByRole('dialog', { name: 'Set aside the reading of 1 Dec 2025' });
  await dialog.getByLabel('Reason').fill('electrodes swapped');
  await dialog.getByRole('button', { name: 'Set aside', exact: true }).click();
  await signAs(page, 'AB');
  await expect(pairs).not.toContainText('1 Dec 2025');
  await expect(page.getByText('1 reading of this client is set aside.')).toBeVisible();
  await expect(page.getByRole('figure', { name: 'Values over time' })).toContainText(
    '1 reading was set aside by the clinic',
  );
  const leftOut = page.getByText('1 reading is set aside by the clinic and stands in no count here.');
  const screens = page.getByRole('navigation', { name: 'Screens' });
  for (const screen of ['Programs', 'To contact']) {
    await screens.getByRole('link', { name: screen }).click();
    await expect(leftOut).toBeVisible();
  }
  await openClient(page, 'OM-0023');
  await readings.getByRole('button', { name: /^Bring back the reading of 1 Dec 2025/ }).click();
  await expect(pairs).toContainText('1 Dec 2025');
  await page.getByLabel('New note').fill('Asked about intake.');
  await page.getByRole('button', { name: 'Write the note' }).click();
  await expect(page.getByRole('region', { name: 'Notes' }).getByRole('listitem')).toContainText('Asked about intake.');

  await openClient(page, 'OM-0044');
  const heading = page.getByRole('heading', { level: 1 });
  await expect(heading).toContainText('more than this clinic’s measurement error');
  const ofVisit = readings.getByRole('row').filter({ hasText: '22 Dec 2025' });
  await ofVisit
    .first()
    .getByRole('button', { name: /^Set aside/ })
    .click();
  const visit = page.getByRole('dialog', { name: 'Set aside the reading of 22 Dec 2025' });
  await visit.getByRole('radio', { name: 'All 2 readings of this visit' }).check();
  await visit.getByLabel('Reason').fill('the other person’s');
  await visit.getByRole('button', { name: 'Set aside', exact: true }).click();
  await expect(page.getByText('2 readings were set aside. One undo brings them back.')).toBeVisible();
  await expect(heading).toContainText('there are no two visits to compare');
  await expect(ofVisit.filter({ hasText: 'set aside' })).toHaveCount(2);
  await page.getByRole('button', { name: /^Undo: / }).click();
  await expect(heading).toContainText('more than this clinic’s measurement error');
  await expect(ofVisit.filter({ hasText: 'Bring back' })).toHaveCount(0);
});

test('an erased person is gone, and stays out when the file comes again', async ({ page }) => {
  const file = { name: 'visits.csv', content: visitExport({ clients: 12 }) };
  await chooseFiles(page, [file]);
  await commitPlan(page);
  await openSettings(page);
  const privacy = section(page, 'Privacy');
  await privacy.getByLabel('Id of the person').fill('TC-003');
  await privacy.getByRole('button', { name: 'Find' }).click();
  await expect(privacy).toContainText(/rows are removed from one kept file/);
  await privacy.getByLabel('To confirm, type: TC-003').fill('TC-003');
  await privacy.getByRole('button', { name: 'Erase for good' }).click();
  await expect(privacy).toContainText('The person was erased from this clinic.');
  await privacy.getByLabel('Id of the person').fill('TC-003');
  await privacy.getByRole('button', { name: 'Find' }).click();
  await expect(privacy).toContainText('Nobody with this id is in the open clinic.');
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('link', { name: 'Import' }).click();
  await giveFiles(page, [{ name: 'again.csv', content: `${file.content}\n` }]);
  await expect.poll(() => countOf(page, 'of people who were erased')).toMatch(/^[1-9]/);
  await commitPlan(page);
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('link', { name: 'Clients' }).click();
  const search = page.getByLabel('Search id or name');
  await search.fill('TC-003');
  await expect(page.getByText('No row fits.')).toBeVisible();
  await search.fill('TC-004');
  await expect(page.getByRole('link', { name: 'TC-004', exact: true })).toBeVisible();
});
