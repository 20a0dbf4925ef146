import type { Page } from '@playwright/test';
import { expect, openScreen } from './open-screen';

export interface GivenTestFile {
  readonly name: string;
  readonly content: string | Buffer;
}

/** Gives Import files, as the file chooser does. */
export const giveFiles = async (page: Page, files: readonly GivenTestFile[]): Promise<void> => {
  await page.getByLabel('Choose files').setInputFiles(
    files.map(({ name, content }) => ({
      name,
      mimeType: 'application/octet-stream',
      buffer: Buffer.from(content),
    })),
  );
};

/** Opens Import and gives it files. */
export const chooseFiles = async (page: Page, files: readonly GivenTestFile[]): Promise<void> => {
  await openScreen(page, '/import/');
  await giveFiles(page, files);
};

/** The sentence over the present step, once it says what is expected. */
export const expectStep = async (page: Page, says: string | RegExp): Promise<void> => {
  await expect(page.getByRole('heading', { level: 1 })).toContainText(says);
};

/** Goes from the columns to the plan. */
export const takeColumns = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'Go on with these columns' }).click();
  await expectStep(page, 'can be used as they are');
};

/** Answers the present question about the columns by the choice with this label. */
export const answerColumn = async (page: Page, choice: string | RegExp): Promise<void> => {
  const question = page.getByRole('region', { name: 'Question about the columns' });
  await question.getByLabel(choice).check();
  await question.getByRole('button', { name: 'Use this answer' }).click();
};

/** The number that stands under a heading of the counts, as `n of N`; '' where the heading is not there. */
export const countOf = async (page: Page, name: string): Promise<string> => {
  // Read at once: a count may go between a look for it and a wait for its text.
  const texts = await page
    .locator('dl > div')
    .filter({ has: page.getByText(name, { exact: true }) })
    .locator('dd')
    .allInnerTexts();
  return texts[0]?.trim() ?? '';
};

/** Signs the first change of a browser profile without initials; nothing where it was signed before. */
export const signIfAsked = async (page: Page): Promise<void> => {
  const dialog = page.getByRole('dialog', { name: 'Who is doing this?' });
  const done = page.getByRole('link', { name: 'See this week' });
  await expect(dialog.or(done)).toBeVisible();
  if (await dialog.isVisible()) await dialog.getByRole('button', { name: 'Go on without' }).click();
};

/** Keeps the planned files and waits until they are kept. */
export const commitPlan = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: /^Import [\d,]+ rows?$/ }).click();
  await signIfAsked(page);
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
