import { StorageError, type ClinicHeader } from '../storage/clinic-store';
import { readSealedName } from '../storage/sealed-name';
import type { ClinicKeeper } from './clinic-keeper';
import type { WorkspaceParts } from './workspace-parts';

type Parts = Pick<WorkspaceParts, 'store' | 'tabs'>;

const HASH = /[0-9a-f]{64}/g;

/** Names that a manifest may need though this app cannot read it: every hash that stands anywhere in it. */
const hashesIn = async ({ store }: Pick<Parts, 'store'>, id: string): Promise<readonly string[]> =>
  JSON.stringify((await store.read(id))?.body ?? null).match(HASH) ?? [];

/** The kept names of a clinic's files; of one that cannot be read, what is sealed for it and what its manifest may name. */
export const namesOfClinic = async (
  { store }: Pick<Parts, 'store'>,
  keeper: ClinicKeeper,
  header: ClinicHeader,
): Promise<readonly string[]> => {
  const names = await keeper.namesOf(header);
  if (names !== null) return names;
  const sealed = (await store.blobs()).filter(({ name }) => readSealedName(name)?.clinicId === header.id);
  return [...sealed.map(({ name }) => name), ...(header.sealed ? [] : await hashesIn({ store }, header.id))];
};

/**
 * Removes those of some kept files that no clinic needs any more, whenever they were kept: what a clinic gave up, and
 * what was kept for a change that did not happen. It looks at all clinics while no tab is between file and manifest.
 *
 * @returns whether it was done; false where another tab was in between or the storage failed
 */
export const removeUnnamed = async (
  { store, tabs }: Parts,
  keeper: ClinicKeeper,
  names: readonly string[],
): Promise<boolean> => {
  const remove = async (): Promise<boolean> => {
    const needed = new Set<string>();
    for (const header of await store.list()) {
      for (const name of await namesOfClinic({ store }, keeper, header)) needed.add(name);
    }
    for (const name of names) if (!needed.has(name)) await store.removeBlob(name);
    return true;
  };
  try {
    return (await tabs.ifNobodyKeeps(remove)) ?? false;
  } catch (reason) {
    if (!(reason instanceof StorageError)) throw reason;
    return false;
  }
};
