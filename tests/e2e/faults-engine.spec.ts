import { test, type Page, type Route } from '@playwright/test';
import { breakWorker, expectGate, openOwnClinic } from './support/faults';
import { chooseFiles, commitPlan, countOf, expectStep } from './support/import-steps';
import { expect, openScreen } from './support/open-screen';
import { visitExport } from './support/visit-export';

test.describe.configure({ timeout: 300_000 });

const NOT_STARTED = 'The clinic could not be opened';
const WASM = '**/duckdb-eh.wasm';
const CUT_BYTES = 1_000_000;

const notFound = (route: Route): Promise<void> => route.fulfill({ status: 404, body: 'not found' });

const cut = async (route: Route): Promise<void> => {
  const response = await route.fetch();
  const body = (await response.body()).subarray(0, CUT_BYTES);
  await route.fulfill({ status: 200, contentType: 'application/wasm', body });
};

const openNow = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(page.getByRole('banner')).toContainText('Oremoor');
  await expect(page.getByRole('main').getByText('Estimates from electrical measurements.')).toBeVisible();
};

const faults = [
  { what: 'a worker script that is missing', address: '**/engine-worker.js', answer: notFound },
  { what: 'an engine script that is missing', address: '**/duckdb-browser-eh.worker.js', answer: notFound },
  { what: 'a WebAssembly file that is missing', address: WASM, answer: notFound },
  { what: 'a line that breaks', address: WASM, answer: (route: Route) => route.abort() },
  { what: 'a WebAssembly file that is cut short', address: WASM, answer: cut },
] as const;

for (const { what, address, answer } of faults) {
  test(`${what} is said at once, with what to try, and the clinic opens when it is mended`, async ({ page }) => {
    await page.route(address, answer);
    await page.goto('/');
    await expectGate(page, NOT_STARTED, 25_000);
    const said = page.getByRole('alert').filter({ hasText: 'What to try' });
    await expect(said).toContainText('Nothing was lost');
    await expect(said).toContainText('may be missing or incomplete');
    await page.unroute(address);
    await openNow(page);
  });
}

test('an engine that never arrives is given up, and opens when the line is mended', async ({ page }) => {
  await page.route(WASM, () => undefined);
  await page.goto('/');
  await expectGate(page, NOT_STARTED, 60_000);
  await page.unroute(WASM);
  await openNow(page);
});

for (const end of ['trap', 'uncaught error', 'ends without a word'] as const) {
  test(`a database whose worker goes (${end}) under a question is started again, and the screen is answered`, async ({
    page,
  }) => {
    await openScreen(page, '/clients/');
    await breakWorker(page, end);
    await page.getByRole('link', { name: 'Programs', exact: true }).click();
    await expect(page.getByRole('grid', { name: 'Every program, in numbers' })).toBeVisible();
    await expect(page.getByRole('banner')).toContainText('Oremoor');
    await expect(page.getByRole('alert').filter({ hasText: 'broke down' })).toHaveCount(0);
  });
}

test('a database that goes while files are judged, and again while they are kept, costs nothing', async ({ page }) => {
  await openOwnClinic(page, [{ name: 'first.csv', content: visitExport({ clients: 12 }) }]);
  await page.getByRole('button', { name: 'Import more files' }).click();
  await breakWorker(page, 'ends without a word');
  const content = visitExport({ clients: 20 });
  await page
    .getByLabel('Choose files')
    .setInputFiles([{ name: 'second.csv', mimeType: 'text/csv', buffer: Buffer.from(content) }]);
  await expectStep(page, '100 of 160 rows');
  expect(await countOf(page, 'the same reading twice')).toBe('60 of 160');
  await breakWorker(page, 'trap');
  await commitPlan(page);
  await openScreen(page, '/import/');
  const files = page.getByRole('grid', { name: 'Files of this clinic' });
  await expect(files).toContainText('first.csv');
  await expect(files).toContainText('second.csv');
});

test('a database that goes and does not start again leaves the clinic whole', async ({ page }) => {
  await chooseFiles(page, [{ name: 'first.csv', content: visitExport({ clients: 12 }) }]);
  await commitPlan(page);
  await page.route(WASM, notFound);
  await breakWorker(page, 'uncaught error');
  await page.getByRole('link', { name: 'Programs', exact: true }).click();
  await expectGate(page, NOT_STARTED);
  await page.unroute(WASM);
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(page.getByRole('grid', { name: 'Every program, in numbers' })).toContainText('Walking group');
  await expect(page.getByRole('banner')).toContainText('Your clinic');
});
