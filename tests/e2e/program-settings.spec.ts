import { test, type Locator, type Page } from '@playwright/test';
import { expect, openScreen } from './support/open-screen';

test.describe.configure({ timeout: 180_000 });

/** Answers for the initials where they are asked, and waits for what comes after. */
const signed = async (page: Page, after: Locator): Promise<void> => {
  const initials = page.getByRole('dialog');
  await initials.or(after).first().waitFor();
  if (await initials.isVisible()) {
    await initials.getByRole('textbox').fill('AB');
    await initials.getByRole('textbox').press('Enter');
  }
};

test('a program is set with what is wrong beside the field, and an enrolment ended with a reason; both are undone', async ({
  page,
}) => {
  await openScreen(page, '/settings/');
  await page.getByRole('button', { name: 'Edit Before surgery' }).click();
  const form = page.getByRole('form', { name: 'Before surgery' });
  const reviews = form.getByLabel('Planned reviews');
  await reviews.fill('4 ± 4');
  await expect(form.getByRole('alert')).toContainText('The window of week 4 opens on day 0');
  await reviews.fill('6 ± 1, 10 ± 4');
  await expect(form).toContainText('overlap: a visit inside both belongs to the nearer review');
  await reviews.press('Enter');
  await signed(page, page.getByText('Saved. Lists and reviews are counted anew.'));
  const section = page.getByRole('region', { name: 'Programs' });
  await expect(section).toContainText('reviews at weeks 6 ± 1 and 10 ± 4');
  await page
    .getByRole('button', { name: /^Undo: Settings changed/ })
    .first()
    .click();
  await expect(section).not.toContainText('10 ± 4');

  // One value of lean tissue decides: the list follows it, and says what programs expect of no value of theirs.
  const lean = page.getByRole('region', { name: 'Lean tissue' });
  await expect(lean).toContainText('Every visit here was measured standing');
  await lean.getByLabel('Limit for the lean share of a loss, %').fill('0');
  await expect(lean.getByRole('alert')).toContainText('A number above 0 and up to 100');
  await lean.getByLabel('Limit for the lean share of a loss, %').fill('');
  await lean.getByRole('button', { name: 'Keep the limit' }).click();
  await expect(lean).toContainText('Lists and results are counted anew');
  await lean.getByLabel('Value for lean tissue').selectOption('fat-free mass, as exported');
  await expect(lean).toContainText('One program says what it lets expect of another value');
  await openScreen(page, '/contact/');
  await expect(page.getByRole('main')).toContainText('fat-free mass, as exported changed from baseline');
  await page.getByRole('link', { name: 'Enter one in Settings' }).click();
  await expect(lean).toBeVisible();
  for (let undone = 0; undone < 2; undone += 1) {
    await page
      .getByRole('button', { name: /^Undo: Settings changed/ })
      .first()
      .click();
    await expect(page.getByText('Undone: Settings changed.')).toBeVisible();
  }
  await expect(lean.getByLabel('Value for lean tissue')).toHaveValue('ffm');
  await expect(lean.getByLabel('Limit for the lean share of a loss, %')).toHaveValue('35');

  // Whoever has left is ended with a reason on their own page, and leaves the list.
  await openScreen(page, '/client/?c=155');
  await page.getByRole('button', { name: 'End Weight management' }).click();
  const end = page.getByRole('form', { name: 'End Weight management' });
  await end.getByLabel('Ended on').fill('2025-05-05');
  await end.getByLabel('Reason').selectOption('moved');
  await end.getByRole('button', { name: 'Save the end' }).click();
  const panel = page.getByRole('region', { name: 'Programs' });
  await signed(page, panel.getByText('entered here'));
  await expect(panel).toContainText('to 5 May 2025 (moved)');
  await openScreen(page, '/contact/');
  const gone = page.getByRole('region', { name: 'Not seen since' });
  await gone.getByRole('button', { name: /^all \d+$/ }).click();
  await expect(gone).not.toContainText('OM-0155');
  await page
    .getByRole('button', { name: /^Undo: Settings changed/ })
    .first()
    .click();
  await expect(gone).toContainText('OM-0155');
});
