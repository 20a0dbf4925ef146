import { workspaceErrors as errors } from '../core/messages/en/workspace-errors';
import { err, ok } from '../core/result';
import { BODY_VERSION } from './clinic-state';
import { demoClinic, DEMO_ID, loadDemo } from './demo-clinic';
import { changed, logged } from './history';
import { namesOfClinic } from './remove-unnamed';
import type { ClinicRef, Outcome, Workspace } from './workspace';
import type { Workbench } from './workbench';

/** The id that stands for "none" where the last clinic was deleted: not even the demo opens by itself then. */
const NONE = '';

/** Opening, listing, switching, starting and deleting clinics. */
export const clinicActs = (
  bench: Workbench,
): Pick<Workspace, 'open' | 'clinics' | 'switchTo' | 'deleteClinic' | 'renameClinic' | 'openDemo' | 'takeOver'> => {
  const { parts, keeper } = bench;
  const { store } = parts;

  const openDemo = async (withoutConditions: boolean): Outcome => {
    const demo = await loadDemo(parts);
    if (!demo.ok) return demo;
    const here = bench.here();
    if (here?.id === DEMO_ID && !here.seat.isWriter()) return err(errors.readerTab);
    const kept = await store.read(DEMO_ID);
    if (kept !== undefined && kept.version > BODY_VERSION) return err(errors.newerManifest(kept.name));
    if (kept?.sealed === true) {
      await store.remove(DEMO_ID);
      keeper.keys.delete(DEMO_ID);
    }
    const header = kept === undefined || kept.sealed ? keeper.blank(DEMO_ID) : { ...kept, body: undefined };
    const body = demoClinic(demo.value.settings, bench.sign('started'), withoutConditions);
    return bench.enact({ header, body }, body, { anew: true });
  };

  const open: Workspace['open'] = async (step) => {
    // A browser may keep the list of clinics and refuse their files: that is said now, not after an import.
    if (bench.here() === undefined) await store.blobs();
    const last = bench.here()?.id ?? (await store.lastOpen());
    const headers = await store.list();
    if (last === undefined && headers.length === 0) return openDemo(false);
    if (last === NONE) return err(errors.noClinic);
    if (last !== undefined && headers.some((header) => header.id === last)) return bench.show(last, step);
    if (last === DEMO_ID) return openDemo(false);
    const [other] = headers;
    return other === undefined ? err(errors.noClinic) : bench.show(other.id, step);
  };

  const deleteClinic = async (id: string): Outcome => {
    const header = (await store.list()).find((candidate) => candidate.id === id);
    if (header === undefined) return err(errors.unknownClinic);
    const here = bench.here();
    const seat = here?.id === id ? here.seat : await parts.tabs.join(id, () => undefined);
    if (!seat.isWriter()) {
      if (here?.id !== id) await seat.leave();
      return err(errors.readerTab);
    }
    const names = await namesOfClinic(parts, keeper, header);
    await store.remove(id);
    bench.tidyLater(names);
    keeper.keys.delete(id);
    if (here?.id !== id) {
      await seat.leave();
      return here === undefined ? open() : bench.session();
    }
    await bench.leave();
    const left = await store.list();
    const next = left.find((candidate) => candidate.id === DEMO_ID) ?? left[0];
    await store.setLastOpen(next?.id ?? NONE);
    return next === undefined ? err(errors.noClinic) : bench.show(next.id);
  };

  return {
    open: (step) => bench.inTurn(() => open(step)),
    clinics: () =>
      bench.inTurn(async () =>
        ok(
          (await store.list()).map(({ id, name, sealed }): ClinicRef => ({
            id,
            kind: id === DEMO_ID ? 'demo' : 'own',
            name,
            invented: id === DEMO_ID,
            sealed,
          })),
        ),
      ),
    switchTo: (id) => bench.inTurn(() => bench.show(id)),
    deleteClinic: (id) => bench.inTurn(() => deleteClinic(id)),
    renameClinic: (name) =>
      bench.inTurn(async () => {
        const kept = await bench.writable();
        if (!kept.ok) return kept;
        const { body } = kept.value;
        const { settings } = body.state;
        const state = { ...body.state, settings: { ...settings, clinic: { ...settings.clinic, name } } };
        return bench.enact(kept.value, changed(body, state, bench.sign('renamed')));
      }),
    openDemo: (options) => bench.inTurn(() => openDemo(options?.withoutConditions === true)),
    takeOver: () =>
      bench.inTurn(async () => {
        const here = bench.here();
        if (here === undefined) return err(errors.noClinic);
        await here.seat.takeOver();
        const shown = await bench.show(here.id);
        const kept = bench.here()?.kept;
        return shown.ok && kept !== undefined ? bench.enact(kept, logged(kept.body, bench.sign('taken-over'))) : shown;
      }),
  };
};
