import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { sha256InPieces, sha256OfBlob } from '../../lib/storage/sha256-of-blob';
import { errorOf, noise } from './support/sample-clinic';

// FIPS 180-4 examples: NIST, Cryptographic Standards and Guidelines, Example Values, SHA-256.
const EXAMPLES: readonly (readonly [text: string, hash: string])[] = [
  ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  [
    'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  ],
];

test('the published examples hash to their values, at once and in pieces', async () => {
  for (const [text, hash] of EXAMPLES) {
    expect(await sha256OfBlob(new Blob([text]))).toBe(hash);
    const pieces = sha256InPieces();
    for (const letter of text) pieces.update(new TextEncoder().encode(letter));
    expect(pieces.digest()).toBe(hash);
  }
});

test('a file that is read as a stream has the hash that Node computes, and tells its bytes', async () => {
  const bytes = noise(5 * 1024 * 1024 + 17);
  const told: number[] = [];
  const hash = await sha256OfBlob(new Blob([bytes]), undefined, (count) => told.push(count));
  expect(hash).toBe(createHash('sha256').update(bytes).digest('hex'));
  expect(told.length).toBe(6);
  expect(told.at(-1)).toBe(bytes.length);
});

test('hashing stops in the middle of a stream', async () => {
  const stop = new AbortController();
  const reason = new Error('stopped');
  const error = await errorOf(
    sha256OfBlob(new Blob([noise(5 * 1024 * 1024)]), stop.signal, (count) => {
      if (count > 1024 * 1024) stop.abort(reason);
    }),
  );
  expect(error).toBe(reason);
});
