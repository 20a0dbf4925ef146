import type { ClinicHeader } from '../storage/clinic-store';
import { readSealedName } from '../storage/sealed-name';
import type { ClinicKeeper } from './clinic-keeper';
import type { WorkspaceParts } from './workspace-parts';

/** Names that the other clinics may still need; null where one of them cannot be read, so that nothing is sure. */
export const namedElsewhere = async (
  { store }: Pick<WorkspaceParts, 'store'>,
  keeper: ClinicKeeper,
  clinicId: string,
): Promise<ReadonlySet<string> | null> => {
  const named = new Set<string>();
  for (const header of await store.list()) {
    if (header.id === clinicId) continue;
    const names = await keeper.namesOf(header);
    if (names === null && !header.sealed) return null;
    for (const name of names ?? []) named.add(name);
  }
  return named;
};

/** Deletes a clinic and then its files, those that another clinic needs apart; a sealed one's go without its key. */
export const removeClinicBlobs = async (
  parts: Pick<WorkspaceParts, 'store' | 'tabs'>,
  keeper: ClinicKeeper,
  header: ClinicHeader,
  removeClinic: () => Promise<void>,
): Promise<void> => {
  const names = (await keeper.namesOf(header)) ?? [];
  const others = await namedElsewhere(parts, keeper, header.id);
  await removeClinic();
  await parts.tabs.ifNobodyKeeps(async () => {
    for (const { name } of await parts.store.blobs()) {
      const isOwn = readSealedName(name)?.clinicId === header.id || names.includes(name);
      if (isOwn && others !== null && !others.has(name)) await parts.store.removeBlob(name);
    }
  });
};
