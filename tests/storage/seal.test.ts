import { Decrypter } from 'age-encryption';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blobFromStream } from '../../lib/storage/blob-from-stream';
import { isSealed, newClinicKey, openBytes, openStream, sealBytes, sealStream } from '../../lib/storage/seal';
import { isSealedBody, openContent, openKey, sealBody, type SealedBody } from '../../lib/storage/sealed-body';
import { errorOf, noise, QUICK, sampleClinic } from './support/sample-clinic';

const withBody = (body: unknown) => sampleClinic({ sealed: true, body });

const flip = (bytes: Uint8Array, place: number): Uint8Array =>
  bytes.map((byte, at) => (at === place ? byte ^ 0x01 : byte));

describe('sealed bytes', () => {
  test('are an age file that any other age program opens', async () => {
    const sealed = await sealBytes(new TextEncoder().encode('seventy kilograms'), { passphrase: 'kiosk' }, QUICK);
    const decrypter = new Decrypter();
    decrypter.addPassphrase('kiosk');
    expect(await decrypter.decrypt(sealed, 'text')).toBe('seventy kilograms');
    expect(await isSealed(new Blob([Uint8Array.from(sealed)]))).toBe(true);
    expect(await isSealed(new Blob(['client_id']))).toBe(false);
  });

  test('open with the same words, typed composed or decomposed, and with no others', async () => {
    const sealed = await sealBytes(noise(10), { passphrase: 'caf\u00e9' }, QUICK);
    expect(await openBytes(sealed, { passphrase: 'cafe\u0301' })).toEqual({ ok: true, value: noise(10) });
    expect(await openBytes(sealed, { passphrase: 'cafe' })).toEqual({ ok: false, error: 'wrong_passphrase' });
  });

  test('a stream of several pieces comes out as it went in, and breaks where it was cut or changed', async () => {
    const key = await newClinicKey();
    const plain = noise(200_000);
    const sealed = await blobFromStream(await sealStream(new Blob([plain]).stream(), { key }));
    const open = async (blob: Blob) => {
      const opened = await openStream(blob.stream(), { key });
      if (!opened.ok) throw new Error(opened.error);
      return new Uint8Array(await (await blobFromStream(opened.value)).arrayBuffer());
    };
    expect(Buffer.compare(await open(sealed), plain)).toBe(0);
    expect(await errorOf(open(sealed.slice(0, 150_000)))).toBeInstanceOf(Error);
    const atPiece = sealed.size - (200_000 - 3 * 65_536) - 16;
    expect(await errorOf(open(sealed.slice(0, atPiece)))).toBeInstanceOf(Error);
    const bytes = new Uint8Array(await sealed.arrayBuffer());
    expect(await errorOf(open(new Blob([Uint8Array.from(flip(bytes, 100_000))])))).toBeInstanceOf(Error);
  });
});

describe('a sealed clinic', () => {
  test('opens with its passphrase, and shows nothing of its body before', async () => {
    const { sealed } = await sealBody(sampleClinic(), 'kiosk', QUICK);
    const body = sealed.body as SealedBody;
    expect(isSealedBody(body)).toBe(true);
    expect(Buffer.from(body.content).includes('lunch')).toBe(false);
    const key = await openKey(sealed, 'kiosk');
    expect(key.ok && (await openContent(sealed, key.value))).toEqual({
      ok: true,
      value: sampleClinic({ sealed: true }),
    });
  });

  test('tells a wrong passphrase from a changed byte, wherever the byte is', async () => {
    const { sealed, key } = await sealBody(sampleClinic(), 'kiosk', QUICK);
    const body = sealed.body as SealedBody;
    expect(await openKey(sealed, 'kiosks')).toEqual({ ok: false, error: 'wrong_passphrase' });
    await fc.assert(
      fc.asyncProperty(fc.nat(body.key.length - 1), async (place) => {
        expect(await openKey(withBody({ ...body, key: flip(body.key, place) }), 'kiosk')).toEqual({
          ok: false,
          error: 'damaged',
        });
      }),
      { seed: 1, numRuns: 100 },
    );
    await fc.assert(
      fc.asyncProperty(fc.nat(body.content.length - 1), async (place) => {
        expect(await openContent(withBody({ ...body, content: flip(body.content, place) }), key)).toEqual({
          ok: false,
          error: 'damaged',
        });
      }),
      { seed: 1, numRuns: 60 },
    );
  });

  test('does not take the body of another clinic or of an earlier revision', async () => {
    const { sealed, key } = await sealBody(sampleClinic(), 'kiosk', QUICK);
    expect((await openContent({ ...sealed, id: 'clinic-b' }, key)).ok).toBe(false);
    expect((await openContent({ ...sealed, revision: 2 }, key)).ok).toBe(false);
  });
});
