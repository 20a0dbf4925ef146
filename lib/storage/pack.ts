import { blobPieces } from './blob-pieces';
import { Deflate } from 'fflate';
import type { LongStep } from '../core/progress';
import {
  BACKUP_FORMAT,
  BACKUP_VERSION,
  blobEntryName,
  CLINIC_NAME,
  HEAD_NAME,
  trailer,
  TRAILER_BYTES,
  type BackupHead,
} from './backup-format';
import { blobFromStream } from './blob-from-stream';
import { StorageError } from './clinic-store';
import { sealStream } from './seal';
import { sha256InPieces, sha256OfBlob } from './sha256-of-blob';
import {
  centralHeader,
  crc32,
  endRecord,
  localHeader,
  ZIP_ENTRIES_LIMIT,
  ZIP_LIMIT,
  type ZipEntry,
} from './zip-layout';

/** What goes into a backup. */
export interface PackInput {
  readonly madeAt: string;
  readonly counts: Readonly<Record<string, number>>;
  /** The clinic's header and open body, as JSON. */
  readonly clinic: unknown;
  /** Every file that the clinic names, verified (`ClinicStore.getBlob`). */
  readonly files: readonly { readonly sha256: string; readonly blob: Blob }[];
}

interface PackOptions extends LongStep {
  /** Null leaves the backup in the open. */
  readonly passphrase: string | null;
  readonly workFactor?: number;
}

/** Binary logarithm of scrypt's cost for a file that leaves the house: age's own default. */
const BACKUP_WORK_FACTOR = 18;
// A table packs five to ten times smaller at every level; the quickest is the one that a large clinic waits for.
const LEVEL = 1;

interface Packed {
  readonly entry: ZipEntry;
  readonly packed: Blob;
  readonly sha256: string;
}

const packOne = async (name: string, plain: Blob, offset: number, signal?: AbortSignal): Promise<Packed> => {
  const deflate = new Deflate({ level: LEVEL });
  const hash = sha256InPieces();
  let crc = 0;
  const packing = new TransformStream<Uint8Array, Uint8Array>({
    start: (controller) => {
      deflate.ondata = (chunk) => {
        controller.enqueue(chunk);
      };
    },
    transform: (chunk) => {
      hash.update(chunk);
      crc = crc32(chunk, crc);
      deflate.push(chunk);
    },
    flush: () => {
      deflate.push(new Uint8Array(), true);
    },
  });
  const packed = await blobFromStream(blobPieces(plain).pipeThrough(packing), signal);
  const entry = { name, crc32: crc, packedBytes: packed.size, bytes: plain.size, offset };
  return { entry, packed, sha256: hash.digest() };
};

const tooLarge = () => new StorageError('failed', 'the clinic is too large for one backup file (4 GiB)');

/**
 * One file of a clinic: a zip (entries `driftline.json`, `clinic.json`, `blobs/<SHA-256>`, all deflated; comment: the
 * SHA-256 of every byte before it), sealed as an age file where a passphrase is given. It is made of Blobs, piece by
 * piece: no file is in memory as a whole.
 *
 * @throws StorageError `changed` where a file is not the one its name says, `failed` beyond 4 GiB; the signal's reason
 */
export const pack = async (input: PackInput, options: PackOptions): Promise<Blob> => {
  const { passphrase, workFactor = BACKUP_WORK_FACTOR, signal, onProgress } = options;
  const clinic = new Blob([JSON.stringify(input.clinic)]);
  const files = input.files.map(({ sha256, blob }) => ({ name: blobEntryName(sha256), sha256, blob }));
  const contents = [{ name: CLINIC_NAME, sha256: await sha256OfBlob(clinic), blob: clinic }, ...files];
  const head: BackupHead = {
    format: BACKUP_FORMAT,
    version: BACKUP_VERSION,
    madeAt: input.madeAt,
    counts: input.counts,
    entries: contents.map(({ name, sha256, blob }) => ({ name, bytes: blob.size, sha256 })),
  };
  const headBlob = new Blob([JSON.stringify(head)]);
  const all = [{ name: HEAD_NAME, sha256: await sha256OfBlob(headBlob), blob: headBlob }, ...contents];
  if (all.length > ZIP_ENTRIES_LIMIT) throw tooLarge();

  const totalBytes = all.reduce((sum, { blob }) => sum + blob.size, 0);
  const parts: (Blob | Uint8Array<ArrayBuffer>)[] = [];
  const entries: ZipEntry[] = [];
  let offset = 0;
  let done = 0;
  for (const { name, sha256, blob } of all) {
    const { entry, packed, sha256: found } = await packOne(name, blob, offset, signal);
    if (found !== sha256) throw new StorageError('changed', `${name} is not what its name says`);
    const header = localHeader(entry);
    parts.push(header, packed);
    entries.push(entry);
    offset += header.length + packed.size;
    done += blob.size;
    if (offset > ZIP_LIMIT || blob.size > ZIP_LIMIT) throw tooLarge();
    onProgress?.({ step: 'packing', file: name, bytes: done, totalBytes, rows: 0 });
  }
  const directory = entries.map(centralHeader);
  const directoryBytes = directory.reduce((sum, { length }) => sum + length, 0);
  const body = new Blob([
    ...parts,
    ...directory,
    endRecord(entries.length, { offset, bytes: directoryBytes }, TRAILER_BYTES),
  ]);
  if (body.size > ZIP_LIMIT) throw tooLarge();
  const whole = new Blob([body, trailer(await sha256OfBlob(body, signal))], { type: 'application/zip' });
  if (passphrase === null) return whole;
  return blobFromStream(await sealStream(blobPieces(whole), { passphrase }, workFactor), signal);
};
