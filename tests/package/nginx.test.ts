import { spawn, spawnSync, type ChildProcess } from 'node:child_process';
import { createServer } from 'node:http';
import { type AddressInfo } from 'node:net';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { packageSite } from '../../lib/cli/site/package-site';
import { securityHeaders } from '../../lib/cli/site/security-headers';
import { temporaryFolder } from '../site/temporary-folder';

const nginx = ['nginx', '/usr/sbin/nginx'].find((name) => spawnSync(name, ['-v']).status === 0);
if (nginx === undefined)
  console.warn('nginx is not installed: the package is not tried on it ("apt-get install nginx-light").');

const headers = securityHeaders(['sha256-abc'], ['sha256-def']);
const worker = '/duckdb-1.0.0/duckdb-browser-eh.worker.js';

const freePort = (): Promise<number> =>
  new Promise((resolve) => {
    const probe = createServer();
    probe.listen(0, '127.0.0.1', () => {
      const { port } = probe.address() as AddressInfo;
      probe.close(() => {
        resolve(port);
      });
    });
  });

const unpack = (archive: Uint8Array, folder: string): void => {
  for (const [name, bytes] of Object.entries(unzipSync(archive))) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), bytes);
  }
};

const configuration = (folder: string, top: string, port: number): string => `
pid ${folder}/nginx.pid;
daemon off;
error_log stderr;
events { worker_connections 64; }
http {
  include /etc/nginx/mime.types;
  access_log off;
  client_body_temp_path ${folder}/body;
  proxy_temp_path ${folder}/proxy;
  fastcgi_temp_path ${folder}/fastcgi;
  uwsgi_temp_path ${folder}/uwsgi;
  scgi_temp_path ${folder}/scgi;
  server {
    listen 127.0.0.1:${port};
    root ${top}/site;
    include ${top}/servers/nginx.conf;
  }
}
`;

const answering = async (address: string, child: ChildProcess): Promise<void> => {
  const deadline = performance.now() + 10_000;
  while (performance.now() < deadline && child.exitCode === null) {
    try {
      await fetch(address);
      return;
    } catch {
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  }
  throw new Error('nginx did not answer');
};

describe.skipIf(nginx === undefined)('the package on nginx', () => {
  const folder = mkdtempSync(join(tmpdir(), 'package-'));
  let address = '';
  let child: ChildProcess | undefined;
  let said = '';

  beforeAll(async () => {
    const out = temporaryFolder({
      'index.html': '<title>Driftline</title>',
      'clients/index.html': '<title>Clients</title>',
      '404.html': '<title>Nothing here</title>',
      '_next/static/a.js': 'export {};',
      [worker.slice(1)]: 'self.onmessage = null;',
      'duckdb-1.0.0/duckdb-eh.wasm': '\0asm',
    });
    unpack(packageSite(out, { version: '9.9.9', headers, licence: 'licence', notices: 'notices' }), folder);
    rmSync(out, { recursive: true });
    const port = await freePort();
    // As root, nginx gives its worker processes to another user, who must be able to read the files.
    spawnSync('chmod', ['-R', 'a+rX', folder]);
    writeFileSync(join(folder, 'nginx.conf'), configuration(folder, join(folder, 'driftline-9.9.9'), port));
    child = spawn(nginx ?? '', ['-c', join(folder, 'nginx.conf'), '-e', 'stderr'], {
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    child.stderr?.on('data', (text: Buffer) => (said += text.toString()));
    address = `http://127.0.0.1:${port}`;
    await answering(address, child).catch((cause: unknown) => {
      throw new Error(said, { cause });
    });
  });

  afterAll(async () => {
    if (child?.exitCode === null) {
      const closed = new Promise((resolve) => child?.once('close', resolve));
      child.kill('SIGTERM');
      await closed;
    }
    rmSync(folder, { recursive: true, force: true });
  });

  test.each([
    ['/', 200, 'text/html'],
    ['/clients/', 200, 'text/html'],
    ['/nowhere', 404, 'text/html'],
    ['/_next/static/a.js', 200, 'javascript'],
    [worker, 200, 'javascript'],
    ['/duckdb-1.0.0/duckdb-eh.wasm', 200, 'application/wasm'],
  ])('%s answers %i as %s, with every header once', async (path, status, type) => {
    const response = await fetch(address + path);
    expect(response.status).toBe(status);
    expect(response.headers.get('content-type')).toContain(type);
    for (const [name, value] of headers) expect(response.headers.get(name)).toBe(value);
  });

  test('a folder without the closing slash leads to its page', async () => {
    const response = await fetch(`${address}/clients`);
    expect([response.status, await response.text()]).toEqual([200, '<title>Clients</title>']);
  });

  test('only files with a version in their folder are kept for long', async () => {
    const age = async (path: string) => (await fetch(address + path)).headers.get('cache-control');
    expect(await age('/duckdb-1.0.0/duckdb-eh.wasm')).toBe('max-age=31536000');
    expect(await age('/_next/static/a.js')).toBe('max-age=31536000');
    expect(await age('/clients/')).toBe('no-cache');
  });
});
