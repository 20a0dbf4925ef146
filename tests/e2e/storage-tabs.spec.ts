import { expect, test, type BrowserContext, type Page } from '@playwright/test';
import { startStorageSite } from './support/storage-site';
import type {} from './support/storage-page';

let site: Awaited<ReturnType<typeof startStorageSite>>;
test.beforeAll(async () => {
  site = await startStorageSite();
});
test.afterAll(async () => {
  await site.stop();
});

const openPage = async (context: BrowserContext, path = '/'): Promise<Page> => {
  const page = await context.newPage();
  await page.goto(`${site.address}${path}`);
  await page.waitForFunction(() => 'storagePage' in window);
  return page;
};

const clinic = (revision: number, version = 2) => ({
  id: 'a',
  name: 'Riverside',
  version,
  revision,
  sealed: false,
  changedAt: '2026-01-05T10:00:00Z',
  body: { files: [] as string[] },
});

const swap = (page: Page, expected: number, next: ReturnType<typeof clinic>) =>
  page.evaluate(([from, to]) => window.storagePage.store.swap(from, to), [expected, next] as const);

/** Joins the clinic and notes what is heard on the page's own log. */
const join = (page: Page) =>
  page.evaluate(async () => {
    const heard: unknown[] = [];
    const seat = await window.storagePage.tabs.join('a', (event) => heard.push(event));
    Object.assign(window, { heard, seat });
    return seat.isWriter();
  });
const heard = (page: Page) => page.evaluate(() => (window as unknown as { heard: unknown[] }).heard);
const isWriter = (page: Page) =>
  page.evaluate(() => (window as unknown as { seat: { isWriter(): boolean } }).seat.isWriter());

test('of two tabs that change the same revision one wins, and the other hears it', async ({ context }) => {
  const [one, two] = [await openPage(context), await openPage(context)];
  expect(await swap(one, 0, clinic(1))).toBe('swapped');
  const answers = await Promise.all([swap(one, 1, clinic(2)), swap(two, 1, clinic(2))]);
  expect(answers.sort()).toEqual(['changed-meanwhile', 'swapped']);
  expect(await swap(one, 2, clinic(3, 3))).toBe('swapped');
  expect(await swap(two, 3, clinic(4, 2))).toBe('newer');
});

test('one tab writes, the other follows, and writes when the first crashes', async ({ context }) => {
  const [one, two] = [await openPage(context), await openPage(context)];
  expect([await join(one), await join(two)]).toEqual([true, false]);
  await one.evaluate(() => {
    (window as unknown as { seat: { announceChanged(revision: number): void } }).seat.announceChanged(5);
  });
  await expect.poll(() => heard(two)).toEqual([{ kind: 'changed', revision: 5 }]);
  const session = await context.newCDPSession(one);
  const crashed = one.waitForEvent('crash');
  void session.send('Page.crash').catch(() => undefined);
  await crashed;
  await expect.poll(() => isWriter(two)).toBe(true);
  expect((await heard(two)).at(-1)).toEqual({ kind: 'writer' });
});

test('a tab takes the writing over; the other hears it and gets it back', async ({ context }) => {
  const [one, two] = [await openPage(context), await openPage(context)];
  expect([await join(one), await join(two)]).toEqual([true, false]);
  await two.evaluate(() => (window as unknown as { seat: { takeOver(): Promise<void> } }).seat.takeOver());
  expect(await isWriter(two)).toBe(true);
  await expect.poll(() => isWriter(one)).toBe(false);
  expect(await heard(one)).toEqual([{ kind: 'taken-over' }]);
  await two.evaluate(() => (window as unknown as { seat: { leave(): Promise<void> } }).seat.leave());
  await expect.poll(() => isWriter(one)).toBe(true);
  await expect.poll(() => heard(one)).toEqual([{ kind: 'taken-over' }, { kind: 'writer' }]);
});

const makeOld = (page: Page, manifest: unknown) =>
  page.evaluate(
    (kept) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('driftline', 1);
        request.onupgradeneeded = () => {
          request.result.createObjectStore('manifest').put(kept, 'current');
        };
        request.onsuccess = () => {
          request.result.close();
          resolve();
        };
        request.onerror = () => {
          reject(new Error('the older layout was not made'));
        };
      }),
    manifest,
  );

test('the older layout is taken over once', async ({ context }) => {
  const page = await openPage(context);
  await makeOld(page, { version: 1, revision: 3, open: 'own', own: { files: ['x'] } });
  expect(await page.evaluate(() => window.storagePage.store.read('own'))).toMatchObject({
    revision: 1,
    body: { files: ['x'] },
  });
  expect(await page.evaluate(() => window.storagePage.store.lastOpen())).toBe('own');
  await page.reload();
  await page.waitForFunction(() => 'storagePage' in window);
  expect(await page.evaluate(async () => (await window.storagePage.store.list()).length)).toBe(1);
});

test('an older layout that cannot be read stays as it is', async ({ context }) => {
  const page = await openPage(context);
  await makeOld(page, { version: 1, revision: 3 });
  const fault = () =>
    page.evaluate(() =>
      window.storagePage.store
        .list()
        .catch((error: unknown) => (error instanceof Error && 'fault' in error ? error.fault : String(error))),
    );
  expect(await fault()).toBe('damaged');
  expect(await fault()).toBe('damaged');
  const kept = await page.evaluate(
    () =>
      new Promise((resolve) => {
        const request = indexedDB.open('driftline');
        request.onsuccess = () => {
          const get = request.result.transaction('manifest').objectStore('manifest').get('current');
          get.onsuccess = () => {
            resolve([request.result.version, get.result]);
          };
        };
      }),
  );
  expect(kept).toEqual([1, { version: 1, revision: 3 }]);
});

test('a newer schema opens the storage at once, and the older tab stops writing', async ({ context }) => {
  const page = await openPage(context);
  expect(await swap(page, 0, clinic(1))).toBe('swapped');
  const newer = await openPage(context);
  await newer.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('driftline', 3);
        request.onblocked = () => {
          reject(new Error('the older tab did not let go'));
        };
        request.onsuccess = () => {
          resolve();
        };
      }),
  );
  expect(await swap(page, 1, clinic(2))).toBe('newer');
  const fault = await newer.evaluate(() =>
    window.storagePage.store
      .list()
      .catch((error: unknown) => (error instanceof Error && 'fault' in error ? error.fault : String(error))),
  );
  expect(fault).toBe('newer');
});

test('sealing, and a sealed backup, work in the page under its policy', async ({ context }) => {
  const page = await openPage(context);
  const failures: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') failures.push(message.text());
  });
  const answer = await page.evaluate(async () => {
    const { store, sha256OfBlob, sealClinic, openKey, openContent, clinicBlobs, pack, unpack } = window.storagePage;
    const blob = new Blob(['client_id\nA\n'.repeat(100_000)]);
    const name = await sha256OfBlob(blob);
    await store.putBlob(name, blob);
    const kept = {
      id: 'a',
      name: 'Riverside',
      version: 2,
      revision: 1,
      sealed: false,
      changedAt: '2026-01-05T10:00:00Z',
      body: { files: [name] },
    };
    await store.swap(0, kept);
    await sealClinic(store, { next: { ...kept, revision: 2 }, names: [name], alsoNamedElsewhere: new Set() }, 'kiosk');
    const sealed = await store.read('a');
    const key = sealed && (await openKey(sealed, 'kiosk'));
    if (!sealed || !key?.ok) throw new Error('the clinic does not open');
    const opened = await openContent(sealed, key.value);
    const file = await clinicBlobs(store, sealed, new Map([['a', key.value]])).getBlob(name);
    const names = (await store.blobs()).map((entry) => entry.name);
    if (file === undefined) throw new Error('the file does not open');
    const made = await pack(
      { madeAt: '2026-01-05T10:00:00Z', counts: {}, clinic: kept, files: [{ sha256: name, blob: file }] },
      { passphrase: 'kiosk' },
    );
    const back = await unpack(made, { passphrase: 'kiosk' });
    const restored = back.ok ? await back.value.files[0]?.open() : undefined;
    return {
      body: opened.ok && opened.value.body,
      sealedNames: names.map((entry) => entry === `${name}.a.age`),
      same: restored?.ok === true && (await sha256OfBlob(restored.value)) === name,
      body0: { files: [name] },
    };
  });
  expect(answer.body).toEqual(answer.body0);
  expect(answer).toMatchObject({ sealedNames: [true], same: true });
  expect(failures).toEqual([]);
});
