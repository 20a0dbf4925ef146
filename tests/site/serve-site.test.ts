import { rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { type AddressInfo } from 'node:net';
import { afterAll, afterEach, describe, expect, test } from 'vitest';
import { readPort } from '../../lib/cli/site/read-port';
import { serveSite } from '../../lib/cli/site/serve-site';
import { temporaryFolder } from './temporary-folder';

const folder = temporaryFolder({ 'index.html': '<title>home</title>' });
const open: Server[] = [];

const occupied = (): Promise<number> =>
  new Promise((resolve) => {
    const server = createServer();
    open.push(server);
    server.listen(0, '127.0.0.1', () => {
      resolve((server.address() as AddressInfo).port);
    });
  });

const free = async (): Promise<number> => {
  const port = await occupied();
  await new Promise((resolve) => open.pop()?.close(resolve));
  return port;
};

afterEach(() => {
  for (const server of open.splice(0)) server.close();
});

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

describe('serving', () => {
  test('happens on the port that was asked for, on this machine only', async () => {
    const port = await free();
    const site = await serveSite(folder, [], port);
    if (!site.ok) throw new Error(site.error.message);
    open.push(site.value.server);
    expect(site.value.address).toBe(`http://127.0.0.1:${port}/`);
    expect(site.value.server.address()).toMatchObject({ address: '127.0.0.1', port });
    expect(await (await fetch(site.value.address)).text()).toBe('<title>home</title>');
    expect(site.value.notice).toContain('3000');
  });

  test('on a port that is taken fails with a message that names the port and the way out', async () => {
    const port = await occupied();
    const site = await serveSite(folder, [], port);
    expect(site).toMatchObject({ ok: false, error: { code: 'port-taken' } });
    expect(site.ok ? '' : site.error.message).toContain(`Port ${port} is taken`);
    expect(site.ok ? '' : site.error.remedy).toContain(`PORT=${port + 1} npm start`);
  });
});

describe('the variable PORT', () => {
  test.each([undefined, ''])('%j means 3000', (text) => {
    expect(readPort(text)).toEqual({ ok: true, value: 3000 });
  });

  test.each([
    ['1', 1],
    ['8080', 8080],
    ['65535', 65_535],
  ])('%s is honoured', (text, port) => {
    expect(readPort(text)).toEqual({ ok: true, value: port });
  });

  test.each(['0', '65536', '-1', '3e3', '80.5', 'http', ' 80'])('%j is refused', (text) => {
    expect(readPort(text)).toMatchObject({ ok: false, error: { code: 'port-not-a-number' } });
  });
});
