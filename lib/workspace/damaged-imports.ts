import { ok } from '../core/result';
import type { Workspace } from './workspace';
import type { Workbench } from './workbench';

/** The imports of the clinic at which this tab is whose kept files are missing or damaged. */
export const damagedImports = async (bench: Workbench): ReturnType<Workspace['damagedImports']> => {
  const found = await bench.inTurn(async () => {
    const kept = bench.here()?.kept;
    const damaged: { importId: string; file: string }[] = [];
    if (kept === undefined) return ok(damaged);
    const blobs = bench.keeper.blobsOf(kept.header);
    for (const entry of kept.body.state.imports) {
      for (const file of entry.files) {
        if ((await blobs.getBlob(file.sha256)) === undefined) damaged.push({ importId: entry.id, file: file.name });
      }
    }
    return ok(damaged);
  });
  return found.ok ? found.value : [];
};
