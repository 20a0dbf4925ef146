import { StorageError } from '../storage/clinic-store';
import { removeOrphans } from '../storage/remove-orphans';
import type { ClinicKeeper } from './clinic-keeper';
import type { WorkspaceParts } from './workspace-parts';

/** Removes kept files that no clinic names; false where it has to be tried again. */
export const tidyStore = async (
  { store, tabs }: Pick<WorkspaceParts, 'store' | 'tabs'>,
  keeper: ClinicKeeper,
): Promise<boolean> => {
  try {
    return (await removeOrphans(store, tabs, (header) => keeper.namesOf(header))) !== undefined;
  } catch (reason) {
    if (!(reason instanceof StorageError)) throw reason;
    return false;
  }
};
