import { expect, test } from 'vitest';
import { type BrowserSearch, findChromium } from '../../lib/cli/site/find-chromium';

const searchWhere = (existing: readonly string[], chromiumPath?: string): BrowserSearch => ({
  chromiumPath,
  exists: (path) => existing.includes(path),
  playwrightPath: () => Promise.resolve('/cache/playwright/chrome'),
  packagedPath: () => Promise.resolve('/tmp/packed-chromium'),
});

const everything = [
  '/own/chromium',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/cache/playwright/chrome',
  '/tmp/packed-chromium',
];

test.each([
  ['/own/chromium', 'CHROMIUM_PATH', everything, '/own/chromium'],
  ['/usr/bin/chromium', 'system', everything, undefined],
  ['/usr/bin/chromium-browser', 'system', everything.slice(2), undefined],
  ['/usr/bin/google-chrome', 'system', everything.slice(3), undefined],
  ['/cache/playwright/chrome', 'playwright', everything.slice(4), undefined],
  ['/tmp/packed-chromium', 'package', everything.slice(5), undefined],
] as const)('%s is taken (%s) when nothing before it is there', async (path, source, existing, chromiumPath) => {
  expect(await findChromium(searchWhere(existing, chromiumPath))).toEqual({ ok: true, value: { path, source } });
});

test('a CHROMIUM_PATH that names no file is an error, not a reason to take another browser', async () => {
  const found = await findChromium(searchWhere(everything, '/nowhere/chromium'));
  expect(found).toMatchObject({ ok: false, error: { code: 'browser-path-wrong' } });
});

test('an empty CHROMIUM_PATH is as good as none', async () => {
  expect(await findChromium(searchWhere(everything, ''))).toMatchObject({ ok: true, value: { source: 'system' } });
});

test('where there is none, the message says how to get one', async () => {
  const found = await findChromium(searchWhere([]));
  expect(found).toMatchObject({ ok: false, error: { code: 'browser-not-found' } });
  expect(found.ok ? '' : found.error.remedy).toMatch(/apt-get install .*chromium.*npx playwright install chromium/);
});
