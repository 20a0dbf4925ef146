import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { test as onOwnPage, type Page } from '@playwright/test';
import type { AxeResults } from 'axe-core';
import { test as onDemo } from './support/open-clinic';
import { expect, follow, openScreen } from './support/open-screen';

onOwnPage.describe.configure({ timeout: 180_000 });

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const ROUTES = [
  '/',
  '/contact/',
  '/clients/',
  '/client/?c=23',
  '/programs/',
  '/vectors/',
  '/indices/',
  '/repeatability/',
  '/comparability/',
  '/import/',
  '/methods/',
  '/methods/?entry=ffm-kyle-2001',
  '/settings/',
  '/visit-sheet/?when=next-week',
  '/checklist/?show=both',
] as const;

const EVERY_RULE = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
/** What a theme can change. */
const RULES_OF_COLOUR = ['color-contrast', 'link-in-text-block'];

/** Points and rows are drawn by one component: the first twenty stand for hundreds. */
const ALIKE = ['svg [data-key]:nth-child(n + 20)', 'tbody tr:nth-child(n + 20)'];

const violationsOf = async (page: Page, runOnly: readonly string[]): Promise<readonly string[]> => {
  await page.evaluate(axe);
  const results = await page.evaluate(
    ([chosen, alike]) =>
      (window as unknown as { axe: { run(context: object, options: object): Promise<AxeResults> } }).axe.run(
        { exclude: alike },
        { runOnly: chosen },
      ),
    [[...runOnly], [...ALIKE]] as const,
  );
  expect(results.passes.length).toBeGreaterThan(runOnly === EVERY_RULE ? 10 : 0);
  return results.violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
};

interface Heard {
  /** Addresses of other origins that the page asked for. */
  readonly elsewhere: string[];
  /** What it printed, errors and what the policy forbade included. */
  readonly said: string[];
}

const tellPolicy = (): void => {
  addEventListener('securitypolicyviolation', (event) => {
    console.error(`policy ${event.violatedDirective} ${event.blockedURI}`);
  });
};

/** Listens to a page from now on, until the returned function is called. */
const listenTo = (page: Page, origin: string): { readonly heard: Heard; readonly end: () => void } => {
  const heard: Heard = { elsewhere: [], said: [] };
  const onRequest = (request: { url(): string }): void => {
    const url = request.url();
    if (!/^(data|blob):/.test(url) && new URL(url).origin !== origin) heard.elsewhere.push(url);
  };
  const onConsole = (message: { text(): string }): void => void heard.said.push(message.text());
  const onError = (error: Error): void => void heard.said.push(String(error));
  page.on('request', onRequest);
  page.on('console', onConsole);
  page.on('pageerror', onError);
  const end = (): void => {
    page.off('request', onRequest);
    page.off('console', onConsole);
    page.off('pageerror', onError);
  };
  return { heard, end };
};

/** Whether a shared page already tells of the policy: it does so until it is loaded again. */
const telling = new WeakSet<Page>();

// The first screen is loaded as everybody loads it; the others are reached inside the app, by the page that tests share.
for (const route of ROUTES) {
  const test = route === '/' ? onOwnPage : onDemo;
  test(`${route} asks no other address, breaks no policy, logs nothing, names no one in title or address, passes axe in both themes and fits a narrow window`, async ({
    page,
    baseURL,
  }) => {
    if (route === '/') await page.addInitScript(tellPolicy);
    const { heard, end } = listenTo(page, new URL(baseURL ?? '').origin);
    await page.emulateMedia({ reducedMotion: 'reduce', colorScheme: 'light' });
    await openScreen(page, route);
    if (route !== '/' && !telling.has(page)) {
      await page.evaluate(`(${tellPolicy.toString()})()`);
      telling.add(page);
    }
    await page.waitForLoadState('networkidle');
    for (const details of await page.locator(route === '/' ? 'summary' : 'main summary').all())
      if (await details.isVisible()) await details.click();
    expect(heard).toEqual({ elsewhere: [], said: [] });
    expect(`${await page.title()} ${page.url()}`).not.toMatch(/OM-\d{4}/);
    await expect(page.getByText('Oremoor is an invented clinic')).toBeVisible();
    expect(await violationsOf(page, EVERY_RULE), 'light').toEqual([]);
    await page.emulateMedia({ reducedMotion: 'reduce', colorScheme: 'dark' });
    expect(await violationsOf(page, RULES_OF_COLOUR), 'dark').toEqual([]);
    await page.setViewportSize({ width: 390, height: 844 });
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow).toBeLessThanOrEqual(0);
    end();
  });
}

onDemo('screens that are left before their answer came print nothing', async ({ page, baseURL }) => {
  await openScreen(page, '/contact/');
  const { heard, end } = listenTo(page, new URL(baseURL ?? '').origin);
  let leftEarly = 0;
  for (const route of ['/comparability/', '/vectors/', '/programs/', '/methods/', '/comparability/', '/indices/']) {
    await follow(page, route);
    const waiting = page.getByRole('main').getByRole('status');
    await waiting
      .first()
      .waitFor({ timeout: 1_000 })
      .then(
        () => (leftEarly += 1),
        () => undefined,
      );
  }
  await openScreen(page, '/clients/');
  end();
  expect(leftEarly, 'screens left while they were calculating').toBeGreaterThan(1);
  expect(heard).toEqual({ elsewhere: [], said: [] });
});
