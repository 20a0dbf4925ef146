import { StorageError, type BlobStore, type ClinicHeader, type ClinicStore } from './clinic-store';
import { sealedBlobs } from './sealed-blobs';
import { isSealedBody, openContent, sealContent, type SealedKey } from './sealed-body';
import { sealedName } from './sealed-name';
import type { ClinicKey } from './seal';

/** The keys of the clinics that are unlocked in this tab, by id. Forgetting one locks its clinic. */
export type Keyring = Map<string, ClinicKey>;

/**
 * A store that opens and seals the bodies of unlocked clinics on their way. `read` gives a locked clinic as it is kept
 * (`isSealedBody(body)`); a body that cannot be opened with the key rejects as `damaged`. Files go through `clinicBlobs`.
 */
export const sealedStore = (store: ClinicStore, keyring: Keyring): ClinicStore => ({
  ...store,
  read: async (id) => {
    const clinic = await store.read(id);
    const key = keyring.get(id);
    if (clinic === undefined || !clinic.sealed || key === undefined) return clinic;
    const opened = await openContent(clinic, key);
    if (!opened.ok) throw new StorageError('damaged', 'the sealed clinic cannot be read');
    return opened.value;
  },
  swap: async (expectedRevision, next) => {
    if (!next.sealed || isSealedBody(next.body)) return store.swap(expectedRevision, next);
    const key = keyring.get(next.id);
    const kept = await store.read(next.id);
    // The passphrase is not at hand: the key stays sealed as it was. A kept clinic without a seal was unsealed elsewhere.
    const sealedKey: SealedKey | undefined = isSealedBody(kept?.body) ? kept.body : undefined;
    if (key === undefined) throw new StorageError('denied', 'the clinic is locked');
    if (sealedKey === undefined) return kept === undefined ? 'gone' : 'changed-meanwhile';
    return store.swap(expectedRevision, { ...next, body: await sealContent(next, key, sealedKey) });
  },
});

/** The files of one clinic by their SHA-256, sealed on their way where the clinic is. Rejects as `denied` while it is locked. */
export const clinicBlobs = (
  store: BlobStore,
  clinic: Pick<ClinicHeader, 'id' | 'sealed'>,
  keyring: ReadonlyMap<string, ClinicKey>,
): BlobStore => {
  if (!clinic.sealed) return store;
  const key = keyring.get(clinic.id);
  if (key === undefined) throw new StorageError('denied', 'the clinic is locked');
  return sealedBlobs(store, clinic.id, key);
};

/** The names under which a clinic's files are kept: what `removeOrphans` compares. */
export const keptNames = (
  clinic: Pick<ClinicHeader, 'id' | 'sealed'>,
  sha256s: readonly string[],
): readonly string[] => (clinic.sealed ? sha256s.map((sha256) => sealedName(sha256, clinic.id)) : sha256s);
