import { writeFileSync } from 'node:fs';
import { test, type Page } from '@playwright/test';
import { devTools, keptFiles, openOwnClinic, originOf } from './support/faults';
import { commitPlan, countOf, expectStep, giveFiles } from './support/import-steps';
import { expect } from './support/open-screen';
import { visitExport } from './support/visit-export';

test.describe.configure({ timeout: 300_000 });

const FIRST = { name: 'first.csv', content: visitExport({ clients: 12 }) };

const importMore = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'Import more files' }).click();
  await expectStep(page, 'Drop the visit export here.');
};

const clinicFiles = (page: Page) => page.getByRole('grid', { name: 'Files of this clinic' });

test('an import that is stopped while it is read, judged or kept leaves the clinic as it was, and the next one works', async ({
  page,
}) => {
  const large = { name: 'large.csv', content: visitExport({ clients: 6000 }) };
  const main = page.getByRole('main');
  const cancel = main.getByRole('button', { name: 'Cancel', exact: true });
  await openOwnClinic(page, [FIRST]);
  await importMore(page);
  const before = await keptFiles(page);
  for (const stage of ['Reading the files…', 'Judging the rows…']) {
    await giveFiles(page, [large]);
    await expectStep(page, stage);
    await cancel.click();
    await expectStep(page, 'Drop the visit export here.');
    await expect(clinicFiles(page)).toContainText('first.csv');
    await expect(clinicFiles(page)).not.toContainText('large.csv');
  }
  await giveFiles(page, [large]);
  await expectStep(page, 'can be used as they are');
  await page.getByRole('button', { name: /^Import [\d,]+ rows?$/ }).click();
  await expectStep(page, 'Keeping the files…');
  await cancel.click();
  await expectStep(page, 'can be used as they are');
  expect(await keptFiles(page)).toEqual(before);
  await page.getByRole('button', { name: 'Discard this plan' }).click();
  await expect(clinicFiles(page)).not.toContainText('large.csv');
  await giveFiles(page, [{ name: 'second.csv', content: visitExport({ clients: 20 }) }]);
  await expectStep(page, '100 of 160 rows');
  await commitPlan(page);
  await importMore(page);
  await expect(clinicFiles(page)).toContainText('second.csv');
  expect(Object.keys(await keptFiles(page)).length).toBe(2);
});

test('the same file twice is said and adds nothing; a file that changed since it was looked at is refused', async ({
  page,
}, testInfo) => {
  await openOwnClinic(page, [FIRST]);
  await importMore(page);
  const kept = await keptFiles(page);
  await giveFiles(page, [{ ...FIRST, name: 'first again.csv' }]);
  await expectStep(page, '60 of 120 rows');
  expect(await countOf(page, 'the same reading twice')).toBe('60 of 120');
  await commitPlan(page);
  await expect(page.getByRole('main').getByRole('status')).toHaveText(/no row was added/);
  await expect(page.getByRole('button', { name: 'Take this import out again' })).toHaveCount(0);
  await importMore(page);
  await expect(clinicFiles(page)).not.toContainText('again');
  expect(await keptFiles(page)).toEqual(kept);

  const path = testInfo.outputPath('visits.csv');
  writeFileSync(path, visitExport({ clients: 14 }));
  await page.getByLabel('Choose files').setInputFiles(path);
  await expectStep(page, '70 of 130 rows');
  writeFileSync(path, visitExport({ clients: 15 }));
  await page.getByRole('button', { name: /^Import [\d,]+ rows?$/ }).click();
  const refused = page.getByRole('main').getByRole('alert').filter({ hasText: 'visits.csv' });
  await expect(refused).toContainText('changed on the disk since it was looked at');
  await expect(refused).toContainText('Choose the file again');
  expect(await keptFiles(page)).toEqual(kept);
  await page.getByRole('button', { name: 'Discard this plan' }).click();
  await expect(clinicFiles(page)).not.toContainText('visits.csv');
  await page.getByLabel('Choose files').setInputFiles(path);
  await expectStep(page, '75 of 135 rows');
  await commitPlan(page);
});

test('a full disk at the import is named and leaves the clinic whole; with room it works', async ({ page }) => {
  await openOwnClinic(page, [FIRST]);
  await importMore(page);
  const kept = await keptFiles(page);
  await giveFiles(page, [{ name: 'second.csv', content: visitExport({ clients: 20 }) }]);
  await expectStep(page, '100 of 160 rows');
  const session = await devTools(page);
  const origin = originOf(page);
  await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 4096 });
  await page.getByRole('button', { name: /^Import [\d,]+ rows?$/ }).click();
  const refused = page.getByRole('main').getByRole('alert').filter({ hasText: 'Make room' });
  await expect(refused).toContainText('The clinic is as it was.');
  expect(await keptFiles(page)).toEqual(kept);
  await session.send('Storage.overrideQuotaForOrigin', { origin });
  await commitPlan(page);
  await importMore(page);
  await expect(clinicFiles(page)).toContainText('second.csv');
});

test('storage that is cleared while a plan is on screen is said, and nothing is made in its place', async ({
  page,
}) => {
  await openOwnClinic(page, [FIRST]);
  await importMore(page);
  await giveFiles(page, [{ name: 'second.csv', content: visitExport({ clients: 20 }) }]);
  await expectStep(page, '100 of 160 rows');
  const session = await devTools(page);
  await session.send('Storage.clearDataForOrigin', { origin: originOf(page), storageTypes: 'all' });
  await page.getByRole('button', { name: /^Import [\d,]+ rows?$/ }).click();
  await expectStep(page, 'The clinic’s data was cleared from this browser');
  await expect(page.getByRole('alert').filter({ hasText: 'What to try' })).toContainText('Restore the last backup');
  expect(Object.keys(await keptFiles(page))).toEqual([]);
  await page.reload();
  await expect(page.getByRole('banner')).toContainText('Oremoor');
  await expectStep(page, 'Drop the visit export here.');
});
