import { test as base, type Page } from '@playwright/test';
import { shareOpenedPage } from './open-screen';

/**
 * Tests that only look at the demo clinic share one page in each worker: the clinic is opened once, later screens are
 * reached inside the app. A test that changes a clinic, a preference or a browser's storage takes a page of its own.
 */
export const test = base.extend<object, { readonly clinicPage: Page }>({
  clinicPage: [
    async ({ browser }, use, { project }) => {
      const { baseURL, locale, timezoneId, viewport } = project.use;
      const context = await browser.newContext({
        ...(baseURL === undefined ? {} : { baseURL }),
        ...(locale === undefined ? {} : { locale }),
        ...(timezoneId === undefined ? {} : { timezoneId }),
        ...(viewport === undefined ? {} : { viewport }),
      });
      const page = await context.newPage();
      shareOpenedPage(page);
      await use(page);
      await context.close();
    },
    { scope: 'worker' },
  ],
  page: async ({ clinicPage, viewport }, use) => {
    await use(clinicPage);
    await clinicPage.keyboard.press('Escape');
    await clinicPage.emulateMedia({ colorScheme: null, reducedMotion: null, media: null });
    if (viewport !== null) await clinicPage.setViewportSize(viewport);
  },
});
