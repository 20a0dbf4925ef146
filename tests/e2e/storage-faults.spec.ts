import { expect, test, type BrowserContext, type Page } from '@playwright/test';
import { startStorageSite } from './support/storage-site';
import type {} from './support/storage-page';

const MEGABYTE = 1024 * 1024;

let site: Awaited<ReturnType<typeof startStorageSite>>;
const policyFailures: string[] = [];

test.beforeAll(async () => {
  site = await startStorageSite();
});
test.afterAll(async () => {
  await site.stop();
});
test.beforeEach(() => {
  policyFailures.length = 0;
});
test.afterEach(() => {
  expect(policyFailures).toEqual([]);
});

const openPage = async (context: BrowserContext, path = '/'): Promise<Page> => {
  const page = await context.newPage();
  page.on('console', (message) => {
    if (message.text().includes('Content Security Policy')) policyFailures.push(message.text());
  });
  await page.goto(`${site.address}${path}`);
  await page.waitForFunction(() => 'storagePage' in window);
  return page;
};

/** What a page keeps of a clinic, with one file of `text`. */
const keepClinic = (page: Page, text: string): Promise<string> =>
  page.evaluate(async (content) => {
    const { store, tabs, sha256OfBlob } = window.storagePage;
    const blob = new Blob([content]);
    const sha256 = await sha256OfBlob(blob);
    await tabs.whileKeeping(async () => {
      await store.putBlob(sha256, blob);
      await store.swap(0, {
        id: 'a',
        name: 'Riverside',
        version: 2,
        revision: 1,
        sealed: false,
        changedAt: '2026-01-05T10:00:00Z',
        body: { files: [sha256] },
      });
    });
    return sha256;
  }, text);

/** The fault of a call that fails, or what it gave. */
const faultOf = (page: Page, call: 'list' | 'read' | 'swap' | 'blobs' | 'put'): Promise<unknown> =>
  page.evaluate(async (name) => {
    const { store, sha256OfBlob } = window.storagePage;
    const next = {
      id: 'a',
      name: 'Riverside',
      version: 2,
      revision: 2,
      sealed: false,
      changedAt: '2026-01-05T11:00:00Z',
      body: { files: [] },
    };
    const calls = {
      list: () => store.list(),
      read: () => store.read('a'),
      swap: () => store.swap(1, next),
      blobs: () => store.blobs(),
      put: async () => store.putBlob(await sha256OfBlob(new Blob(['x'])), new Blob(['x'])),
    };
    try {
      return await calls[name]();
    } catch (error) {
      return error instanceof Error && 'fault' in error ? { fault: error.fault } : String(error);
    }
  }, call);

const readBack = (page: Page, sha256: string) =>
  page.evaluate(async (name) => {
    const { store } = window.storagePage;
    const kept = await store.read('a');
    return { revision: kept?.revision, text: await (await store.getBlob(name))?.text() };
  }, sha256);

test('a clinic is there after a reload, its file kept under its hash', async ({ context }) => {
  const page = await openPage(context);
  const sha256 = await keepClinic(page, 'client_id\nA\n');
  await page.evaluate(() => window.storagePage.store.setLastOpen('a'));
  await page.reload();
  await page.waitForFunction(() => 'storagePage' in window);
  expect(await readBack(page, sha256)).toEqual({ revision: 1, text: 'client_id\nA\n' });
  expect(await page.evaluate(() => window.storagePage.store.lastOpen())).toBe('a');
  expect(await page.evaluate(() => window.storagePage.store.getBlob('b'.repeat(64)))).toBeUndefined();
});

test('killed between file and manifest: the old clinic stands, and the file goes at the next start', async ({
  context,
}) => {
  const first = await openPage(context);
  const sha256 = await keepClinic(first, 'client_id\nA\n');
  const dying = await openPage(context);
  await dying.evaluate(async () => {
    const { store, tabs, sha256OfBlob } = window.storagePage;
    const blob = new Blob(['client_id\nB\n']);
    const name = await sha256OfBlob(blob);
    await new Promise<void>((resolve) => {
      void tabs.whileKeeping(async () => {
        await store.putBlob(name, blob);
        resolve();
        await new Promise(() => undefined);
      });
    });
  });
  const clean = () =>
    first.evaluate(
      (name) =>
        window.storagePage.removeOrphans(window.storagePage.store, window.storagePage.tabs, () =>
          Promise.resolve([name]),
        ),
      sha256,
    );
  expect(await clean()).toBeUndefined();
  expect(await first.evaluate(async () => (await window.storagePage.store.blobs()).length)).toBe(2);
  await dying.close();
  await expect.poll(clean).toBe(1);
  expect(await first.evaluate(async () => (await window.storagePage.store.blobs()).length)).toBe(1);
  expect(await readBack(first, sha256)).toEqual({ revision: 1, text: 'client_id\nA\n' });
});

test('the tab dies inside the writing of a file: no torn file is ever read', async ({ context }) => {
  const first = await openPage(context);
  const sha256 = await keepClinic(first, 'client_id\nA\n');
  const dying = await openPage(context);
  const session = await context.newCDPSession(dying);
  const name = await dying.evaluate(async (bytes) => {
    const { store, sha256OfBlob } = window.storagePage;
    const blob = new Blob([new Uint8Array(bytes)]);
    const found = await sha256OfBlob(blob);
    let taken = 0;
    await new Promise<void>((resolve) => {
      const slow = Object.assign(blob, {
        slice: (from?: number, to?: number) => {
          taken += 1;
          if (taken < 5) return Blob.prototype.slice.call(blob, from, to);
          resolve();
          return { arrayBuffer: () => new Promise(() => undefined) };
        },
      });
      void store.putBlob(found, slow);
    });
    return found;
  }, 12 * MEGABYTE);
  const crashed = dying.waitForEvent('crash');
  void session.send('Page.crash').catch(() => undefined);
  await crashed;
  expect(await first.evaluate((blob) => window.storagePage.store.getBlob(blob), name)).toBeUndefined();
  expect(await readBack(first, sha256)).toEqual({ revision: 1, text: 'client_id\nA\n' });
  const again = await first.evaluate(
    async ([blob, bytes]) => {
      await window.storagePage.store.putBlob(blob, new Blob([new Uint8Array(bytes)]));
      return (await window.storagePage.store.getBlob(blob))?.size;
    },
    [name, 12 * MEGABYTE] as const,
  );
  expect(again).toBe(12 * MEGABYTE);
});

test('a file that was cut or changed on the disk is not given, and can be kept again', async ({ context }) => {
  const page = await openPage(context);
  const text = 'client_id,weight_kg\nA,70\n';
  const sha256 = await keepClinic(page, text);
  const spoil = (change: string) =>
    page.evaluate(
      async ([name, content]) => {
        const root = await navigator.storage.getDirectory();
        const handle = await (await root.getDirectoryHandle('blobs')).getFileHandle(name);
        const writable = await handle.createWritable();
        await writable.write(content);
        await writable.close();
      },
      [sha256, change] as const,
    );
  for (const change of [text.slice(0, -1), text.replace('70', '71'), '']) {
    await spoil(change);
    expect(await readBack(page, sha256)).toEqual({ revision: 1, text: undefined });
    await page.evaluate(([name, content]) => window.storagePage.store.putBlob(name, new Blob([content])), [
      sha256,
      text,
    ] as const);
    expect(await readBack(page, sha256)).toEqual({ revision: 1, text });
  }
});

test('a file that changed since it was read is refused, and leaves nothing', async ({ context }) => {
  const page = await openPage(context);
  const result = await page.evaluate(async () => {
    const { store, sha256OfBlob } = window.storagePage;
    const name = await sha256OfBlob(new Blob(['as it was read']));
    const error = await store.putBlob(name, new Blob(['as it is now'])).catch((reason: unknown) => reason);
    const stop = new AbortController();
    stop.abort(new Error('stopped'));
    const stopped = await store
      .putBlob(name, new Blob(['as it was read']), stop.signal)
      .catch((reason: unknown) => reason);
    return {
      fault: error instanceof Error && 'fault' in error ? error.fault : error,
      stopped: stopped instanceof Error ? stopped.message : stopped,
      left: (await store.blobs()).length,
    };
  });
  expect(result).toEqual({ fault: 'changed', stopped: 'stopped', left: 0 });
});

test('a full disk is named and leaves the old state whole, at the file and at the manifest', async ({ context }) => {
  const page = await openPage(context);
  const session = await context.newCDPSession(page);
  // The browser remembers for a while how much room the database had: the quota is set before the first write.
  await session.send('Storage.overrideQuotaForOrigin', { origin: site.address, quotaSize: 3 * MEGABYTE });
  const sha256 = await keepClinic(page, 'client_id\nA\n');
  const full = await page.evaluate(async (bytes) => {
    const { store, sha256OfBlob } = window.storagePage;
    const fault = (error: unknown) => (error instanceof Error && 'fault' in error ? error.fault : String(error));
    const blob = new Blob([crypto.getRandomValues(new Uint8Array(65536)), new Uint8Array(bytes)]);
    const kept = await store.read('a');
    const body = Array.from({ length: 40 }, () => Array.from(crypto.getRandomValues(new Uint32Array(16384))).join(' '));
    return {
      file: await store.putBlob(await sha256OfBlob(blob), blob).then(() => 'kept', fault),
      manifest: await store
        .swap(1, { ...kept, id: 'a', name: 'x', version: 2, revision: 2, sealed: false, changedAt: '', body })
        .catch(fault),
      blobs: (await store.blobs()).length,
      quota: (await store.room()).quotaBytes,
    };
  }, 8 * MEGABYTE);
  expect(full).toMatchObject({ file: 'full', manifest: 'full', blobs: 1 });
  expect(await readBack(page, sha256)).toEqual({ revision: 1, text: 'client_id\nA\n' });
  await session.send('Storage.overrideQuotaForOrigin', { origin: site.address });
  expect(await faultOf(page, 'swap')).toBe('swapped');
});

test('a page that may keep nothing hears it, and keeps nothing in memory instead', async ({ context }) => {
  const page = await openPage(context, '/sandboxed');
  for (const call of ['list', 'read', 'swap', 'blobs', 'put'] as const)
    expect(await faultOf(page, call)).toEqual({ fault: 'denied' });
});

test('storage cleared while the page is open: it says so, and does not start an empty clinic', async ({ context }) => {
  const page = await openPage(context);
  await keepClinic(page, 'client_id\nA\n');
  await page.evaluate(() => window.storagePage.markVisit(window.storagePage.database, '2026-01-05'));
  const session = await context.newCDPSession(page);
  await session.send('Storage.clearDataForOrigin', { origin: site.address, storageTypes: 'indexeddb,file_systems' });
  expect(await faultOf(page, 'read')).toEqual({ fault: 'cleared' });
  expect(await faultOf(page, 'swap')).toEqual({ fault: 'cleared' });
  expect(await faultOf(page, 'list')).toEqual({ fault: 'cleared' });
  const later = await openPage(context);
  const signs = await later.evaluate(async () => {
    const { database, store, lookAtStart, keepingSigns } = window.storagePage;
    return keepingSigns(await lookAtStart(database, store));
  });
  expect(signs).toMatchObject({ storage: 'data-cleared', lastVisit: '2026-01-05' });
});
