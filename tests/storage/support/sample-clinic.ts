import type { StoredClinic } from '../../../lib/storage/clinic-store';
import { sha256OfBlob } from '../../../lib/storage/sha256-of-blob';

/** scrypt at a cost that a test can pay many times. */
export const QUICK = 4;

export const sampleClinic = (over: Partial<StoredClinic> = {}): StoredClinic => ({
  id: 'clinic-a',
  name: 'Riverside',
  version: 2,
  revision: 1,
  sealed: false,
  changedAt: '2026-01-05T10:00:00.000Z',
  body: { version: 2, notes: ['weighed before lunch'] },
  ...over,
});

export const textFile = async (text: string): Promise<{ readonly sha256: string; readonly blob: Blob }> => {
  const blob = new Blob([text]);
  return { sha256: await sha256OfBlob(blob), blob };
};

/** Bytes of a seeded generator (xorshift32): they do not pack smaller. */
export const noise = (bytes: number, seed = 1): Uint8Array<ArrayBuffer> => {
  let state = seed >>> 0;
  return Uint8Array.from({ length: bytes }, () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return state & 0xff;
  });
};

export const errorOf = (promise: Promise<unknown>): Promise<unknown> =>
  promise.then(
    () => undefined,
    (error: unknown) => error,
  );
