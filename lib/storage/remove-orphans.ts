import type { ClinicHeader, ClinicStore, KeptBlob } from './clinic-store';
import { readSealedName } from './sealed-name';
import type { TabLock } from './tab-lock';

/** A kept clinic with the names of the files that it may still need (its past and future states too); null = not to be known. */
export interface NamedFiles {
  readonly header: ClinicHeader;
  readonly names: readonly string[] | null;
}

/**
 * The kept files that no clinic names. A sealed clinic that is locked tells no names: what is sealed for it stays. An
 * unsealed clinic whose names cannot be read (a newer version, a damaged manifest) makes every file stay, and so does a
 * store without clinics. Files from before the store's books began are what a lost database left: they stay too.
 *
 * @param begunAt when the books began (`ClinicStore.begunAt`)
 */
export const orphans = (
  kept: readonly KeptBlob[],
  clinics: readonly NamedFiles[],
  begunAt: number,
): readonly KeptBlob[] => {
  if (clinics.length === 0 || clinics.some(({ header, names }) => names === null && !header.sealed)) return [];
  const named = new Set(clinics.flatMap(({ names }) => names ?? []));
  const locked = new Set(clinics.filter(({ names }) => names === null).map(({ header }) => header.id));
  return kept.filter(({ name, keptAt }) => {
    const owner = readSealedName(name)?.clinicId;
    return !named.has(name) && (owner === undefined || !locked.has(owner)) && keptAt >= begunAt;
  });
};

/**
 * Removes files that no clinic names: left by a crash between file and manifest, or by a sealing that was cut off. It does
 * nothing while any tab is between file and manifest, so every commit has to run inside `tabs.whileKeeping`. For the
 * writing tab, after it opened its clinic.
 *
 * @param namesOf the kept names (sealed names for a sealed clinic) that a clinic may still need; null = not to be known
 * @returns how many were removed; undefined where a tab was between file and manifest
 */
export const removeOrphans = async (
  store: ClinicStore,
  tabs: TabLock,
  namesOf: (header: ClinicHeader) => Promise<readonly string[] | null>,
): Promise<number | undefined> =>
  tabs.ifNobodyKeeps(async () => {
    const clinics: NamedFiles[] = [];
    for (const header of await store.list()) clinics.push({ header, names: await namesOf(header) });
    const found = orphans(await store.blobs(), clinics, await store.begunAt());
    for (const { name } of found) await store.removeBlob(name);
    return found.length;
  });
