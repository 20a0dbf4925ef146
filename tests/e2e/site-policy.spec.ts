import { createServer, type Server } from 'node:http';
import { type AddressInfo } from 'node:net';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import engineFiles from '../../lib/cli/site/engine-files.json' with { type: 'json' };
import { listFiles } from '../../lib/cli/site/list-files';
import { projectRoot, sitePaths } from '../../lib/cli/site/site-paths';

const workerPath = `/duckdb-${engineFiles.version}/duckdb-browser-eh.worker.js`;
const { out } = sitePaths(projectRoot);
const pages = (): readonly string[] => listFiles(out).filter((path) => path.endsWith('.html'));

test('the home page loads isolated, without a violation of the policy and without a request to another origin', async ({
  page,
  baseURL,
}) => {
  const violations: string[] = [];
  const elsewhere: string[] = [];
  page.on('console', (message) => {
    if (/Content Security Policy/i.test(message.text())) violations.push(message.text());
  });
  page.on('request', (request) => {
    if (!request.url().startsWith(`${baseURL ?? ''}/`) && !/^(data|blob):/.test(request.url()))
      elsewhere.push(request.url());
  });
  await page.goto('/', { waitUntil: 'networkidle' });
  await expect(page).toHaveTitle(/Driftline/);
  expect(await page.evaluate(() => crossOriginIsolated)).toBe(true);
  expect(violations).toEqual([]);
  expect(elsewhere).toEqual([]);
});

test('no exported page holds a style attribute or an inline handler, which the policy would block', () => {
  expect(pages().length).toBeGreaterThan(0);
  const blocked = pages().filter((path) => /<[^>]+\s(style|on[a-z]+)=/i.test(readFileSync(join(out, path), 'utf8')));
  expect(blocked).toEqual([]);
});

test('no exported page holds a style element', () => {
  expect(pages().filter((path) => /<style\b/i.test(readFileSync(join(out, path), 'utf8')))).toEqual([]);
});

test.describe('a worker', () => {
  let other: Server;
  let hits = 0;

  test.beforeAll(async () => {
    other = createServer((_, response) => {
      hits += 1;
      response
        .writeHead(200, { 'Access-Control-Allow-Origin': '*', 'Cross-Origin-Resource-Policy': 'cross-origin' })
        .end('seen');
    });
    await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
  });

  test.beforeEach(() => {
    hits = 0;
  });

  test.afterAll(() => {
    other.close();
  });

  for (const [name, keepsPolicy, expected] of [
    ['with the headers that its script is served with reaches no other port', true, 0],
    ['without its policy would reach another port, so the test above can fail', false, 1],
  ] as const)
    test(name, async ({ page, request }) => {
      const served = (await request.get(workerPath)).headers();
      const { 'content-security-policy': policy, ...others } = served;
      expect(policy).toContain("connect-src 'self'");
      const target = `http://127.0.0.1:${(other.address() as AddressInfo).port}/`;
      await page.route('**/probe.js', (route) =>
        route.fulfill({
          contentType: 'text/javascript',
          headers: {
            'cross-origin-embedder-policy': others['cross-origin-embedder-policy'] ?? '',
            'cross-origin-resource-policy': others['cross-origin-resource-policy'] ?? '',
            ...(keepsPolicy && policy !== undefined ? { 'content-security-policy': policy } : {}),
          },
          body: `fetch(${JSON.stringify(target)}).then(() => postMessage('reached'), () => postMessage('blocked'));`,
        }),
      );
      await page.goto('/');
      const said = await page.evaluate(
        () =>
          new Promise<unknown>((resolve, reject) => {
            const worker = new Worker('/probe.js');
            worker.onmessage = (event) => {
              resolve(event.data);
            };
            worker.onerror = () => {
              reject(new Error('the worker did not start'));
            };
          }),
      );
      expect(said).toBe(keepsPolicy ? 'blocked' : 'reached');
      expect(hits).toBe(expected);
    });
});
