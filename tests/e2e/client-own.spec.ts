import { test, type Page } from '@playwright/test';
import { openClient } from './support/open-client';
import { expect, openScreen } from './support/open-screen';
import { savedTable } from './support/saved-table';

test.describe.configure({ mode: 'serial', timeout: 180_000 });

// What is kept about a client changes the clinic: this page is shared with no other test.
let page: Page;

test.beforeAll(async ({ browser }) => {
  test.setTimeout(180_000);
  page = await browser.newPage();
  await openScreen(page, '/clients/');
  await openClient(page, 'OM-0023');
});
test.afterAll(() => page.close());

const own = () => page.getByRole('region', { name: 'About this client' });
const article = () => page.getByRole('article');
const sheets = async (): Promise<number> =>
  ((await page.pdf({ format: 'A4' })).toString('latin1').match(/\/Type\s*\/Page[^s]/g) ?? []).length;

const keep = async (label: string, text: string): Promise<void> => {
  await own().getByLabel(label, { exact: true }).fill(text);
  await own()
    .getByRole('button', { name: `Save: ${label}` })
    .click();
};

test('the page for the file is one sheet, with no name in its title', async () => {
  await page.getByRole('link', { name: 'Page for the file' }).click();
  await expect(article().getByRole('figure', { name: 'Vector path' })).toBeVisible();
  expect(await sheets()).toBe(1);
  expect(await page.title()).toBe('One client · Driftline');
  await page.getByRole('link', { name: 'Back to the client' }).click();
  await expect(own()).toBeVisible();
});

test('a goal and a name are kept, and each is one step of undo', async () => {
  await keep('One goal, in the client’s own words', 'Carry the shopping upstairs');
  const initials = page.getByRole('dialog');
  if (await initials.isVisible()) await initials.getByRole('button', { name: 'Go on without' }).click();
  await expect(article().getByText('“Carry the shopping upstairs”')).toBeVisible();
  await keep('Name to show', 'Mrs Example');
  await expect(article().getByText('Mrs Example')).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(article().getByText('Mrs Example')).toHaveCount(0);
  await expect(article().getByText('“Carry the shopping upstairs”')).toBeVisible();
});

test('the table of clients shows the name that is shown, and its search finds every name and says which', async () => {
  await keep('Name to show', 'Mrs Example');
  await keep('Also known as', 'Wilhelmine');
  await expect(article().getByText('also known as Wilhelmine')).toBeVisible();
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('link', { name: 'Clients' }).click();
  const search = page.getByLabel('Search id or name');
  const rows = page.getByRole('grid', { name: 'All clients' }).locator('tr[data-index]');
  await search.fill('wilhelm');
  await expect(rows).toHaveCount(1);
  await expect(rows).toContainText('OM-0023');
  await expect(rows).toContainText('Mrs Example');
  await expect(rows).toContainText('also known as Wilhelmine');
  await search.fill('huresby');
  await expect(rows).toHaveCount(1);
  await expect(rows).toContainText('in the files: Huresby');
  await search.fill('mrs example');
  await expect(rows).toHaveCount(1);
  await expect(rows).not.toContainText(/in the files|also known as/);
  const [saved] = await savedTable(page);
  expect(Object.values(saved ?? {}).join(' ')).toMatch(/Huresby/);
  expect(Object.values(saved ?? {}).join(' ')).not.toMatch(/Example|Wilhelmine/);
  await search.fill('');
  await openClient(page, 'OM-0023');
});

test('the page for the client: plain words, one sheet; with the switch on no weight and no fat', async () => {
  await page.getByRole('link', { name: 'Page for the client' }).click();
  await expect(article()).toContainText('Your weight was 78.5 kg.');
  await expect(article()).toContainText('“Carry the shopping upstairs”');
  expect(await sheets()).toBe(1);
  await page.getByRole('link', { name: 'Back to the client' }).click();
  const box = own().getByLabel('No weight or fat on anything the client sees');
  await box.click();
  await expect(box).toBeChecked();
  await expect(own().getByRole('status')).toHaveText(
    'Weight and fat are left off what this client sees. Undo brings them back.',
  );
  await page.getByRole('link', { name: 'Page for the client' }).click();
  await expect(article()).toContainText('It went down since 8 September 2025, by more than the wobble.');
  await expect(article()).not.toContainText(/weigh|\bfat\b|kg|lean/i);
  expect(await sheets()).toBe(1);
  expect(await page.title()).toBe('One client · Driftline');
  await page.getByRole('link', { name: 'Back to the client' }).click();
});

test('energy: a level that was typed in counts before the record, and no target is given', async () => {
  const energy = page.getByRole('region', { name: 'Energy, for orientation' });
  await expect(energy).toContainText('1.45, from the record of 12 December 2025.');
  await energy.getByRole('textbox', { name: 'Physical activity level' }).fill('9');
  await energy.getByRole('button', { name: 'Save: Physical activity level' }).click();
  await expect(energy.getByRole('alert')).toContainText('Write a number from 1 to 3');
  await energy.getByRole('textbox', { name: 'Physical activity level' }).fill('1.6');
  await energy.getByRole('button', { name: 'Save: Physical activity level' }).click();
  await expect(energy).toContainText('1.60, entered');
  await expect(energy).toContainText('Total expenditure 2,450 kcal/d');
  await expect(energy).toContainText('not a prescription');
});
