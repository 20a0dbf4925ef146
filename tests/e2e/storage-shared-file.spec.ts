import { expect, test } from '@playwright/test';
import { startStorageSite } from './support/storage-site';
import type {} from './support/storage-page';

let site: Awaited<ReturnType<typeof startStorageSite>>;
test.beforeAll(async () => {
  site = await startStorageSite();
});
test.afterAll(async () => {
  await site.stop();
});

test('a workspace file is saved where a person says, remembered, and read again', async ({ page }) => {
  await page.goto(site.address);
  await page.waitForFunction(() => 'storagePage' in window);
  // A test cannot answer the browser's own file dialog: a file of the page's private file system stands for the chosen one.
  await page.evaluate(async () => {
    const root = await navigator.storage.getDirectory();
    const handle = await root.getFileHandle('riverside.driftline', { create: true });
    Object.assign(window, {
      showSaveFilePicker: () => Promise.resolve(handle),
      showOpenFilePicker: () => Promise.reject(new DOMException('closed', 'AbortError')),
    });
  });
  const answers = await page.evaluate(async () => {
    const { shared } = window.storagePage;
    const before = await shared.open('a', false);
    const saved = await shared.save('a', new Blob(['first']), 'riverside.driftline');
    const again = await shared.save('a', new Blob(['second']), null);
    const read = await shared.open('a', false);
    const text = read.ok ? await read.value.text() : read.error;
    const dismissed = await shared.open('a', true);
    const name = await shared.remembered('a');
    const root = await navigator.storage.getDirectory();
    await root.removeEntry('riverside.driftline');
    const moved = await shared.open('a', false);
    await shared.forget('a');
    return {
      before,
      saved,
      again,
      text,
      dismissed,
      name,
      moved,
      forgotten: await shared.remembered('a'),
    };
  });
  expect(answers).toEqual({
    before: { ok: false, error: 'gone' },
    saved: { ok: true, value: 'riverside.driftline' },
    again: { ok: true, value: 'riverside.driftline' },
    text: 'second',
    dismissed: { ok: false, error: 'dismissed' },
    name: 'riverside.driftline',
    moved: { ok: false, error: 'gone' },
    forgotten: undefined,
  });
});

test('a browser without file dialogs is named as such', async ({ page }) => {
  await page.goto(site.address);
  await page.waitForFunction(() => 'storagePage' in window);
  const answer = await page.evaluate(async () => {
    Reflect.deleteProperty(window, 'showOpenFilePicker');
    return window.storagePage.shared.open('a', true);
  });
  expect(answer).toEqual({ ok: false, error: 'unsupported' });
});
