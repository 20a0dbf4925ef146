import type { Page } from '@playwright/test';
import { expect, openScreen } from './open-screen';

/** Opens Import and gives it files, as the file chooser does. */
export const chooseFiles = async (
  page: Page,
  files: readonly { name: string; content: string | Buffer }[],
): Promise<void> => {
  await openScreen(page, '/import/');
  await page
    .getByLabel('Choose files')
    .setInputFiles(files.map(({ name, content }) => ({ name, mimeType: 'text/csv', buffer: Buffer.from(content) })));
};

/** The number that stands under a heading of the counts, as `n of N`. */
export const countOf = async (page: Page, name: string): Promise<string> => {
  const item = page.locator('dl > div').filter({ has: page.getByText(name, { exact: true }) });
  return (await item.locator('dd').innerText()).trim();
};

/** Keeps the planned files and waits until they are kept. */
export const commitPlan = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: /^Import [\d,]+ rows?$/ }).click();
  await expect(page.getByRole('link', { name: 'See this week' })).toBeVisible();
};

/** Violations of the content security policy and errors of the page, gathered from now on. */
export const watchForTrouble = (page: Page): { readonly errors: string[] } => {
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(String(error)));
  page.on('dialog', (dialog) => {
    errors.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  return { errors };
};
