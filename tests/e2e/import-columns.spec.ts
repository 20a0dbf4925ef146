import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from '@playwright/test';
import { strToU8, zipSync } from 'fflate';
import writeExcelFile from 'write-excel-file/node';
import { downloadBy } from './support/download-by';
import { foreignVisits, germanExport, wideExport } from './support/foreign-exports';
import {
  answerColumn,
  chooseFiles,
  commitPlan,
  countOf,
  expectStep,
  giveFiles,
  takeColumns,
} from './support/import-steps';
import { expect, openScreen, shareOpenedPage } from './support/open-screen';
import { exportColumns, exportRow, visitExport } from './support/visit-export';

test.describe.configure({ timeout: 300_000 });
test.beforeEach(({ page }) => {
  shareOpenedPage(page);
});

const VISITS = foreignVisits().length;

test('a German export is read after two answers, remembered, and its mapping travels as a file', async ({ page }) => {
  const given = [{ name: 'praxis.csv', content: germanExport() }];
  await chooseFiles(page, given);
  await expectStep(page, '2 questions about the columns are open');
  const raw = page.getByRole('region', { name: 'First rows of praxis.csv', exact: true });
  await expect(raw).toContainText('before the header');
  await expect(raw).toContainText('Praxis am Hafen');
  await expect(raw).toContainText('Größe (m)');
  await expect(page.getByLabel('Unit of height', { exact: true })).toHaveValue('m');
  await expect(page.getByLabel('Date order of visit date')).toHaveValue('?');

  await answerColumn(page, '3 April 2025 (day, month, year)');
  await expect(page.getByRole('heading', { name: 'Question about the columns', exact: true })).toBeFocused();
  const sexes = page.getByRole('form', { name: 'How is sex coded in Geschlecht?' });
  await sexes.getByRole('button', { name: 'Use this answer' }).click();
  await expect(sexes.getByRole('alert')).toContainText('Say for each word');
  await sexes.getByLabel('“1”').selectOption('M');
  await sexes.getByLabel('“2”').selectOption('F');
  await sexes.getByRole('button', { name: 'Use this answer' }).click();
  const next = page.getByRole('button', { name: 'Go on with these columns' });
  await expect(next).toBeFocused();
  const preview = page.getByRole('table', { name: /as they would be read$/ });
  await expect(preview.getByRole('row').nth(1)).toContainText('2025-04-03');
  await expect(preview.getByRole('row').nth(1)).toContainText('162');

  // By keyboard alone: another unit, and back.
  await page.getByLabel('Unit of weight', { exact: true }).focus();
  await page.keyboard.press('ArrowDown');
  await expect(page.getByLabel('Unit of weight', { exact: true })).toHaveValue('lb');
  await page.keyboard.press('ArrowUp');
  await expect(page.getByLabel('Unit of weight', { exact: true })).toHaveValue('kg');

  const download = await downloadBy(page, () => page.getByRole('button', { name: 'Save this mapping' }).click());
  const saved = readFileSync(await download.path(), 'utf8');
  expect(JSON.parse(saved)).toMatchObject({ version: 1, role: 'visits' });

  await takeColumns(page);
  expect(await countOf(page, 'accepted')).toBe(`${VISITS} of ${VISITS}`);
  const converted = page.getByRole('region', { name: 'Converted and read another way' });
  await expect(converted).toContainText(`Converted from metres to centimetres: height (${VISITS}).`);
  await expect(converted).toContainText('Decimal comma read as a decimal point: ');
  await expect(converted).toContainText(`weight (${VISITS})`);
  await expect(converted).toContainText(`Dates read as day, month, year: visit date (${VISITS}).`);
  await page.getByRole('button', { name: 'Discard this plan' }).click();

  await giveFiles(page, given);
  await expectStep(page, '2 questions about the columns are open');
  await page.getByLabel('Load a mapping').setInputFiles({
    name: 'other.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify({ header: ['a'], columns: [] })),
  });
  await expect(page.getByRole('main').getByRole('alert').filter({ hasText: 'other.json' })).toContainText(
    'belongs to a file with other column names',
  );
  await page
    .getByLabel('Load a mapping')
    .setInputFiles({ name: 'mapping.json', mimeType: 'application/json', buffer: Buffer.from(saved) });
  await expectStep(page, 'Are the columns read as they should be?');
  await takeColumns(page);
  await commitPlan(page);
  await page.getByRole('button', { name: 'Import more files' }).click();

  const row = 'P-1;2;01.09.2025;1,62;66,0;490,0;52,0;Raum 1';
  await giveFiles(page, [{ name: 'more.csv', content: `${germanExport().toString('latin1')}\r\n${row}` }]);
  await expectStep(page, /of \d+ rows can be used/);
  expect(await countOf(page, 'the same reading twice')).toBe(`${VISITS} of ${2 * VISITS + 1}`);
  await page.getByRole('button', { name: 'How the columns were read' }).click();
  await expect(page.getByRole('main')).toContainText('The mapping is the one you used before for this header.');
  await page.getByRole('button', { name: 'Discard this plan' }).click();
  const mappings = page.getByRole('region', { name: 'Remembered mappings' });
  await mappings.getByRole('button', { name: /^Forget/ }).click();
  await expect(mappings).toHaveCount(0);
});

test('pounds, inches and readings side by side; a workbook; a zip; a folder; a cancel while reading', async ({
  page,
}) => {
  await chooseFiles(page, [{ name: 'wide.csv', content: wideExport() }]);
  await expectStep(page, 'Are the columns read as they should be?');
  await expect(page.getByLabel('Source column of resistance R, reading 2', { exact: true })).toHaveValue('5');
  const preview = page.getByRole('table', { name: /as they would be read$/ });
  await expect(preview.getByRole('row').nth(2)).toContainText('reading 2');
  await takeColumns(page);
  expect(await countOf(page, 'accepted')).toBe(`${2 * VISITS} of ${2 * VISITS}`);
  const converted = page.getByRole('region', { name: 'Converted and read another way' });
  await expect(converted).toContainText('Converted from pounds to kilograms');
  await expect(converted).toContainText('Converted from inches to centimetres');
  await page.getByRole('button', { name: 'Discard this plan' }).click();

  const day = (month: number, date: number): Date => new Date(Date.UTC(2025, month - 1, date));
  const workbook = await writeExcelFile([
    ['Client', 'Date of visit', 'Weight', 'Resistance (Ohm)', 'Reactance (Ohm)'].map((value) => ({ value })),
    ...foreignVisits().map((visit) => [
      { value: `X-${String(visit.client)}` },
      { value: day(visit.month, visit.day), format: 'dd.mm.yyyy' },
      { value: visit.weightKg },
      { value: visit.r },
      { value: visit.xc },
    ]),
  ]).toBuffer();
  await giveFiles(page, [{ name: 'book.xlsx', content: workbook }]);
  await expectStep(page, 'the columns');
  const unit = page.getByRole('form', { name: 'In which unit is the column Weight (weight)?' });
  if (await unit.isVisible()) await answerColumn(page, /^kilograms:/);
  await takeColumns(page);
  expect(await countOf(page, 'accepted')).toBe(`${VISITS} of ${VISITS}`);
  await page.getByRole('button', { name: 'Discard this plan' }).click();

  const half = (clients: readonly number[]): string =>
    [exportColumns().join(','), ...clients.map((client) => exportRow(client, 0))].join('\n');
  const zip = zipSync({ 'a.csv': strToU8(half([1, 2])), 'deep/b.csv': strToU8(half([3])) });
  await giveFiles(page, [{ name: 'both.zip', content: Buffer.from(zip) }]);
  await expectStep(page, '3 of 3 rows can be used');
  await page.getByRole('button', { name: 'Discard this plan' }).click();

  const folder = mkdtempSync(join(tmpdir(), 'visits-'));
  try {
    writeFileSync(join(folder, 'a.csv'), half([1, 2]));
    writeFileSync(join(folder, 'b.csv'), half([3]));
    writeFileSync(join(folder, '.DS_Store'), 'x');
    await page.getByLabel('Choose a folder').setInputFiles(folder);
    await expectStep(page, '3 of 3 rows can be used');
    await expect(page.getByRole('grid', { name: 'The files, as understood' })).not.toContainText('DS_Store');
    await page.getByRole('button', { name: 'Discard this plan' }).click();

    const large = join(folder, 'large.csv');
    const block = visitExport({ clients: 400 });
    const [header = ''] = block.split('\n', 1);
    writeFileSync(large, `${header}\n${block.slice(header.length + 1).repeat(80)}`);
    await page.getByLabel('Choose files').setInputFiles(large);
    await expectStep(page, 'Reading the files');
    await page.getByRole('button', { name: 'Cancel', exact: true }).click();
    await expectStep(page, 'Drop the visit export here');
    await openScreen(page, '/repeatability/');
    await expect(page.getByRole('banner')).toContainText('Oremoor');
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
