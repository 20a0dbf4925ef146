import { expect, test } from '@playwright/test';

const ROUTES = [
  '/',
  '/contact/',
  '/programs/',
  '/vectors/',
  '/indices/',
  '/clients/',
  '/client/?c=23',
  '/repeatability/',
  '/import/',
] as const;

for (const route of ROUTES) {
  test(`${route} asks no other address, breaks no policy, logs nothing and names no one in title or address`, async ({
    page,
    baseURL,
  }) => {
    const origin = new URL(baseURL ?? '').origin;
    const elsewhere: string[] = [];
    const said: string[] = [];
    page.on('request', (request) => {
      const url = request.url();
      if (!/^(data|blob):/.test(url) && new URL(url).origin !== origin) elsewhere.push(url);
    });
    page.on('console', (message) => said.push(message.text()));
    page.on('pageerror', (error) => said.push(String(error)));
    await page.addInitScript(() => {
      addEventListener('securitypolicyviolation', (event) => {
        console.error(`policy ${event.violatedDirective} ${event.blockedURI}`);
      });
    });
    await page.goto(route);
    await expect(page.getByRole('heading', { level: 1 })).not.toHaveText(/Opening the clinic|could not be opened/, {
      timeout: 30_000,
    });
    await page.waitForLoadState('networkidle');
    for (const details of await page.locator('summary').all()) if (await details.isVisible()) await details.click();
    expect(elsewhere).toEqual([]);
    expect(said).toEqual([]);
    expect(`${await page.title()} ${page.url()}`).not.toMatch(/OM-\d{4}/);
    await expect(page.getByText('Oremoor is an invented clinic')).toBeVisible();
  });
}
