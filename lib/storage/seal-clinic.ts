import type { LongStep } from '../core/progress';
import { err, ok, type Result } from '../core/result';
import { StorageError, type BlobStore, type ClinicStore, type StoredClinic, type SwapResult } from './clinic-store';
import { openKey, sealContent, sealKey, type SealedKey } from './sealed-body';
import { sealedBlobs } from './sealed-blobs';
import { newClinicKey, type ClinicKey, type SealFault } from './seal';

/** A clinic whose way of keeping changes. */
export interface SealChange {
  /** The clinic as it shall stand, its body in the open; `revision` is one above the kept one. */
  readonly next: StoredClinic;
  /** SHA-256 of every file that its states name. */
  readonly names: readonly string[];
  /** Files that other clinics name: they stay in the open. */
  readonly alsoNamedElsewhere: ReadonlySet<string>;
}

interface SealOptions extends LongStep {
  readonly workFactor?: number;
}

const missing = () => new StorageError('damaged', 'a file of the clinic is missing or damaged');

const copy = async (
  names: readonly string[],
  from: BlobStore,
  to: BlobStore,
  { signal, onProgress }: SealOptions,
): Promise<void> => {
  let bytes = 0;
  for (const name of new Set(names)) {
    signal?.throwIfAborted();
    const blob = await from.getBlob(name);
    if (blob === undefined) throw missing();
    await to.putBlob(name, blob, signal);
    bytes += blob.size;
    onProgress?.({ step: 'sealing', file: name.slice(0, 8), bytes, totalBytes: null, rows: 0 });
  }
};

/**
 * Seals an open clinic with a passphrase. Order: sealed files beside the open ones, then the sealed manifest, then the
 * open files go. A crash before the manifest leaves the open clinic whole, one after it the sealed clinic; what is left
 * over is named by nobody, and `removeOrphans` takes it. Removing a file does not wipe the disk under it. Run it inside
 * `tabs.whileKeeping`.
 */
export const sealClinic = async (
  store: ClinicStore,
  { next, names, alsoNamedElsewhere }: SealChange,
  passphrase: string,
  options: SealOptions = {},
): Promise<{ readonly swap: SwapResult; readonly key: ClinicKey }> => {
  const key = await newClinicKey();
  const sealedKey = await sealKey(key, passphrase, options.workFactor);
  const sealed = sealedBlobs(store, next.id, key);
  await copy(names, store, sealed, options);
  const body = await sealContent(next, key, sealedKey);
  const swap = await store.swap(next.revision - 1, { ...next, sealed: true, body });
  if (swap === 'swapped') for (const name of names) if (!alsoNamedElsewhere.has(name)) await store.removeBlob(name);
  return { swap, key };
};

/** Takes a clinic's seal away, in the same order: open files, open manifest, then the sealed files go. */
export const unsealClinic = async (
  store: ClinicStore,
  { next, names }: SealChange,
  key: ClinicKey,
  options: SealOptions = {},
): Promise<SwapResult> => {
  const sealed = sealedBlobs(store, next.id, key);
  await copy(names, sealed, store, options);
  const swap = await store.swap(next.revision - 1, { ...next, sealed: false });
  if (swap === 'swapped') for (const name of names) await sealed.removeBlob(name);
  return swap;
};

/**
 * Seals the clinic's key anew under another passphrase: one swap. The files stay as they are, for their key stays; a copy
 * of the old manifest still opens with the old passphrase.
 */
export const changePassphrase = async (
  store: ClinicStore,
  next: StoredClinic,
  passphrases: { readonly old: string; readonly new: string },
  options: SealOptions = {},
): Promise<Result<SwapResult, SealFault | 'gone'>> => {
  const kept = await store.read(next.id);
  if (kept === undefined) return err('gone');
  const key = await openKey(kept, passphrases.old);
  if (!key.ok) return key;
  const sealedKey: SealedKey = await sealKey(key.value, passphrases.new, options.workFactor);
  const body = await sealContent(next, key.value, sealedKey);
  return ok(await store.swap(next.revision - 1, { ...next, sealed: true, body }));
};
