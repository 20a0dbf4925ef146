import { expect, test } from 'vitest';
import { sameBytes } from '../../lib/storage/same-bytes';

test('two files are the same only where every byte is, beyond the first piece too', async () => {
  const bytes = new Uint8Array(1024 * 1024 + 5);
  const changed = bytes.map((byte, at) => (at === bytes.length - 1 ? 1 : byte));
  expect(await sameBytes(new Blob([bytes]), new Blob([bytes.slice()]))).toBe(true);
  expect(await sameBytes(new Blob([bytes]), new Blob([changed]))).toBe(false);
  expect(await sameBytes(new Blob([bytes]), new Blob([bytes.subarray(1)]))).toBe(false);
});
