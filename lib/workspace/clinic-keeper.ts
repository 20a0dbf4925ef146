import { z } from 'zod';
import type { AppError } from '../core/app-error';
import { workspaceErrors } from '../core/messages/en/workspace-errors';
import { err, ok, type Result } from '../core/result';
import {
  StorageError,
  type BlobStore,
  type ClinicHeader,
  type ClinicStore,
  type SwapResult,
} from '../storage/clinic-store';
import { clinicBlobs, keptNames, sealedStore, type Keyring } from '../storage/sealed-store';
import { BODY_VERSION, clinicBodySchema, type ClinicBody } from './clinic-state';
import { keptBlobs } from './kept-blobs';

/** A clinic as it was read from the store, its body opened and understood. */
export interface KeptClinic {
  readonly header: ClinicHeader;
  readonly body: ClinicBody;
}

/** Reads clinics from the store and swaps them in, sealed ones with the keys of this tab. Rejects with a `StorageError`. */
export interface ClinicKeeper {
  readonly keys: Keyring;
  /** Fails with `unknown_clinic`, `newer_manifest`, `unreadable_manifest` or `locked`. */
  read(id: string): Promise<Result<KeptClinic, AppError>>;
  /** Puts the next body in the place of the one it was made from; fails with `other_tab`, `newer_app`, `unknown_clinic`. */
  swap(from: KeptClinic, body: ClinicBody): Promise<Result<KeptClinic, AppError>>;
  /** The header from which a new clinic is swapped in. */
  blank(id: string): ClinicHeader;
  /** The header of the next revision of a clinic. */
  nextHeader(from: ClinicHeader, body: ClinicBody): ClinicHeader;
  /** A clinic's files by their SHA-256. */
  blobsOf(header: ClinicHeader): BlobStore;
  /** The names under which a clinic's files are kept; null where its body cannot be read now. */
  namesOf(header: ClinicHeader): Promise<readonly string[] | null>;
}

const versionSchema = z.looseObject({ version: z.number() });

const understood = (name: string, body: unknown): Result<ClinicBody, AppError> => {
  const version = versionSchema.safeParse(body);
  if (version.success && version.data.version > BODY_VERSION) return err(workspaceErrors.newerManifest(name));
  const parsed = clinicBodySchema.safeParse(body);
  return parsed.success ? ok(parsed.data) : err(workspaceErrors.unreadableManifest(name));
};

/** Why a swap did not happen. */
export const swapFailure = (result: Exclude<SwapResult, 'swapped'>): AppError =>
  ({
    'changed-meanwhile': workspaceErrors.otherTab,
    newer: workspaceErrors.newerApp,
    gone: workspaceErrors.unknownClinic,
  })[result];

export const clinicKeeper = (store: ClinicStore, now: () => string): ClinicKeeper => {
  const keys: Keyring = new Map();
  const opened = sealedStore(store, keys);

  const read: ClinicKeeper['read'] = async (id) => {
    const header = await store.read(id);
    if (header === undefined) return err(workspaceErrors.unknownClinic);
    if (header.version > BODY_VERSION) return err(workspaceErrors.newerManifest(header.name));
    if (header.sealed && !keys.has(id)) return err(workspaceErrors.locked(header.name));
    try {
      const stored = header.sealed ? await opened.read(id) : header;
      if (stored === undefined) return err(workspaceErrors.unknownClinic);
      const { body, ...current } = stored;
      const parsed = understood(current.name, body);
      return parsed.ok ? ok({ header: current, body: parsed.value }) : parsed;
    } catch (reason) {
      if (!(reason instanceof StorageError) || reason.fault !== 'damaged') throw reason;
      // The key may be that of an earlier seal; whoever knows the passphrase finds out.
      keys.delete(id);
      return err(workspaceErrors.locked(header.name));
    }
  };

  const nextHeader: ClinicKeeper['nextHeader'] = (from, body) => ({
    ...from,
    name: body.state.settings.clinic.name,
    version: BODY_VERSION,
    revision: from.revision + 1,
    changedAt: now(),
  });

  const put = async (from: ClinicHeader, body: ClinicBody): Promise<Result<KeptClinic, AppError>> => {
    const header = nextHeader(from, body);
    const result = await opened.swap(from.revision, { ...header, body });
    return result === 'swapped' ? ok({ header, body }) : err(swapFailure(result));
  };

  return {
    keys,
    read,
    swap: (from, body) => put(from.header, body),
    blank: (id) => ({ id, name: '', version: BODY_VERSION, revision: 0, sealed: false, changedAt: now() }),
    nextHeader,
    blobsOf: (header) => clinicBlobs(store, header, keys),
    namesOf: async (header) => {
      const kept = await read(header.id);
      return kept.ok ? keptNames(kept.value.header, [...keptBlobs(kept.value.body)]) : null;
    },
  };
};
