import { workspaceErrors as errors } from '../core/messages/en/workspace-errors';
import { err } from '../core/result';
import { rowsOfClient } from '../import/kept-rows';
import { clientIds } from './client-ids';
import type { ClinicBody, ClinicState, LogEntry } from './clinic-state';
import { tombstoneHash } from './erased-people';
import { logged } from './history';
import { keepBlobs } from './keep-blobs';
import { stateWithout } from './state-without';
import { withoutErased } from './without-erased';
import type { Outcome, Workspace } from './workspace';
import type { Workbench } from './workbench';

/** The body after a person was erased: no way back, a keyed hash for each id, and the backups and the
 * workspace file that may hold the person. */
const bodyWithout = (body: ClinicBody, state: ClinicState, ids: ReadonlySet<string>, entry: LogEntry): ClinicBody => {
  const { at, initials } = entry;
  const shared = body.shared === null ? [] : [body.shared.name];
  const backups = [...new Set([...body.backups.map(({ name }) => name), ...shared])];
  return logged(
    {
      ...body,
      state,
      past: [],
      future: [],
      shared:
        body.shared === null ? null : { ...body.shared, base: stateWithout(body.shared.base, (id) => ids.has(id)) },
      tombstones: [
        ...body.tombstones,
        ...[...ids].map((id) => ({ hmac: tombstoneHash(body.tombstoneKey, id), at, initials, backups })),
      ],
    },
    entry,
  );
};

/** Removing a person for good, and leaving them out when their rows come back. */
export const eraseActs = (bench: Workbench): Pick<Workspace, 'erase'> => {
  const { keeper } = bench;
  const erase = async (client: string): Outcome => {
    const kept = await bench.writable();
    if (!kept.ok) return kept;
    const { header, body } = kept.value;
    const ids = clientIds(body.state.settings, client);
    const entry = bench.sign('erased');
    const blobs = keeper.blobsOf(header);
    const isGone = (id: string): boolean => ids.has(id);
    const files = await withoutErased(body.state, isGone, (file) => blobs.getBlob(file.sha256), entry.at);
    if (!files.ok) return files;
    const isNamed = [...body.state.notes, ...body.state.marks, ...body.state.settings.enrolments].some((item) =>
      isGone(item.client),
    );
    // The demo's file comes from the site: its rows are known to the database alone.
    const isShown = body.kind === 'demo' && (await rowsOfClient(await bench.engine(), client)).length > 0;
    if (files.value.rows === 0 && !isNamed && !isShown) return err(errors.unknownClient);
    const next = bodyWithout(body, stateWithout(files.value.state, isGone), ids, entry);
    const toKeep = new Map([...files.value.blobs].map(([sha256, blob]) => [sha256, { blob }]));
    bench.tidyLater();
    return keepBlobs(bench, header, toKeep, {}, () => bench.enact(kept.value, next, { evenIfNothing: true }));
  };
  return { erase: (client) => bench.inTurn(() => erase(client)) };
};
