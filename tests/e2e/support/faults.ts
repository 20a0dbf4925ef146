import type { CDPSession, Page } from '@playwright/test';
import { chooseFiles, commitPlan, expectStep, type GivenTestFile } from './import-steps';
import { expect } from './open-screen';

/** Where the site is served: the origin whose storage the browser is told to limit or to clear. */
export const originOf = (page: Page): string => new URL(page.url()).origin;

export const devTools = (page: Page): Promise<CDPSession> => page.context().newCDPSession(page);

/** Ways in which the worker of the database can go under the next question it gets. */
export type WorkerEnd = 'trap' | 'uncaught error' | 'ends without a word';

/** Makes the worker of the open page's database go at its next question. */
export const breakWorker = async (page: Page, end: WorkerEnd): Promise<void> => {
  const worker = page.workers().at(-1);
  if (worker === undefined) throw new Error('the page has no worker');
  await worker.evaluate((how) => {
    const scope = globalThis as unknown as {
      onmessage: (event: MessageEvent<{ messageId: number }>) => void;
      postMessage: (answer: unknown) => void;
      close: () => void;
    };
    scope.onmessage = ({ data: { messageId: requestId } }) => {
      if (how === 'uncaught error') throw new Error('the worker broke down');
      if (how === 'ends without a word') scope.close();
      else {
        const data = { name: 'RuntimeError', message: 'memory access out of bounds', stack: '' };
        scope.postMessage({ messageId: 0, requestId, type: 'ERROR', data });
      }
    };
  }, end);
};

/** The bytes of every kept file by name. */
export const keptFiles = (page: Page): Promise<Readonly<Record<string, number>>> =>
  page.evaluate(async () => {
    const root = await navigator.storage.getDirectory();
    const folder = await root.getDirectoryHandle('blobs', { create: true });
    const kept: Record<string, number> = {};
    for await (const [name, handle] of folder.entries()) {
      if (handle.kind === 'file') kept[name] = (await handle.getFile()).size;
    }
    return kept;
  });

/** Writes other bytes over a kept file, or removes it. */
export const damageKept = (page: Page, name: string, how: 'changed' | 'removed'): Promise<void> =>
  page.evaluate(
    async ([fileName, fault]) => {
      const root = await navigator.storage.getDirectory();
      const folder = await root.getDirectoryHandle('blobs');
      if (fault === 'removed') {
        await folder.removeEntry(fileName);
        return;
      }
      const handle = await folder.getFileHandle(fileName);
      const writable = await handle.createWritable({ keepExistingData: true });
      await writable.write({ type: 'write', position: 3, data: '!' });
      await writable.close();
    },
    [name, how] as const,
  );

/** Writes over fields of the manifest of every own clinic, as a broken or a newer app would. */
export const changeManifests = (page: Page, fields: Readonly<Record<string, unknown>>): Promise<void> =>
  page.evaluate(async (change) => {
    const opened = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('driftline');
      request.onsuccess = () => {
        resolve(request.result);
      };
      request.onerror = () => {
        reject(new Error('the database did not open'));
      };
    });
    await new Promise<void>((resolve, reject) => {
      const transaction = opened.transaction('clinics', 'readwrite');
      transaction.oncomplete = () => {
        resolve();
      };
      transaction.onerror = () => {
        reject(new Error('the manifest was not changed'));
      };
      const store = transaction.objectStore('clinics');
      const all = store.getAll();
      all.onsuccess = () => {
        for (const clinic of all.result as { id: string }[]) {
          if (clinic.id !== 'demo') store.put({ ...clinic, ...change }, clinic.id);
        }
      };
    });
    opened.close();
  }, fields);

/** Opens an own clinic with these files. */
export const openOwnClinic = async (page: Page, files: readonly GivenTestFile[]): Promise<void> => {
  await chooseFiles(page, files);
  await expectStep(page, 'can be used as they are');
  await commitPlan(page);
};

/** The page that stands in the place of the clinic. */
export const expectGate = async (page: Page, title: string, timeout = 45_000): Promise<void> => {
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(title, { timeout });
  await expect(page.getByRole('alert').filter({ hasText: 'What to try' })).toBeVisible();
};
