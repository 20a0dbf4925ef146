import { rmSync, symlinkSync, utimesSync } from 'node:fs';
import { request, type IncomingHttpHeaders, type Server } from 'node:http';
import { type AddressInfo } from 'node:net';
import { basename, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { securityHeaders } from '../../lib/cli/site/security-headers';
import { createSiteServer } from '../../lib/cli/site/site-server';
import { temporaryFolder } from './temporary-folder';

interface Answer {
  readonly status: number | undefined;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

const headers = securityHeaders(['sha256-abc'], []);
const outside = temporaryFolder({ 'secret.txt': 'not for the site' });
const folder = temporaryFolder({
  'index.html': '<title>home</title>',
  '404.html': '<title>nothing here</title>',
  'clients/index.html': '<title>clients</title>',
  'empty/note.txt': 'a folder without a page',
  '_next/static/chunk.js': 'export {};',
  'duckdb-1.0.0/duckdb-browser-eh.worker.js': 'self.onmessage = null;',
  'duckdb-1.0.0/duckdb-eh.wasm': '\0asm',
  'demo/visits.csv': 'client_id\n',
  'icon.svg': '<svg/>',
});
symlinkSync(join(outside, 'secret.txt'), join(folder, 'link.txt'));
const server: Server = createSiteServer(folder, headers);

// node:http sends the path as it is given; fetch would tidy ".." away before the server sees it.
const ask = (path: string, method = 'GET', sent: Readonly<Record<string, string>> = {}): Promise<Answer> =>
  new Promise((resolve, reject) => {
    const { port } = server.address() as AddressInfo;
    request({ host: '127.0.0.1', port, path, method, headers: sent, agent: false }, (response) => {
      let body = '';
      response.setEncoding('utf8');
      response.on('data', (part: string) => (body += part));
      response.on('end', () => {
        resolve({ status: response.statusCode, headers: response.headers, body });
      });
    })
      .on('error', reject)
      .end();
  });

beforeAll(() => new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve)));

afterAll(() => {
  server.close();
  for (const used of [folder, outside]) rmSync(used, { recursive: true, force: true });
});

describe('every response carries every header', () => {
  test.each([
    ['a page', '/', 'GET', 200],
    ['a page below', '/clients/', 'GET', 200],
    ["a worker's script", '/duckdb-1.0.0/duckdb-browser-eh.worker.js', 'GET', 200],
    ['a module of WebAssembly', '/duckdb-1.0.0/duckdb-eh.wasm', 'GET', 200],
    ['only the head', '/', 'HEAD', 200],
    ['a redirect', '/clients', 'GET', 308],
    ['a malformed address', '/%E0%A4%A', 'GET', 400],
    ['nothing', '/nowhere', 'GET', 404],
    ['a refused method', '/', 'POST', 405],
  ])('%s: %s', async (_, path, method, status) => {
    const answer = await ask(path, method);
    expect(answer.status).toBe(status);
    for (const [name, value] of headers) expect(answer.headers[name.toLowerCase()]).toBe(value);
  });

  test('an unchanged file', async () => {
    const first = await ask('/icon.svg');
    const again = await ask('/icon.svg', 'GET', { 'If-None-Match': first.headers.etag ?? '' });
    expect(again).toMatchObject({ status: 304, body: '' });
    for (const [name, value] of headers) expect(again.headers[name.toLowerCase()]).toBe(value);
  });
});

describe('what is sent', () => {
  test.each([
    ['/', 'text/html; charset=utf-8'],
    ['/_next/static/chunk.js', 'text/javascript; charset=utf-8'],
    ['/duckdb-1.0.0/duckdb-eh.wasm', 'application/wasm'],
    ['/demo/visits.csv', 'text/csv; charset=utf-8'],
    ['/icon.svg', 'image/svg+xml'],
  ])('%s is %s', async (path, type) => {
    expect((await ask(path)).headers['content-type']).toBe(type);
  });

  test('a page by its query keeps its content', async () => {
    expect((await ask('/clients/?program=a%2Fb')).body).toContain('clients');
  });

  test('a folder without the closing slash leads to the one with it, query kept', async () => {
    expect((await ask('/clients?from=2026-01-01&x=?')).headers.location).toBe('/clients/?from=2026-01-01&x=?');
  });

  test('a doubled slash leads to no other host', async () => {
    expect((await ask('//clients')).headers.location).toBe('/clients/');
  });

  test('an address with nothing behind it shows the 404 page', async () => {
    for (const path of ['/nowhere', '/empty/', '/index.html/', '/clients/x.js'])
      expect(await ask(path)).toMatchObject({ status: 404, body: '<title>nothing here</title>' });
  });

  test('only the head is sent to HEAD', async () => {
    const answer = await ask('/clients/', 'HEAD');
    expect(answer.body).toBe('');
    expect(answer.headers['content-length']).toBe(String('<title>clients</title>'.length));
  });

  test('files with a version in their folder are kept for good, all others are asked for again', async () => {
    for (const path of ['/_next/static/chunk.js', '/duckdb-1.0.0/duckdb-eh.wasm'])
      expect((await ask(path)).headers['cache-control']).toBe('public, max-age=31536000, immutable');
    for (const path of ['/', '/icon.svg', '/demo/visits.csv', '/nowhere'])
      expect((await ask(path)).headers['cache-control']).toBe('no-cache');
  });

  test('a changed file is sent anew', async () => {
    const first = await ask('/demo/visits.csv');
    utimesSync(join(folder, 'demo/visits.csv'), 1, 1);
    const again = await ask('/demo/visits.csv', 'GET', { 'If-None-Match': first.headers.etag ?? '' });
    expect(again).toMatchObject({ status: 200, body: 'client_id\n' });
  });
});

describe('nothing outside the folder is sent', () => {
  test.each([
    `/../${basename(outside)}/secret.txt`,
    `/clients/../../${basename(outside)}/secret.txt`,
    `/..%2F${basename(outside)}%2Fsecret.txt`,
    `/%2e%2e/${basename(outside)}/secret.txt`,
    `/..%5C${basename(outside)}%5Csecret.txt`,
    '/link.txt',
    '/%00/etc/passwd',
    '/../../../../etc/passwd',
  ])('%s', async (path) => {
    const answer = await ask(path);
    expect([400, 404]).toContain(answer.status);
    expect(answer.body).not.toMatch(/not for the site|root:/);
  });
});
