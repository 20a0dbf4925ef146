import { downloadBy } from './support/download-by';
import { test } from './support/open-clinic';
import { openClient } from './support/open-client';
import { expect, openScreen } from './support/open-screen';

test.describe.configure({ timeout: 180_000 });

test('arrow keys move along the points of the figure, whose words and table stand behind it', async ({ page }) => {
  await openScreen(page, '/clients/');
  await openClient(page, 'OM-0023');
  const figure = page.getByRole('figure', { name: 'Values over time' });
  await figure.locator('[data-key][tabindex="0"]').focus();
  const first = await page.evaluate(() => document.activeElement?.getAttribute('data-key'));
  await page.keyboard.press('ArrowRight');
  const second = await page.evaluate(() => document.activeElement?.getAttribute('data-key'));
  expect(second).not.toBe(first);
  expect(second).not.toBeNull();
  await figure.getByText('The table behind this figure').click();
  await expect(figure.getByRole('table')).toContainText('53.3');
});

test('a figure leaves as a light SVG file without keys or the client’s id', async ({ page }) => {
  await openScreen(page, '/clients/');
  await openClient(page, 'OM-0023');
  const download = await downloadBy(page, () =>
    page.getByRole('figure', { name: 'Values over time' }).getByRole('button', { name: 'Save figure as SVG' }).click(),
  );
  expect(download.suggestedFilename()).toMatch(/^driftline-client-over-time-[0-9a-f]+\.svg$/);
  const stream = await download.createReadStream();
  const chunks: Buffer[] = [];
  for await (const chunk of stream) chunks.push(chunk as Buffer);
  const text = Buffer.concat(chunks).toString('utf8');
  expect(text).toContain('<title>');
  expect(text).not.toMatch(/data-key|var\(--|OM-0023|Huresby/);
});

test('the page prints as one sheet', async ({ page }) => {
  await openScreen(page, '/clients/');
  await openClient(page, 'OM-0023');
  const pdf = (await page.pdf({ format: 'A4' })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page[^s]/g)).toHaveLength(1);
});

test('the vector path stands with its own error, the index path without a judgement of levels', async ({ page }) => {
  await openScreen(page, '/clients/');
  await openClient(page, 'OM-0023');
  const vector = page.getByRole('figure', { name: 'Vector path' });
  await expect(vector).toContainText('moved further from its baseline than error alone explains');
  await expect(vector.locator('.path line')).toHaveCount(3);
  await expect(vector.locator('.reference')).toHaveCount(1);
  await expect(page.getByRole('figure', { name: 'Index path' })).toContainText('For change only');
  const article = page.getByRole('article');
  await expect(article).toContainText('The fall in the lean estimate fits cell mass.');
  await expect(article).toContainText('over 99 % confidence from error alone');
  await expect(article).toContainText('A guess about a typical person with this reading');
});

test('a key that leads to nobody says so', async ({ page }) => {
  await openScreen(page, '/client/?c=999999');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('There is no such client in these data');
  await page.getByRole('main').getByRole('link', { name: 'All clients' }).click();
  await expect(page).toHaveURL(/\/clients\/$/);
});
