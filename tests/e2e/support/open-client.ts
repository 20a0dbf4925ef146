import type { Page } from '@playwright/test';
import { expect } from './open-screen';

/** Finds a client by id in the table of an open clinic and opens the page, without loading the site again. */
export const openClient = async (page: Page, id: string): Promise<void> => {
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('link', { name: 'Clients' }).click();
  await page.getByLabel('Search id or name').fill(id);
  await page.getByRole('grid', { name: 'All clients' }).getByRole('link', { name: id, exact: true }).click();
  await expect(page.getByRole('article').getByText(id, { exact: true })).toBeVisible();
};
