import { workspaceErrors as errors } from '../core/messages/en/workspace-errors';
import type { LongStep } from '../core/progress';
import { err, ok, type Result } from '../core/result';
import type { AppError } from '../core/app-error';
import type { StoredClinic, SwapResult } from '../storage/clinic-store';
import type { ClinicKey } from '../storage/seal';
import { openKey, sealContent, sealKey } from '../storage/sealed-body';
import { sealClinic, unsealClinic } from '../storage/seal-clinic';
import { swapFailure, type KeptClinic } from './clinic-keeper';
import type { ClinicBody } from './clinic-state';
import { logged } from './history';
import { keptBlobs } from './kept-blobs';
import { roomFor } from './room-for';
import type { Outcome, Workspace } from './workspace';
import type { Workbench } from './workbench';

/** Sealing a clinic at rest, locking and unlocking it. */
export const sealActs = (bench: Workbench): Pick<Workspace, 'setPassphrase' | 'lock' | 'unlock'> => {
  const { parts, keeper } = bench;
  const { store, tabs } = parts;
  const sealing = parts.workFactor === undefined ? {} : { workFactor: parts.workFactor };

  const keepAs = async (
    from: KeptClinic,
    body: ClinicBody,
    sealed: boolean,
    swap: (next: StoredClinic) => Promise<SwapResult>,
  ): Promise<Result<KeptClinic, AppError>> => {
    const header = { ...keeper.nextHeader(from.header, body), sealed };
    const result = await swap({ ...header, body });
    return result === 'swapped' ? ok({ header, body }) : err(swapFailure(result));
  };

  const seal = async (from: KeptClinic, body: ClinicBody, passphrase: string, step: LongStep) => {
    const names = [...keptBlobs(body)];
    let key: ClinicKey | undefined;
    const kept = await keepAs(from, body, true, async (next) => {
      // Another clinic may come to need an open file while this one is sealed: what goes is looked at afterwards.
      const change = { next, names, alsoNamedElsewhere: new Set(names) };
      const done = await sealClinic(store, change, passphrase, { ...sealing, ...step });
      ({ key } = done);
      return done.swap;
    });
    if (kept.ok && key !== undefined) keeper.keys.set(from.header.id, key);
    return kept;
  };

  const unseal = async (from: KeptClinic, body: ClinicBody, key: ClinicKey, step: LongStep) => {
    const kept = await keepAs(from, body, false, (next) =>
      unsealClinic(store, { next, names: [...keptBlobs(body)], alsoNamedElsewhere: new Set() }, key, step),
    );
    if (kept.ok) keeper.keys.delete(from.header.id);
    return kept;
  };

  const sealAnew = (from: KeptClinic, body: ClinicBody, key: ClinicKey, passphrase: string) =>
    keepAs(from, body, true, async (next) => {
      const sealedKey = await sealKey(key, passphrase, parts.workFactor);
      return store.swap(from.header.revision, { ...next, body: await sealContent(next, key, sealedKey) });
    });

  const setPassphrase = async (passphrase: string | null, step: LongStep): Outcome => {
    const kept = await bench.writable();
    if (!kept.ok) return kept;
    const { header, body } = kept.value;
    const key = keeper.keys.get(header.id);
    if (passphrase === null && key === undefined) return bench.session();
    const code = passphrase === null ? 'unsealed' : key === undefined ? 'sealed' : 'passphrase-changed';
    if (code !== 'passphrase-changed') {
      const full = await roomFor(store, keeper.blobsOf(header), [...keptBlobs(body)]);
      if (full !== undefined) return err(full);
    }
    const keep = (from: KeptClinic, next: ClinicBody): Promise<Result<KeptClinic, AppError>> => {
      if (passphrase === null) return key === undefined ? Promise.resolve(ok(from)) : unseal(from, next, key, step);
      return key === undefined ? seal(from, next, passphrase, step) : sealAnew(from, next, key, passphrase);
    };
    bench.tidyLater();
    return tabs.whileKeeping(() => bench.enact(kept.value, logged(body, bench.sign(code)), { step, keep }));
  };

  return {
    setPassphrase: (passphrase, step = {}) => bench.inTurn(() => setPassphrase(passphrase, step)),
    lock: async () => {
      await bench.inTurn(async () => {
        const here = bench.here();
        if (here === undefined || !keeper.keys.delete(here.id)) return ok(undefined);
        await bench.empty();
        return ok(undefined);
      });
    },
    unlock: (passphrase) =>
      bench.inTurn(async () => {
        const id = bench.here()?.id ?? (await store.lastOpen());
        const stored = id === undefined ? undefined : await store.read(id);
        if (stored === undefined) return err(errors.unknownClinic);
        if (!stored.sealed) return bench.show(stored.id);
        const key = await openKey(stored, passphrase);
        if (!key.ok)
          return err(key.error === 'damaged' ? errors.unreadableManifest(stored.name) : errors.wrongPassphrase);
        keeper.keys.set(stored.id, key.value);
        const shown = await bench.show(stored.id);
        const isDamaged = !shown.ok && shown.error.code === 'locked';
        return isDamaged ? err(errors.unreadableManifest(stored.name)) : shown;
      }),
  };
};
