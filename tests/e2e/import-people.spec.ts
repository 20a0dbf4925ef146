import { readFileSync } from 'node:fs';
import { test } from '@playwright/test';
import Papa from 'papaparse';
import { downloadBy } from './support/download-by';
import { compositionExport, foreignVisits } from './support/foreign-exports';
import { chooseFiles, commitPlan, countOf, expectStep, giveFiles } from './support/import-steps';
import { expect, shareOpenedPage } from './support/open-screen';
import { exportColumns, exportRow, visitExport } from './support/visit-export';

test.describe.configure({ timeout: 300_000 });
test.beforeEach(({ page }) => {
  shareOpenedPage(page);
});

const CLIENTS = 6;
const ROWS = CLIENTS * 5;

test('people and readings are asked about one at a time; the corrected report completes the import without doubles', async ({
  page,
}) => {
  const extra = [
    exportRow(1, 200, { client_id: 'tc 001' }), // another spelling of TC-001
    exportRow(2, 200, { birth_date: '1961-01-01' }),
    exportRow(3, 200, { sex: 'M' }),
    exportRow(4, 84, { reading: '', weight_kg: '99.9' }),
    exportRow(5, 200, { weight_kg: '0' }), // not accepted
  ];
  await chooseFiles(page, [{ name: 'visits.csv', content: visitExport({ clients: CLIENTS, extra }) }]);
  await expectStep(page, 'questions are open');
  const questions = page.getByRole('region', { name: 'Questions' });
  const answer = async (ask: RegExp, button: string | RegExp): Promise<void> => {
    for (let turn = 0; turn < 6 && !(await questions.getByText(ask).isVisible()); turn += 1) {
      await questions.getByRole('button', { name: 'Decide later' }).click();
    }
    await expect(questions.getByText(ask)).toBeVisible();
    await questions.getByRole('button', { name: button }).click();
    await expect(questions.getByText(ask)).toHaveCount(0);
    await expect(page.getByText('Working the plan out again…')).toHaveCount(0);
  };
  await answer(/^Are “TC-001” and “tc 001” one person\?$/, 'One person, called TC-001');
  await answer(/^When was TC-002 born\?$/, /^\d+ May 1952/);
  await answer(/^Which coding of sex do the equations use for TC-003\?$/, /^Female/);
  await expect(questions).toContainText('TC-001 and tc 001: one person, called TC-001.');
  await expect(questions).toContainText('TC-003: female for equations.');

  const refused = await countOf(page, 'not accepted');
  expect(refused).toBe(`1 of ${ROWS + extra.length}`);
  const download = await downloadBy(page, () => page.getByRole('button', { name: 'Save the report as CSV' }).click());
  const report = readFileSync(await download.path(), 'utf8').replace(/^\uFEFF/, '');
  const parsed = Papa.parse<Record<string, string>>(report, { header: true, skipEmptyLines: true });
  expect(parsed.data.some((row) => row['client_id'] === 'TC-005' && row['weight_kg'] === '0')).toBe(true);
  await page.getByLabel('Name of your clinic').fill('Harbour practice');
  await commitPlan(page);
  await page.getByRole('button', { name: 'Import more files' }).click();

  const corrected = parsed.data.map((row) =>
    row['client_id'] === 'TC-005' && row['weight_kg'] === '0' ? { ...row, weight_kg: '71.5' } : row,
  );
  await giveFiles(page, [{ name: 'corrected.csv', content: Papa.unparse(corrected) }]);
  await expectStep(page, 'rows can be used');
  // The corrected row stands in the place of the one that was not accepted.
  expect(await countOf(page, 'not accepted')).toBe('');
  await page.getByRole('button', { name: /^Import [\d,]+ rows?$/ }).click();
  const changes = page.getByRole('region', { name: 'What changed since last time' });
  await expect(changes).toContainText('1 visit came in');
  await expect(changes).toContainText('0 people are new');
  await page.getByRole('button', { name: 'Take this import out again' }).click();
  await expect(page.getByRole('main').getByRole('status')).toContainText('taken out again');
});

test('enrolments of a second file are joined, exported values alone go the whole way, and an error is entered', async ({
  page,
}) => {
  const columns = exportColumns().filter((name) => !name.startsWith('program'));
  const places = columns.map((name) => exportColumns().indexOf(name));
  const visits = visitExport({ clients: CLIENTS })
    .trim()
    .split('\n')
    .map((line) => places.map((place) => line.split(',')[place] ?? '').join(','))
    .join('\n');
  const enrolments = Array.from(
    { length: CLIENTS },
    (_, index) => `TC-${String(index + 1).padStart(3, '0')},Walking group,2025-01-06`,
  );
  await chooseFiles(page, [
    { name: 'visits.csv', content: visits },
    { name: 'enrolments.csv', content: ['client_id,program,program_start', ...enrolments].join('\n') },
  ]);
  await expectStep(page, 'rows can be used');
  await expect(page.getByRole('grid', { name: 'The files, as understood' })).toContainText('enrolment');
  expect(await countOf(page, 'enrolments joined')).toBe(String(CLIENTS));
  await page.getByRole('button', { name: 'Discard this plan' }).click();

  await giveFiles(page, [{ name: 'composition.csv', content: compositionExport() }]);
  await expectStep(page, `${foreignVisits().length} of ${foreignVisits().length} rows can be used`);
  await expect(page.getByRole('main')).toContainText('vectors need R and Xc at 50 kHz');
  const error = page.getByRole('region', { name: 'Which error?' });
  await expect(error).toContainText('No visit is marked as precision in these files.');
  await error.getByLabel(/^Entered, with its degrees of freedom/).check();
  await error.getByRole('button', { name: 'Judge by this' }).click();
  await expect(error.getByRole('alert')).toContainText('at least one value');
  await error.getByLabel('Value', { exact: true }).selectOption('ffm_exported');
  await error.getByLabel('SD between days, kg').fill('0,5');
  await error.getByLabel('Degrees of freedom', { exact: true }).fill('35');
  await error.getByRole('button', { name: 'Judge by this' }).click();
  await expect(error.getByRole('status')).toContainText('Changes are judged by: Entered');
  await commitPlan(page);
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('link', { name: 'Repeatability' }).click();
  await expect(page.getByRole('grid', { name: 'Every value' })).toContainText('entered by the clinic');
});

test('a sheet with its names in another line and several columns for one is put right by hand', async ({ page }) => {
  const rows = foreignVisits().map(({ client, day, month, weightKg }) =>
    [
      '',
      `Q-${String(client)}`,
      `2025-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`,
      weightKg.toFixed(1),
    ].join(','),
  );
  const content = ['x,Person,When,Mass', 'nr,code,first seen,weight kg', ...rows].join('\n');
  await chooseFiles(page, [{ name: 'odd.csv', content }]);
  await expectStep(page, 'the columns');
  const header = page.getByLabel('The column names stand in line');
  await header.selectOption('1');
  await expect(page.getByText('Reading with this header line')).toHaveCount(0);
  await expect(header).toHaveValue('1');
  const region = page.getByRole('region', { name: 'Who' });
  const source = region.getByLabel('Source column of client id', { exact: true });
  if ((await source.inputValue()) === '') await source.selectOption({ label: 'Person' });
  await expect(source).toHaveValue('1');
  await page.getByRole('region', { name: 'Visit', exact: true }).getByRole('button', { name: /more/ }).click();
  await page.getByLabel('device, the same in every row', { exact: true }).fill('D1');
  await expect(page.getByRole('table', { name: /as they would be read$/ })).toContainText('D1');
  await expect(page.getByRole('region', { name: 'Kept, not used' })).toContainText('x');
});
