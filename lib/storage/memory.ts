import { sha256 } from '../core/sha256';
import type { ClinicStorage } from './clinic-storage';

/** A clinic that lasts as long as the process: for Node and for tests of the use cases. */
export const memoryStorage = (): ClinicStorage => {
  const blobs = new Map<string, Uint8Array>();
  let manifest: { readonly revision: number } | undefined;
  return {
    readManifest: () => Promise.resolve(manifest),
    swapManifest: (expectedRevision, next) => {
      if ((manifest?.revision ?? 0) !== expectedRevision) return Promise.resolve(false);
      manifest = structuredClone(next);
      return Promise.resolve(true);
    },
    putBlob: async (name, bytes) => {
      if ((await sha256(bytes)) !== name) throw new Error('the file was not kept whole');
      blobs.set(name, bytes.slice());
    },
    getBlob: (name) => Promise.resolve(blobs.get(name)?.slice()),
  };
};
