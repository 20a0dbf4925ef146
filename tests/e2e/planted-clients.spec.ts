import { type Page } from '@playwright/test';
import { test } from './support/open-clinic';
import { openClient } from './support/open-client';
import { expect, openScreen } from './support/open-screen';

test.describe.configure({ mode: 'serial', timeout: 180_000 });

let page: Page;

test.beforeAll(async ({ clinicPage }) => {
  page = clinicPage;
  await openScreen(page, '/clients/');
});

const finding = () => page.getByRole('heading', { level: 1 });
const article = () => page.getByRole('article');
const latest = (value: string) =>
  page
    .getByRole('grid', { name: 'Latest changes of all values' })
    .getByRole('row')
    .filter({ has: page.getByRole('gridcell', { name: value, exact: true }) });

test('OM-0007: another hand position cannot be compared, and nothing is said about water', async () => {
  await openClient(page, 'OM-0007');
  await expect(finding()).toHaveText(
    'Fat-free mass cannot be compared with 9 June 2025: another hand-electrode position.',
  );
  await expect(article()).not.toContainText('fits less water');
  const path = article().getByRole('figure', { name: 'Index path' });
  await expect(path).toContainText('The indices cannot be compared with 9 June 2025: another hand-electrode position.');
  await expect(path.locator('.path .mark')).toHaveCount(2);
  await expect(path.locator('.path line')).toHaveCount(0);
});

test('OM-0019: down, more than error, and fits less water', async () => {
  await openClient(page, 'OM-0019');
  await expect(finding()).toContainText(
    'down 2.7 kg since 15 September 2025, more than this clinic’s measurement error',
  );
  await expect(article()).toContainText('this fits less water in the body');
});

test('OM-0023: down more than error, and fits cell mass', async () => {
  await openClient(page, 'OM-0023');
  await expect(finding()).toContainText(
    'down 3.6 kg since 8 September 2025, more than this clinic’s measurement error',
  );
  await expect(article()).toContainText('cell mass');
  const path = article().getByRole('figure', { name: 'Index path' });
  await expect(path).toContainText('fat-free mass index −1.2 kg/m² (more than error), fat mass index');
  await expect(path.locator('.path line')).toHaveCount(3);
  for (const [value, counted] of [
    ['Skeletal muscle mass', 'fat-free mass'],
    ['Resistance per height', 'resistance'],
    ['Phase angle', ''],
    ['Fat-free mass', ''],
  ] as const)
    await expect(latest(value).getByRole('gridcell').nth(7)).toHaveText(counted);
});

test('OM-0031: within error', async () => {
  await openClient(page, 'OM-0031');
  await expect(finding()).toContainText(
    'moved by −1.2 kg since 22 September 2025: within this clinic’s measurement error',
  );
});

test('OM-0044: just beyond, by the error of two components and two readings', async () => {
  await openClient(page, 'OM-0044');
  await expect(finding()).toContainText(/down 1\.7\d\skg since 29 September 2025, more than .* 1\.\d\d\skg\./);
  await expect(latest('Fat-free mass')).toContainText('down, more than error');
  await expect(article()).toContainText('Water or cell mass: cannot tell.');
  await expect(article()).toContainText('97 % confidence from error alone');
});

test('OM-0052: all of it comes from the weight term', async () => {
  await openClient(page, 'OM-0052');
  await expect(article()).toContainText('2.1 kg of the 2.1 kg comes from the change in weight alone.');
  await expect(article()).toContainText('a change in weight, not a lean change');
  await expect(article().getByRole('figure', { name: 'Vector path' })).toContainText(
    'no further from its baseline than error alone explains',
  );
});

test('OM-0058: far more lean than the weight lost lets expect', async () => {
  await openClient(page, 'OM-0058');
  await expect(finding()).toContainText('down 5.0 kg since 7 July 2025, more than this clinic’s measurement error');
  await expect(latest('Weight')).toContainText('down, more than error');
});

test('OM-0066: fed at baseline cannot be compared', async () => {
  await openClient(page, 'OM-0066');
  await expect(finding()).toContainText('cannot be compared with 10 June 2025: not fasting');
});

test('OM-0071: another device cannot be compared', async () => {
  await openClient(page, 'OM-0071');
  await expect(finding()).toHaveText('Fat-free mass cannot be compared with 2 September 2024: another device.');
});

test('OM-0080: on dialysis composition has no number of change', async () => {
  await openClient(page, 'OM-0080');
  await expect(finding()).toContainText('is not judged: dialysis');
  await expect(latest('Fat-free mass').getByRole('gridcell').nth(4)).toHaveText('–');
  await expect(latest('Resistance')).toContainText('cannot be compared');
  const vector = article().getByRole('figure', { name: 'Vector path' });
  await expect(vector).toContainText('cannot be compared with the baseline: another or an unknown time after dialysis');
  await expect(vector.locator('.path .mark')).toHaveCount(2);
  await expect(vector.locator('.path line, .reference')).toHaveCount(0);
  await expect(article().getByRole('figure', { name: 'Index path' })).toHaveCount(0);
  await expect(article().getByRole('region', { name: 'Energy, for orientation' })).toContainText(
    'Not estimated: dialysis.',
  );
});

test('OM-0093: fluid at both visits stops composition, weight is judged', async () => {
  await openClient(page, 'OM-0093');
  await expect(finding()).toContainText('is not judged: fluid collected in the body');
  await expect(latest('Weight')).toContainText('within error');
  await expect(article().getByRole('figure', { name: 'Index path' })).toHaveCount(0);
  const vector = article().getByRole('figure', { name: 'Vector path' });
  await expect(vector).toContainText('no further from its baseline than error alone explains');
  await expect(vector.locator('.path line')).toHaveCount(1);
});

test('OM-0101: one sex for the equations, and a sentence about it', async () => {
  await openClient(page, 'OM-0101');
  await expect(finding()).toContainText('moved by 0.0 kg');
  await expect(article()).toContainText('Sex is recorded as M and F. The equations use M for every visit');
  const own = article().getByRole('region', { name: 'About this client' });
  await expect(own).toContainText(
    /With M: fat-free mass [\d.]+\skg on 8 December 2025. With F: fat-free mass [\d.]+\skg/,
  );
});

test('OM-0112: one height of the series serves every visit', async () => {
  await openClient(page, 'OM-0112');
  await expect(article()).toContainText('163.0 cm');
  await expect(finding()).toContainText('moved by 0.0 kg');
});

test('OM-0120: no result across the visit, no number of it, and not the word', async () => {
  await openClient(page, 'OM-0120');
  await expect(finding()).toContainText('is not judged');
  await expect(latest('Weight').getByRole('gridcell').nth(4)).toHaveText('–');
  await expect(article().getByRole('figure', { name: 'Vector path' }).locator('.path line')).toHaveCount(0);
  const path = article().getByRole('figure', { name: 'Index path' });
  await expect(path).toContainText('The indices are not judged: no estimate is made for this visit.');
  await expect(path.locator('.path .mark')).toHaveCount(2);
  await expect(path.locator('.path line')).toHaveCount(0);
  await expect(page.locator('body')).not.toContainText(/pregnan/i);
  const cautions = article().getByRole('region', { name: 'Cautions recorded for this client' });
  await cautions.getByRole('button', { name: 'Show the cautions recorded' }).click();
  await expect(cautions.getByRole('listitem')).toHaveText([
    'pregnant: 2 June 2025',
    '16 weeks after giving birth: 15 December 2025',
  ]);
  await page.emulateMedia({ media: 'print' });
  await expect(cautions).toBeHidden();
  await page.emulateMedia({ media: null });
  await article().getByRole('link', { name: 'Page for the file' }).click();
  await expect(article()).toContainText('Estimates are not made for this visit');
  await expect(article()).not.toContainText(/pregnan|giving birth/i);
  await page.getByRole('link', { name: 'Back to the client' }).click();
  await expect(cautions).not.toContainText(/pregnan/i);
  await article().getByRole('link', { name: 'Page for the client' }).click();
  await expect(article()).toContainText('We make no guess from this visit.');
  await expect(article()).not.toContainText(/kg|went (up|down)|pregnan/i);
  await page.getByRole('link', { name: 'Back to the client' }).click();
});

test('OM-0133: under 18 nothing is held against an adult’s error', async () => {
  await openClient(page, 'OM-0133');
  await expect(finding()).toContainText('is not judged: under 18');
});

test('OM-0140: fat-free mass is held, weight is judged', async () => {
  await openClient(page, 'OM-0140');
  await expect(finding()).toContainText('is not judged: body mass index outside');
  await expect(latest('Fat-free mass')).toContainText('not judged');
  await expect(latest('Weight')).toContainText('down, more than error');
});

test('OM-0155: not seen since', async () => {
  await openClient(page, 'OM-0155');
  await expect(article()).toContainText('Not seen since 28 April 2025');
});

test('OM-0160: judged by the exported value, provisional, and the vector says what is missing', async () => {
  await openClient(page, 'OM-0160');
  await expect(finding()).toContainText('as exported is down 2.9 kg');
  await expect(article()).toContainText('The error is provisional');
  await expect(page.getByRole('grid', { name: 'Every comparison of fat-free mass, as exported' })).toContainText(
    '−2.9',
  );
  await expect(article()).toContainText('No vector is drawn: it needs resistance and reactance.');
});

test('OM-0188: a hostile name is text, runs nothing and stays out of address and title', async () => {
  const dialogs: string[] = [];
  page.on('dialog', (dialog) => {
    dialogs.push(dialog.message());
    void dialog.dismiss();
  });
  await openClient(page, 'OM-0188');
  await expect(article()).toContainText('<img');
  await expect(article().locator('img')).toHaveCount(0);
  expect(dialogs).toEqual([]);
  expect(page.url()).not.toContain('0188');
  expect(await page.title()).toBe('One client · Driftline');
  const overflow = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(overflow).toBeLessThanOrEqual(0);
});
