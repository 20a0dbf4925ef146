import { StorageError } from '../storage/clinic-store';
import { removeOrphans } from '../storage/remove-orphans';
import type { ClinicKeeper } from './clinic-keeper';
import type { WorkspaceParts } from './workspace-parts';

/** Removes kept files that no clinic names. What cannot be removed now is found again at the next start. */
export const tidyStore = async (
  { store, tabs }: Pick<WorkspaceParts, 'store' | 'tabs'>,
  keeper: ClinicKeeper,
): Promise<void> => {
  try {
    await removeOrphans(store, tabs, (header) => keeper.namesOf(header));
  } catch (reason) {
    if (!(reason instanceof StorageError)) throw reason;
  }
};
