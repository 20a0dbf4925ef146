import { z } from 'zod';
import type { AppError } from '../core/app-error';
import { backupErrors } from '../core/messages/en/backup-errors';
import { workspaceErrors } from '../core/messages/en/workspace-errors';
import type { LongStep } from '../core/progress';
import { err, ok, type Result } from '../core/result';
import { pack } from '../storage/pack';
import { unpack, type Unpacked } from '../storage/unpack';
import type { ClinicKeeper, KeptClinic } from './clinic-keeper';
import { BODY_VERSION, clinicBodySchema, type ClinicBody } from './clinic-state';
import type { MadeBlob } from './workspace';

/** What a backup and a workspace file hold beside the files: who wrote them, and the clinic without its history. */
const contentSchema = z.strictObject({
  writer: z.string(),
  writtenAt: z.string(),
  /** Names of the saved workspace files that this one holds all of, its own last; none in a backup. */
  versions: z.array(z.string()).default([]),
  body: z.looseObject({ version: z.number() }),
});

/** A clinic read from a file. */
export interface ClinicFile {
  readonly writer: string;
  readonly writtenAt: string;
  readonly versions: readonly string[];
  readonly body: ClinicBody;
  readonly files: Unpacked['files'];
}

const dayOf = (instant: string): string => instant.slice(0, 10);

/** One file of a clinic, with everything that its present state needs; the states before and after stay behind. */
export const packClinic = async (
  keeper: ClinicKeeper,
  { header, body }: KeptClinic,
  about: {
    readonly kind: 'backup' | 'workspace';
    readonly writer: string;
    readonly at: string;
    readonly versions: readonly string[];
  },
  sealing: { readonly passphrase: string | null; readonly workFactor?: number },
  step: LongStep,
): Promise<Result<MadeBlob, AppError>> => {
  const { imports } = body.state;
  const named = new Map(imports.flatMap((entry) => entry.files.map((file) => [file.sha256, file.name])));
  const blobs = keeper.blobsOf(header);
  const files: { readonly sha256: string; readonly blob: Blob }[] = [];
  for (const [sha256, name] of named) {
    const blob = await blobs.getBlob(sha256);
    if (blob === undefined) return err(workspaceErrors.fileMissing(name));
    files.push({ sha256, blob });
  }
  const content = {
    writer: about.writer,
    writtenAt: about.at,
    versions: about.versions,
    body: { ...body, past: [], future: [], shared: null },
  };
  const counts = { imports: imports.length, files: files.length, notes: body.state.notes.length };
  const blob = await pack({ madeAt: about.at, counts, clinic: content, files }, { ...sealing, ...step });
  const ending = sealing.passphrase === null ? 'zip' : 'zip.age';
  return ok({ name: `driftline-${about.kind}-${dayOf(about.at)}.${ending}`, blob });
};

/** A clinic out of a backup or a workspace file; every byte of it was checked. */
export const readClinicFile = async (
  file: Blob,
  passphrase: string | null,
  step: LongStep,
): Promise<Result<ClinicFile, AppError>> => {
  const unpacked = await unpack(file, { passphrase, ...step });
  if (!unpacked.ok) return err(backupErrors[unpacked.error]);
  const content = contentSchema.safeParse(unpacked.value.clinic);
  if (!content.success) return err(backupErrors.damaged);
  if (content.data.body.version > BODY_VERSION) return err(backupErrors.newer);
  const body = clinicBodySchema.safeParse(content.data.body);
  if (!body.success) return err(backupErrors.damaged);
  const { writer, writtenAt, versions } = content.data;
  return ok({ writer, writtenAt, versions, body: body.data, files: unpacked.value.files });
};
