import { expect as immediate, type Page } from '@playwright/test';

/** A clinic is rebuilt from its files at every load, so a screen may take its time on a busy machine. */
export const expect = immediate.configure({ timeout: 45_000 });

const shared = new WeakSet<Page>();

/** From its second screen on, this page is led inside the app instead of loading the site again. */
export const shareOpenedPage = (page: Page): void => {
  shared.add(page);
};

const ELSEWHERE = '/repeatability/';

const routerOf = (): { push(address: string): void } | undefined =>
  (window as unknown as { next?: { router?: { push(address: string): void } } }).next?.router;

const ready = async (page: Page): Promise<void> => {
  await expect(page.getByRole('main').getByText('Estimates from electrical measurements.')).toBeVisible();
  await expect(page.getByRole('main').locator('[role="status"] h1')).toHaveCount(0);
};

/** Goes to a screen of the opened clinic and waits for nothing but its address. */
export const follow = async (page: Page, address: string): Promise<void> => {
  await page.evaluate(`(${routerOf.toString()})().push(${JSON.stringify(address)})`);
  await page.waitForURL((url) => url.pathname + url.search === address);
};

/** Whether the site is loaded here and its clinic is open. */
const isOpen = async (page: Page): Promise<boolean> =>
  page.url().startsWith('http') && (await page.getByRole('main').getByText('Estimates from electrical').count()) > 0;

/** Goes to a screen and waits until the clinic is open and the screen's answer stands. */
export const openScreen = async (page: Page, address: string): Promise<void> => {
  if (shared.has(page) && (await isOpen(page))) {
    // A screen of its own in between: nothing that a test left on a screen is there any more.
    if (new URL(page.url()).pathname === address.split('?')[0]) {
      await follow(page, address.startsWith(ELSEWHERE) ? '/contact/' : ELSEWHERE);
      await ready(page);
    }
    await follow(page, address);
  } else {
    await page.goto(address);
  }
  await ready(page);
};
