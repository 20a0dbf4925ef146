import { backupActs } from './backup-acts';
import { clinicActs } from './clinic-acts';
import { damagedImports } from './damaged-imports';
import { eraseActs } from './erase';
import { importActs } from './import-acts';
import { rowActs } from './row-acts';
import { sealActs } from './seal-acts';
import { sharedActs } from './shared-acts';
import { stateActs } from './state-acts';
import { createWorkbench } from './workbench';
import type { Workspace } from './workspace';
import type { WorkspaceParts } from './workspace-parts';

/** All that can be done with clinics. The database is a cache: filled from the kept files each time. */
export const createWorkspace = (parts: WorkspaceParts): Workspace => {
  const bench = createWorkbench(parts);
  const { lastPlan, forgetPlan, ...imports } = importActs(bench);
  const sealing = sealActs(bench);
  return {
    ...clinicActs(bench),
    ...imports,
    ...stateActs(bench),
    ...rowActs(bench, () => lastPlan()?.plan),
    ...eraseActs(bench),
    ...backupActs(bench),
    ...sharedActs(bench),
    ...sealing,
    lock: async () => {
      await sealing.lock();
      forgetPlan();
    },
    damagedImports: () => damagedImports(bench),
    setInitials: (initials) => {
      bench.setInitials(initials);
    },
    onChangedElsewhere: (listener) => bench.onChangedElsewhere(listener),
    persist: () => parts.store.persist(),
  };
};
