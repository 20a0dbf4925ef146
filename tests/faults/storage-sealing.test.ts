import { describe, expect, test } from 'vitest';
import type { ClinicStore, StoredClinic } from '../../lib/storage/clinic-store';
import { memoryStore } from '../../lib/storage/memory/memory-store';
import { createTabBus } from '../../lib/storage/memory/memory-tabs';
import { removeOrphans } from '../../lib/storage/remove-orphans';
import { changePassphrase, sealClinic, unsealClinic } from '../../lib/storage/seal-clinic';
import { openContent, openKey } from '../../lib/storage/sealed-body';
import { clinicBlobs, keptNames, sealedStore } from '../../lib/storage/sealed-store';
import { faultyStore } from '../storage/support/faulty-store';
import { errorOf, QUICK, sampleClinic, textFile } from '../storage/support/sample-clinic';

const TEXTS = ['client_id\nA\n', 'client_id\nB\n'];

const started = async () => {
  const store = memoryStore();
  const files = await Promise.all(TEXTS.map(textFile));
  for (const { sha256, blob } of files) await store.putBlob(sha256, blob);
  await store.swap(0, sampleClinic());
  return { store, names: files.map(({ sha256 }) => sha256) };
};

const next = (revision: number): StoredClinic => sampleClinic({ revision });

/** What a later start finds: the way the clinic is kept, its body and its files, opened with one of the passphrases. */
const find = async (store: ClinicStore, names: readonly string[], passphrases: readonly string[]) => {
  const kept = await store.read('clinic-a');
  if (kept === undefined) throw new Error('the clinic is gone');
  if (!kept.sealed) {
    const texts = await Promise.all(names.map(async (name) => (await store.getBlob(name))?.text()));
    return { sealed: false, body: kept.body, texts, by: '' };
  }
  for (const by of passphrases) {
    const key = await openKey(kept, by);
    if (!key.ok) continue;
    const opened = await openContent(kept, key.value);
    if (!opened.ok) throw new Error('the sealed body does not open');
    const blobs = clinicBlobs(store, kept, new Map([[kept.id, key.value]]));
    const texts = await Promise.all(names.map(async (name) => (await blobs.getBlob(name))?.text()));
    return { sealed: true, body: opened.value.body, texts, by };
  }
  throw new Error('no passphrase opens the clinic');
};

/** Dies at every write, before and after it, until the act runs through; gives what was found each time. */
const atEveryCrash = async (
  act: (store: ClinicStore, names: readonly string[]) => Promise<unknown>,
  prepare: (store: ClinicStore, names: readonly string[]) => Promise<void>,
  passphrases: readonly string[],
) => {
  const found: Awaited<ReturnType<typeof find>>[] = [];
  const leftOver: (readonly string[])[] = [];
  for (let at = 0; ; at += 1) {
    let ranThrough = false;
    for (const when of ['before', 'after'] as const) {
      const { store, names } = await started();
      await prepare(store, names);
      const faulty = faultyStore(store, { at, when, fault: 'failed' });
      ranThrough = (await errorOf(act(faulty.store, names))) === undefined;
      found.push(await find(store, names, passphrases));
      const header = (await store.list())[0];
      await removeOrphans(store, createTabBus().open().tabs, () =>
        Promise.resolve(header === undefined ? null : keptNames(header, names)),
      );
      leftOver.push((await store.blobs()).map(({ name }) => name));
      found.push(await find(store, names, passphrases));
    }
    if (ranThrough) return { found, leftOver, crashes: at };
  }
};

const whole = (found: readonly { readonly body: unknown; readonly texts: readonly (string | undefined)[] }[]) => {
  for (const { body, texts } of found) {
    expect(body).toEqual(sampleClinic().body);
    expect(texts).toEqual(TEXTS);
  }
};

describe('a crash at any write leaves a clinic that opens whole', () => {
  test('while it is being sealed, and nothing of a sealed clinic stays in the open', async () => {
    const { found, leftOver, crashes } = await atEveryCrash(
      (store, names) =>
        sealClinic(store, { next: next(2), names, alsoNamedElsewhere: new Set() }, 'kiosk', { workFactor: QUICK }),
      () => Promise.resolve(),
      ['kiosk'],
    );
    whole(found);
    expect(crashes).toBe(5);
    expect(new Set(found.map(({ sealed }) => sealed))).toEqual(new Set([false, true]));
    for (const [place, names] of leftOver.entries()) {
      const { sealed } = found[place * 2 + 1] ?? {};
      expect(names.length).toBe(2);
      for (const name of names) expect(name.endsWith('.age')).toBe(sealed);
    }
  });

  test('while its seal is taken away', async () => {
    const prepare = async (store: ClinicStore, names: readonly string[]) => {
      await sealClinic(store, { next: next(2), names, alsoNamedElsewhere: new Set() }, 'kiosk', { workFactor: QUICK });
    };
    const { found, leftOver, crashes } = await atEveryCrash(
      async (store, names) => {
        const kept = await store.read('clinic-a');
        const key = kept && (await openKey(kept, 'kiosk'));
        if (!key?.ok) throw new Error('not sealed');
        await unsealClinic(store, { next: next(3), names, alsoNamedElsewhere: new Set() }, key.value);
      },
      prepare,
      ['kiosk'],
    );
    whole(found);
    expect(crashes).toBe(5);
    expect(leftOver.every((names) => names.length === 2)).toBe(true);
  });

  test('while its passphrase changes: one of the two opens it, never none', async () => {
    const { found } = await atEveryCrash(
      (store) =>
        changePassphrase(store, next(3), { old: 'kiosk', new: 'harbour' }, { workFactor: QUICK }).then((answer) => {
          if (!answer.ok) throw new Error(answer.error);
        }),
      async (store, names) => {
        await sealClinic(store, { next: next(2), names, alsoNamedElsewhere: new Set() }, 'kiosk', {
          workFactor: QUICK,
        });
      },
      ['kiosk', 'harbour'],
    );
    whole(found);
    expect(found.map(({ by }) => by)).toEqual([
      'kiosk',
      'kiosk',
      'harbour',
      'harbour',
      'harbour',
      'harbour',
      'harbour',
      'harbour',
    ]);
  });
});

describe('a sealed clinic', () => {
  test('keeps what another clinic still needs in the open', async () => {
    const { store, names } = await started();
    const [first = ''] = names;
    await sealClinic(store, { next: next(2), names, alsoNamedElsewhere: new Set([first]) }, 'kiosk', {
      workFactor: QUICK,
    });
    expect((await store.blobs()).filter(({ name }) => !name.endsWith('.age')).map(({ name }) => name)).toEqual([first]);
  });

  test('is changed through its key, and by nobody without it', async () => {
    const { store, names } = await started();
    const { key } = await sealClinic(store, { next: next(2), names, alsoNamedElsewhere: new Set() }, 'kiosk', {
      workFactor: QUICK,
    });
    const keys = new Map([['clinic-a', key]]);
    const unlocked = sealedStore(store, keys);
    const changed = sampleClinic({ revision: 3, sealed: true, body: { version: 2, notes: ['changed'] } });
    expect(await unlocked.swap(2, changed)).toBe('swapped');
    expect((await unlocked.read('clinic-a'))?.body).toEqual(changed.body);
    expect(JSON.stringify((await store.read('clinic-a'))?.body)).not.toContain('changed');
    expect((await openKey((await store.read('clinic-a')) ?? next(0), 'kiosk')).ok).toBe(true);
    keys.clear();
    expect(await errorOf(unlocked.swap(3, { ...changed, revision: 4 }))).toMatchObject({ fault: 'denied' });
  });

  test('that was unsealed in another tab meanwhile is not sealed again by a late change', async () => {
    const { store, names } = await started();
    const { key } = await sealClinic(store, { next: next(2), names, alsoNamedElsewhere: new Set() }, 'kiosk', {
      workFactor: QUICK,
    });
    await unsealClinic(store, { next: next(3), names, alsoNamedElsewhere: new Set() }, key);
    const unlocked = sealedStore(store, new Map([['clinic-a', key]]));
    expect(await unlocked.swap(2, sampleClinic({ revision: 3, sealed: true }))).toBe('changed-meanwhile');
  });

  test('does not give a file whose sealed bytes were changed or cut', async () => {
    const { store, names } = await started();
    const { key } = await sealClinic(store, { next: next(2), names, alsoNamedElsewhere: new Set() }, 'kiosk', {
      workFactor: QUICK,
    });
    const [name = ''] = names;
    const blobs = clinicBlobs(store, { id: 'clinic-a', sealed: true }, new Map([['clinic-a', key]]));
    const [kept = ''] = keptNames({ id: 'clinic-a', sealed: true }, [name]);
    const sealed = new Uint8Array(await ((await store.getBlob(kept)) ?? new Blob()).arrayBuffer());
    for (const place of [10, sealed.length - 3]) {
      await store.putBlob(kept, new Blob([sealed.map((byte, at) => (at === place ? byte ^ 4 : byte))]));
      expect(await blobs.getBlob(name)).toBeUndefined();
    }
    await store.putBlob(kept, new Blob([sealed.subarray(0, sealed.length - 1)]));
    expect(await blobs.getBlob(name)).toBeUndefined();
    await store.putBlob(kept, new Blob([sealed]));
    expect(await (await blobs.getBlob(name))?.text()).toBe(TEXTS[0]);
  });
});
