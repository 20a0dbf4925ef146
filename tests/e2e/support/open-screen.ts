import { expect as immediate, type Page } from '@playwright/test';

/** A clinic is rebuilt from its files at every load, so a screen may take its time on a busy machine. */
export const expect = immediate.configure({ timeout: 45_000 });

/** Goes to a screen and waits until the clinic is open and the screen's answer stands. */
export const openScreen = async (page: Page, address: string): Promise<void> => {
  await page.goto(address);
  await expect(page.getByRole('main').getByText('Estimates from electrical measurements.')).toBeVisible();
  await expect(page.getByRole('main').locator('[role="status"] h1')).toHaveCount(0);
};
