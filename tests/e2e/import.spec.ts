import { test } from '@playwright/test';
import { chooseFiles, commitPlan, countOf, expectStep, giveFiles, watchForTrouble } from './support/import-steps';
import { expect, openScreen, shareOpenedPage } from './support/open-screen';
import { exportColumns, exportRow, visitExport } from './support/visit-export';

test.describe.configure({ timeout: 300_000 });
// The clinic is opened once a test: later screens are reached inside the app.
test.beforeEach(({ page }) => {
  shareOpenedPage(page);
});

const CLIENTS = 36;
const ROWS = CLIENTS * 5;

test('a file is shown as it would be imported, a question is answered, and the clinic is there after a reload', async ({
  page,
}) => {
  const extra = [
    exportRow(1, 168), // the same reading twice
    exportRow(2, 200, { r_ohm: '5' }), // far off
    exportRow(3, 200, { weight_kg: '0' }), // not accepted
    exportRow(4, 200, { height_cm: '207' }), // a warning
  ];
  await chooseFiles(page, [{ name: 'visits.csv', content: visitExport({ clients: CLIENTS, extra }) }]);
  const total = ROWS + extra.length;
  await expect(page.getByRole('heading', { level: 1 })).toContainText(`${ROWS + 1} of ${total} rows`);
  expect(await countOf(page, 'accepted')).toBe(`${ROWS + 1} of ${total}`);
  expect(await countOf(page, 'with a question')).toBe(`1 of ${total}`);
  expect(await countOf(page, 'not accepted')).toBe(`1 of ${total}`);
  expect(await countOf(page, 'the same reading twice')).toBe(`1 of ${total}`);

  const remarks = page.getByRole('grid', { name: 'Row by row' });
  await expect(remarks.getByRole('row').filter({ hasText: 'weight_kg' })).toContainText(String(ROWS + 4));
  await expect(remarks.getByRole('row').filter({ hasText: '207' })).toContainText('accepted');

  await page.getByRole('button', { name: 'Yes, keep it' }).click();
  await expect(page.getByText(/^Does .* stand as the height of TC-004\?$/)).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Questions', exact: true })).toBeFocused();
  await expect.poll(() => countOf(page, 'with a question')).toBe('');
  await page.getByRole('button', { name: 'Yes, the median stands' }).click();
  await expect(page.getByText('Every question is answered.')).toBeVisible();
  await page.getByRole('button', { name: /^Change the answer: TC-002/ }).click();
  await page.getByRole('button', { name: 'No, do not accept the row' }).click();
  await expect.poll(() => countOf(page, 'not accepted')).toBe(`2 of ${total}`);

  await page.getByLabel('Name of your clinic').fill('Harbour practice');
  await commitPlan(page);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Harbour practice');
  await expect(page.getByRole('main').getByRole('status')).toContainText(`${ROWS + 1} rows from 1 file.`);
  await openScreen(page, '/programs/');
  await expect(page.getByRole('banner')).toContainText('Harbour practice');
  await expect(page.getByRole('grid', { name: 'Every program, in numbers' })).toContainText('Walking group');
  await page.reload();
  await expect(page.getByRole('banner')).toContainText('Harbour practice');
  await expect(page.getByRole('grid', { name: 'Every program, in numbers' })).toContainText('Walking group');
});

test('a file dropped on any screen is read on Import', async ({ page }) => {
  await openScreen(page, '/repeatability/');
  await expect(page.getByRole('grid', { name: 'Every value' })).toBeVisible();
  await page.evaluate(
    (content) => {
      const data = new DataTransfer();
      data.items.add(new File([content], 'visits.csv', { type: 'text/csv' }));
      document.body.dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
    },
    visitExport({ clients: 3 }),
  );
  await expect(page).toHaveURL(/\/import\//);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('15 of 15 rows');
});

const png = Buffer.from('89504e470d0a1a0a0000000d494844520000000100000001080200000090775300', 'hex');
const zip = Buffer.from('504b0304140000000800000021000000000000000000000000000000', 'hex');
const unreadable = [
  { what: 'an empty file', name: 'empty.csv', content: '', says: 'is empty' },
  { what: 'a header alone', name: 'header.csv', content: `${exportColumns().join(',')}\n`, says: 'no rows below it' },
  { what: 'a picture', name: 'picture.csv', content: png, says: 'is a picture' },
  { what: 'a broken workbook', name: 'visits.xlsx', content: zip, says: 'damaged' },
] as const;

test('what cannot be read is refused with what to do; a discarded plan keeps nothing', async ({ page }) => {
  await openScreen(page, '/import/');
  for (const { what, name, content, says } of unreadable) {
    await giveFiles(page, [{ name, content }]);
    await expect(page.getByRole('heading', { level: 1 }), what).toContainText(name);
    await expect(page.getByRole('heading', { level: 1 }), what).toContainText(says);
    await expect(page.getByRole('main').getByRole('alert'), what).toContainText('Nothing was changed.');
  }
  await giveFiles(page, [
    { name: 'good.csv', content: visitExport({ clients: 3 }) },
    { name: 'empty.csv', content: '' },
  ]);
  await expectStep(page, '15 of 15 rows');
  await expect(page.getByRole('alert').filter({ hasText: 'empty.csv' })).toContainText('is empty');
  await page.getByRole('button', { name: 'Discard this plan' }).click();
  await expect(page.getByText('Your own clinic begins with the first import.')).toBeVisible();
  await page.reload();
  await expect(page.getByText('Your own clinic begins with the first import.')).toBeVisible();
  await expect(page.getByRole('banner')).toContainText('Oremoor');
});

test('a table without people or dates is asked about, and an own clinic stays as it was', async ({ page }) => {
  await chooseFiles(page, [{ name: 'good.csv', content: visitExport({ clients: 3 }) }]);
  await commitPlan(page);
  await page.getByRole('button', { name: 'Import more files' }).click();
  await giveFiles(page, [{ name: 'wrong.csv', content: 'name,amount\nrent,12\nlight,14\n' }]);
  await expectStep(page, 'about the columns are open');
  const question = page.getByRole('form', { name: /^Which column holds the/ });
  await question.getByRole('button', { name: 'Use this answer' }).click();
  await expect(question.getByRole('alert')).toContainText('Choose a column');
  await expect(page.getByRole('button', { name: 'Go on with these columns' })).toBeDisabled();
  await page.getByRole('button', { name: 'Discard this plan' }).click();
  const files = page.getByRole('grid', { name: 'Files of this clinic' });
  await expect(files).toContainText('good.csv');
  await expect(files).not.toContainText('wrong.csv');
  const imports = page.getByRole('region', { name: 'Imports of this clinic' });
  await expect(imports).toContainText('15 rows');
});

test('hostile cells are text: no markup, no script, no hidden sign, no endless cell', async ({ page }) => {
  const trouble = watchForTrouble(page);
  const hostile = {
    image: '<img src=x onerror="alert(1)">',
    link: '=HYPERLINK("http://127.0.0.1:9/x","click")',
    statement: "'; DROP TABLE readings; --",
    long: 'x'.repeat(10_000),
    nul: 'A\u0000B',
    turned: 'photo\u202Egpj.exe',
  };
  const extra = Object.values(hostile).map((cell, index) => exportRow(index + 1, 200, { weight_kg: cell }));
  const named = [
    exportRow(90, 0, { client_id: hostile.image, program: hostile.statement }),
    exportRow(91, 0, { client_id: hostile.turned }),
  ];
  await chooseFiles(page, [
    { name: '<b>visits</b>.csv', content: visitExport({ clients: 6, extra: [...extra, ...named] }) },
  ]);
  const remarks = page.getByRole('grid', { name: 'Row by row' });
  await expect(remarks).toContainText(hostile.image);
  await expect(remarks).toContainText(hostile.link);
  await expect(remarks).toContainText(hostile.statement);
  await expect(remarks).toContainText('(10,000 characters)');
  await expect(remarks).toContainText('A[U+0000]B');
  await expect(remarks).toContainText('photogpj.exe');
  await expect(remarks).not.toContainText('x'.repeat(200));
  await expect(remarks).not.toContainText('\u202E');
  await expect(page.getByRole('grid', { name: 'The files, as understood' })).toContainText('<b>visits</b>.csv');
  await commitPlan(page);
  await openScreen(page, '/clients/');
  await expect(page.getByRole('main')).toContainText(hostile.image);
  await openScreen(page, '/programs/');
  await expect(page.getByRole('main')).toContainText(hostile.statement);
  expect(await page.getByRole('main').innerText()).not.toContain('\u202E');
  expect(await page.locator('main img').count()).toBe(0);
  expect(trouble.errors).toEqual([]);
});

test('a file without a condition column fills the first screen after one question', async ({ page }) => {
  await chooseFiles(page, [{ name: 'plain.csv', content: visitExport({ conditions: false }) }]);
  const conditions = page.getByRole('region', { name: 'Conditions' });
  await expect(conditions).toContainText('hours fasted');
  await conditions.getByRole('button', { name: 'Declare the procedure' }).click();
  await expect(conditions.getByRole('alert')).toContainText('Choose at least one');
  await conditions.getByLabel('All of these').check();
  await conditions.getByLabel('Your initials').fill('AB');
  await conditions.getByRole('button', { name: 'Declare the procedure' }).click();
  await expect(conditions).toContainText(/as met by procedure: all sites, from .+ to .+ \(declared by AB\)/);
  await commitPlan(page);
  await page.getByRole('link', { name: 'See this week' }).click();
  await expect(page.getByRole('heading', { level: 1 })).not.toBeEmpty();
  await openScreen(page, '/programs/');
  const table = page.getByRole('grid', { name: 'Every program, in numbers' });
  await expect(table.getByRole('row').filter({ hasText: 'Walking group' })).toContainText('24');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Among the people compared');
});

test('the demo opens without condition columns, and again with them', async ({ page }) => {
  await openScreen(page, '/import/');
  await page.getByRole('button', { name: 'Open the demo without condition columns' }).click();
  const conditions = page.getByRole('region', { name: 'Conditions' });
  await expect(conditions).toContainText('One more site asks the same.');
  await expect(conditions).toContainText('hours fasted');
  await conditions.getByRole('button', { name: 'There is no written procedure' }).click();
  await page.getByRole('button', { name: 'Go on without' }).click();
  await expect(conditions).toContainText('no written procedure. The conditions stay unknown.');
  await page.getByRole('button', { name: 'Open the demo clinic' }).click();
  await expect(conditions).not.toContainText('no written procedure. The conditions stay unknown.');
});
