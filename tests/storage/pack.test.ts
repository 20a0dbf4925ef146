import { unzipSync } from 'fflate';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pack } from '../../lib/storage/pack';
import { unpack } from '../../lib/storage/unpack';
import { crc32, localHeader } from '../../lib/storage/zip-layout';
import { sha256OfBlob } from '../../lib/storage/sha256-of-blob';
import { errorOf, noise, QUICK, sampleClinic, textFile } from './support/sample-clinic';

const file = async (bytes: Uint8Array<ArrayBuffer>) => {
  const blob = new Blob([bytes]);
  return { sha256: await sha256OfBlob(blob), blob };
};

const input = async () => ({
  madeAt: '2026-01-05T10:00:00Z',
  counts: { files: 3, rows: 12 },
  clinic: sampleClinic(),
  files: [await textFile('client_id,weight_kg\nA,70\n'.repeat(20)), await file(noise(300)), await textFile('')],
});

const refused = async (bytes: Uint8Array, passphrase: string | null): Promise<string> => {
  const answer = await unpack(new Blob([Uint8Array.from(bytes)]), { passphrase });
  if (!answer.ok) return answer.error;
  for (const kept of answer.value.files) {
    const opened = await kept.open();
    if (!opened.ok) return `late ${opened.error}`;
  }
  return 'taken';
};

const bytesOf = async (blob: Blob) => new Uint8Array(await blob.arrayBuffer());

describe('a backup', () => {
  for (const passphrase of [null, 'a long walk in the rain'])
    test(`${passphrase === null ? 'in the open' : 'sealed'} gives back what went in`, async () => {
      const given = await input();
      const made = await pack(given, { passphrase, workFactor: QUICK });
      const back = await unpack(made, { passphrase });
      if (!back.ok) throw new Error(back.error);
      expect(back.value.clinic).toEqual(given.clinic);
      expect(back.value.madeAt).toBe(given.madeAt);
      expect(back.value.counts).toEqual(given.counts);
      expect(back.value.files.map(({ sha256 }) => sha256)).toEqual(given.files.map(({ sha256 }) => sha256));
      for (const [place, kept] of back.value.files.entries()) {
        const opened = await kept.open();
        const original = given.files[place];
        expect(opened.ok && original && (await bytesOf(opened.value))).toEqual(
          original && (await bytesOf(original.blob)),
        );
      }
    });

  test('is a zip that another program reads', async () => {
    const given = await input();
    const entries = unzipSync(await bytesOf(await pack(given, { passphrase: null })));
    expect(Object.keys(entries)).toEqual([
      'driftline.json',
      'clinic.json',
      ...given.files.map(({ sha256 }) => `blobs/${sha256}`),
    ]);
    expect(JSON.parse(new TextDecoder().decode(entries['clinic.json']))).toEqual(given.clinic);
    expect(entries[`blobs/${given.files[1]?.sha256 ?? ''}`]).toEqual(noise(300));
  });

  test('of several megabytes tells how far it is, and stops when asked', async () => {
    const big = await file(noise(1_500_000));
    const told: number[] = [];
    const made = await pack(
      { ...(await input()), files: [big] },
      { passphrase: 'x', workFactor: QUICK, onProgress: ({ bytes }) => told.push(bytes) },
    );
    expect(told.length).toBe(3);
    expect(told.at(-1)).toBeGreaterThan(1_500_000);
    const back = await unpack(made, { passphrase: 'x' });
    const opened = back.ok ? await back.value.files[0]?.open() : undefined;
    expect(opened?.ok && (await sha256OfBlob(opened.value))).toBe(big.sha256);
    const stop = AbortSignal.abort(new Error('stopped'));
    expect(await errorOf(pack(await input(), { passphrase: null, signal: stop }))).toMatchObject({
      message: 'stopped',
    });
  });

  test('is not made of a file that is not what its name says', async () => {
    const given = await input();
    const [first] = given.files;
    const wrong = { ...given, files: [{ sha256: first?.sha256 ?? '', blob: new Blob(['other']) }] };
    expect(await errorOf(pack(wrong, { passphrase: null }))).toMatchObject({ fault: 'changed' });
  });
});

describe('a backup is refused', () => {
  test('in the open, for every single changed byte', async () => {
    const bytes = await bytesOf(await pack(await input(), { passphrase: null }));
    const words = new Set<string>();
    for (let place = 0; place < bytes.length; place += 1) {
      const changed = bytes.map((byte, at) => (at === place ? byte ^ (1 << (place % 8)) : byte));
      words.add(await refused(changed, null));
    }
    expect([...words].sort()).toEqual(['damaged', 'not_a_backup']);
  });

  test('in the open, for every length that is too short', async () => {
    const bytes = await bytesOf(await pack(await input(), { passphrase: null }));
    const words = new Map<string, number>();
    for (let length = 0; length < bytes.length; length += 1) {
      const word = await refused(bytes.subarray(0, length), null);
      words.set(word, (words.get(word) ?? 0) + 1);
    }
    expect([...words.keys()].sort()).toEqual(['cut_short', 'not_a_backup']);
    expect(words.get('not_a_backup')).toBe('driftline.json'.length + 30);
    expect(await refused(Uint8Array.from([...bytes, 0]), null)).not.toBe('taken');
  });

  test('sealed, for any changed byte and any cut', async () => {
    const bytes = await bytesOf(await pack(await input(), { passphrase: 'kiosk', workFactor: QUICK }));
    const words = new Set<string>();
    for (let place = 0; place < 220; place += 1)
      words.add(
        await refused(
          bytes.map((byte, at) => (at === place ? byte ^ 1 : byte)),
          'kiosk',
        ),
      );
    await fc.assert(
      fc.asyncProperty(fc.nat(bytes.length - 1), fc.integer({ min: 1, max: 255 }), async (place, change) => {
        const word = await refused(
          bytes.map((byte, at) => (at === place ? byte ^ change : byte)),
          'kiosk',
        );
        words.add(word);
        return word !== 'taken';
      }),
      { seed: 3, numRuns: 200 },
    );
    await fc.assert(
      fc.asyncProperty(fc.nat(bytes.length - 1), async (length) => {
        const word = await refused(bytes.subarray(0, length), 'kiosk');
        words.add(word);
        return word !== 'taken';
      }),
      { seed: 4, numRuns: 200 },
    );
    expect([...words].sort()).toEqual(['damaged', 'not_a_backup', 'wrong_passphrase']);
  });

  test('with the right word for a wrong passphrase, none, and a file that is something else', async () => {
    const sealed = await bytesOf(await pack(await input(), { passphrase: 'kiosk', workFactor: QUICK }));
    expect(await refused(sealed, 'kiosks')).toBe('wrong_passphrase');
    expect(await refused(sealed, null)).toBe('passphrase_needed');
    expect(await refused(new TextEncoder().encode('client_id,weight_kg\n'), null)).toBe('not_a_backup');
    expect(await refused(new Uint8Array(), null)).toBe('not_a_backup');
    expect(await refused(await bytesOf(await pack(await input(), { passphrase: null })), 'kiosk')).toBe('taken');
  });
});

test('the check sum of the zip is that of its published check value', () => {
  // CRC-32/ISO-HDLC: check value of "123456789" (ITU-T V.42; catalogue of parametrised CRC algorithms).
  expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
  expect(crc32(new TextEncoder().encode('6789'), crc32(new TextEncoder().encode('12345')))).toBe(0xcbf43926);
  expect(localHeader({ name: 'a', crc32: 0, packedBytes: 0, bytes: 0, offset: 0 }).length).toBe(31);
});
