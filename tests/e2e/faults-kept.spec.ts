import { test, type Page } from '@playwright/test';
import {
  changeManifests,
  damageKept,
  devTools,
  expectGate,
  keptFiles,
  openOwnClinic,
  originOf,
} from './support/faults';
import { expectStep, giveFiles, signIfAsked } from './support/import-steps';
import { expect, openScreen } from './support/open-screen';
import { openSettings, section } from './support/settings-steps';
import { visitExport } from './support/visit-export';

test.describe.configure({ timeout: 300_000 });

const FIRST = { name: 'first.csv', content: visitExport({ clients: 12 }) };
const SECOND = { name: 'second.csv', content: visitExport({ clients: 20 }) };

const clinicFiles = (page: Page) => page.getByRole('grid', { name: 'Files of this clinic' });

const goOnWithout = async (page: Page): Promise<void> => {
  const dialog = page.getByRole('dialog', { name: 'Who is doing this?' });
  await dialog.getByRole('button', { name: 'Go on without' }).click();
};

test('kept files that are damaged or gone are named one by one, and the clinic opens without their imports', async ({
  page,
}) => {
  await openOwnClinic(page, [FIRST]);
  const [first = ''] = Object.keys(await keptFiles(page));
  await page.getByRole('button', { name: 'Import more files' }).click();
  await giveFiles(page, [SECOND]);
  await expectStep(page, '100 of 160 rows');
  await page.getByRole('button', { name: /^Import [\d,]+ rows?$/ }).click();
  await signIfAsked(page);
  await expect(page.getByRole('link', { name: 'See this week' })).toBeVisible();
  const second = Object.keys(await keptFiles(page)).find((name) => name !== first) ?? '';
  await damageKept(page, second, 'changed');
  await page.reload();
  await expectGate(page, 'A kept file of this clinic is damaged');
  await expect(page.getByRole('alert').filter({ hasText: 'What to try' })).toContainText('second.csv');
  await page.getByRole('button', { name: 'Open the clinic without second.csv' }).click();
  await goOnWithout(page);
  await expect(clinicFiles(page)).toContainText('first.csv');
  await expect(clinicFiles(page)).not.toContainText('second.csv');
  await giveFiles(page, [SECOND]);
  await expectStep(page, '100 of 160 rows');
  await page.getByRole('button', { name: /^Import [\d,]+ rows?$/ }).click();
  await expect(page.getByRole('link', { name: 'See this week' })).toBeVisible();
  await damageKept(page, first, 'removed');
  await page.reload();
  await expectGate(page, 'A kept file of this clinic is damaged');
  await expect(page.getByRole('button', { name: 'Open the clinic without first.csv' })).toBeVisible();
  await page.getByRole('button', { name: 'Open Oremoor Clinic' }).click();
  await goOnWithout(page);
  await expect(page.getByRole('banner')).toContainText('Oremoor');
});

test('a manifest that cannot be read, or that a newer app wrote, is left alone, and the demo opens beside it', async ({
  page,
}) => {
  await openOwnClinic(page, [FIRST]);
  const kept = await keptFiles(page);
  await changeManifests(page, { body: { version: 2, kind: 'own' } });
  await page.reload();
  await expectGate(page, 'This clinic cannot be read');
  await changeManifests(page, { version: 99, body: { version: 99 } });
  await page.getByRole('button', { name: 'Try again' }).click();
  await expectGate(page, 'A newer Driftline wrote this clinic');
  await expect(page.getByRole('alert').filter({ hasText: 'What to try' })).toContainText('Open it with that version');
  await page.getByRole('button', { name: 'Open Oremoor Clinic' }).click();
  await goOnWithout(page);
  await expect(page.getByRole('banner')).toContainText('Oremoor');
  expect(await keptFiles(page)).toEqual(kept);
  await openSettings(page);
  await section(page, 'Clinics').getByRole('button', { name: 'Open Your clinic' }).click();
  await expect(section(page, 'Clinics').getByRole('alert')).toContainText('newer version of Driftline');
  await expect(page.getByRole('banner')).toContainText('Oremoor');
});

test('a browser that refuses its storage is said so, and no clinic is shown from memory', async ({ page }) => {
  await page.addInitScript(() => {
    const refused = (): never => {
      throw new DOMException('The operation is insecure.', 'SecurityError');
    };
    Object.defineProperty(indexedDB, 'open', { value: refused });
    Object.defineProperty(navigator.storage, 'getDirectory', { value: () => Promise.resolve().then(refused) });
  });
  await page.goto('/import/');
  await expectGate(page, 'This browser keeps nothing for this page');
  await expect(page.getByRole('alert').filter({ hasText: 'What to try' })).toContainText('Allow site data');
  await expect(page.getByLabel('Choose files')).toHaveCount(0);
  await expect(page.getByRole('banner')).not.toContainText('Oremoor');
});

test('a browser that keeps a list of clinics and no files is said so before anything is imported', async ({ page }) => {
  await page.addInitScript(() => {
    const refused = () => Promise.reject(new DOMException('The operation is insecure.', 'SecurityError'));
    Object.defineProperty(navigator.storage, 'getDirectory', { value: refused });
  });
  await page.goto('/import/');
  await expectGate(page, 'This browser keeps nothing for this page');
});

test('storage that is cleared while a clinic is open is said at the next change, and nothing is made in its place', async ({
  page,
}) => {
  await openOwnClinic(page, [FIRST]);
  await openSettings(page);
  const session = await devTools(page);
  await session.send('Storage.clearDataForOrigin', { origin: originOf(page), storageTypes: 'all' });
  await page.getByLabel('Name of the open clinic').fill('North Street');
  await page.getByRole('button', { name: 'Rename', exact: true }).click();
  await expectGate(page, 'The clinic’s data was cleared from this browser');
  await page.getByRole('button', { name: 'Try again' }).click();
  await expectGate(page, 'The clinic’s data was cleared from this browser');
  expect(await keptFiles(page)).toEqual({});
});

test('a tab that dies while files are kept leaves the old clinic or the new one, whole', async ({ context }) => {
  const page = await context.newPage();
  await openOwnClinic(page, [FIRST]);
  await page.close();
  const large = { name: 'large.csv', content: visitExport({ clients: 2000 }) };
  const wholes: string[] = [];
  for (const afterMs of [0, 150, 600]) {
    const tab = await context.newPage();
    await openScreen(tab, '/import/');
    await giveFiles(tab, [large]);
    await expectStep(tab, 'can be used as they are');
    await tab.getByRole('button', { name: /^Import [\d,]+ rows?$/ }).click();
    await goOnWithout(tab);
    await expectStep(tab, 'Keeping the files…');
    await tab.waitForTimeout(afterMs);
    const session = await devTools(tab);
    const died = tab.waitForEvent('crash');
    void session.send('Page.crash').catch(() => undefined);
    await died;
    await tab.close();
    const next = await context.newPage();
    await openScreen(next, '/import/');
    const whole = (await clinicFiles(next).innerText()).includes('large.csv') ? 'new' : 'old';
    await expect(clinicFiles(next)).toContainText('first.csv');
    await expect.poll(async () => Object.keys(await keptFiles(next)).length).toBe(whole === 'new' ? 2 : 1);
    wholes.push(whole);
    await next.close();
    if (whole === 'new') break;
  }
  expect(wholes).toContain('old');
});
