import { createServer, type Server } from 'node:http';
import { type AddressInfo } from 'node:net';
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import engineFiles from '../../lib/cli/site/engine-files.json' with { type: 'json' };
import { listFiles } from '../../lib/cli/site/list-files';
import { type HeaderList } from '../../lib/cli/site/security-headers';
import { projectRoot, sitePaths } from '../../lib/cli/site/site-paths';
import { readSiteRecord } from '../../lib/cli/site/site-record';
import { createSiteServer } from '../../lib/cli/site/site-server';
import { temporaryFolder } from '../site/temporary-folder';

const workerPath = `/duckdb-${engineFiles.version}/duckdb-browser-eh.worker.js`;
const paths = sitePaths(projectRoot);
const { out } = paths;
const headers = (): HeaderList => readSiteRecord(paths)?.headers ?? [];
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

const listening = async (server: Server): Promise<string> => {
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
};

test.describe('a worker', () => {
  const used: Server[] = [];
  const folders: string[] = [];

  test.afterEach(() => {
    for (const server of used.splice(0)) {
      server.close();
      server.closeAllConnections();
    }
    for (const folder of folders.splice(0)) rmSync(folder, { recursive: true });
  });

  const saidByWorker = async (page: Page, headersOfWorker: HeaderList): Promise<readonly [unknown, number]> => {
    let hits = 0;
    const other = createServer((_, response) => {
      hits += 1;
      response
        .writeHead(200, { 'Access-Control-Allow-Origin': '*', 'Cross-Origin-Resource-Policy': 'cross-origin' })
        .end('seen');
    });
    const target = await listening(other);
    const folder = temporaryFolder({
      'index.html': '<!doctype html><title>probe</title>',
      'probe.js': `fetch('${target}').then(() => postMessage('reached'), () => postMessage('blocked'));`,
    });
    const forPage = createSiteServer(folder, headers());
    const forWorker = createSiteServer(folder, headersOfWorker);
    const site = createServer((request, response) => {
      (request.url === '/probe.js' ? forWorker : forPage).emit('request', request, response);
    });
    used.push(other, site);
    folders.push(folder);
    await page.goto(await listening(site));
    const said = await page.evaluate(
      () =>
        new Promise<unknown>((resolve) => {
          const worker = new Worker('/probe.js');
          worker.onmessage = (event) => {
            resolve(event.data);
          };
          worker.onerror = () => {
            resolve('not started');
          };
        }),
    );
    return [said, hits];
  };

  test('whose script comes with the headers of the site reaches no other port', async ({ page }) => {
    expect(await saidByWorker(page, headers())).toEqual(['blocked', 0]);
  });

  test('whose script came without the policy would reach one, the policy of its page notwithstanding', async ({
    page,
  }) => {
    const without = headers().filter(([name]) => name !== 'Content-Security-Policy');
    expect(without.length).toBe(headers().length - 1);
    expect(await saidByWorker(page, without)).toEqual(['reached', 1]);
  });

  test('of the engine is sent with the policy of the page', async ({ request }) => {
    const policy = Object.fromEntries(headers())['Content-Security-Policy'];
    for (const path of ['/', workerPath])
      expect((await request.get(path)).headers()['content-security-policy']).toBe(policy);
  });
});
