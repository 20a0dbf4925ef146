import { blobPieces } from './blob-pieces';
import { blobFromStream } from './blob-from-stream';
import { StorageError, type BlobStore } from './clinic-store';
import { openStream, sealStream, type ClinicKey } from './seal';
import { readSealedName, sealedName } from './sealed-name';
import { sha256InPieces, sha256OfBlob } from './sha256-of-blob';

/** Lets a stream through and hashes it on the way. */
const hashing = (): { readonly through: TransformStream<Uint8Array, Uint8Array>; readonly digest: () => string } => {
  const hash = sha256InPieces();
  return {
    through: new TransformStream<Uint8Array, Uint8Array>({
      transform: (chunk, controller) => {
        hash.update(chunk);
        controller.enqueue(chunk);
      },
    }),
    digest: () => hash.digest(),
  };
};

/**
 * The files of a sealed clinic: named by the SHA-256 of their plain bytes, kept as age files under names of this clinic,
 * so that nothing of it lies in the open and no other clinic shares it.
 */
export const sealedBlobs = (store: BlobStore, clinicId: string, key: ClinicKey): BlobStore => ({
  putBlob: async (sha256, blob, signal) => {
    const { through, digest } = hashing();
    const stream = await sealStream(blobPieces(blob).pipeThrough(through), { key });
    const sealed = await blobFromStream(stream, signal).catch((error: unknown) => {
      signal?.throwIfAborted();
      throw new StorageError('changed', error instanceof Error ? error.message : 'the file cannot be read any more');
    });
    if (digest() !== sha256) throw new StorageError('changed', 'the file is not the one that was read');
    await store.putBlob(sealedName(sha256, clinicId), sealed, signal);
  },
  getBlob: async (sha256) => {
    const kept = await store.getBlob(sealedName(sha256, clinicId));
    if (kept === undefined) return undefined;
    const opened = await openStream(blobPieces(kept), { key });
    if (!opened.ok) return undefined;
    const plain = await blobFromStream(opened.value).catch(() => undefined);
    return plain !== undefined && (await sha256OfBlob(plain)) === sha256 ? plain : undefined;
  },
  removeBlob: (sha256) => store.removeBlob(sealedName(sha256, clinicId)),
  blobs: async () =>
    (await store.blobs()).flatMap((kept) => {
      const read = readSealedName(kept.name);
      return read?.clinicId === clinicId ? [{ ...kept, name: read.sha256 }] : [];
    }),
});
