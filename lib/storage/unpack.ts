import { blobPieces } from './blob-pieces';
import { Inflate } from 'fflate';
import type { LongStep } from '../core/progress';
import { err, ok, type Result } from '../core/result';
import {
  anyVersionSchema,
  BACKUP_VERSION,
  backupHeadSchema,
  blobEntryName,
  CLINIC_NAME,
  HEAD_NAME,
  trailer,
  TRAILER_BYTES,
  type BackupHead,
} from './backup-format';
import { blobFromStream } from './blob-from-stream';
import { isSealed, openStream } from './seal';
import { sha256OfBlob } from './sha256-of-blob';
import {
  END_BYTES,
  isLocalHeader,
  packedRange,
  readCentralDirectory,
  readEndRecord,
  type ZipEntry,
} from './zip-layout';

/**
 * Why a file is refused. `wrong_passphrase` may also be a changed byte in the part that wraps the key; in a sealed file,
 * `damaged` may also be one that was cut short.
 */
export type BackupFault = 'not_a_backup' | 'passphrase_needed' | 'wrong_passphrase' | 'damaged' | 'cut_short' | 'newer';

/** What is in a backup. */
export interface Unpacked {
  readonly madeAt: string;
  readonly counts: Readonly<Record<string, number>>;
  /** What was given to `pack`; not trusted before its schema has read it. */
  readonly clinic: unknown;
  readonly files: readonly {
    readonly sha256: string;
    readonly bytes: number;
    /** The file, verified. */
    open(signal?: AbortSignal): Promise<Result<Blob, 'damaged'>>;
  }[];
}

interface UnpackOptions extends LongStep {
  readonly passphrase: string | null;
}

type Expected = BackupHead['entries'][number];

const bytesOf = async (blob: Blob): Promise<Uint8Array> => new Uint8Array(await blob.arrayBuffer());

/** Unpacks one entry; undefined where it is not well formed or longer than it says. */
const inflate = async (file: Blob, entry: ZipEntry, signal?: AbortSignal): Promise<Blob | undefined> => {
  let bytes = 0;
  const inflater = new Inflate();
  const unpacking = new TransformStream<Uint8Array, Uint8Array>({
    start: (controller) => {
      inflater.ondata = (chunk) => {
        bytes += chunk.length;
        if (bytes > entry.bytes) throw new Error('longer than it says');
        if (chunk.length > 0) controller.enqueue(chunk);
      };
    },
    transform: (chunk) => {
      inflater.push(chunk);
    },
    flush: () => {
      inflater.push(new Uint8Array(), true);
    },
  });
  try {
    return await blobFromStream(blobPieces(file.slice(...packedRange(entry))).pipeThrough(unpacking), signal);
  } catch {
    signal?.throwIfAborted();
    return undefined;
  }
};

const openEntry = async (
  file: Blob,
  entry: ZipEntry,
  expected: Expected,
  signal?: AbortSignal,
): Promise<Result<Blob, 'damaged'>> => {
  const plain = await inflate(file, entry, signal);
  if (plain?.size !== expected.bytes || (await sha256OfBlob(plain, signal)) !== expected.sha256) return err('damaged');
  return ok(plain);
};

const readJson = async (blob: Blob | undefined): Promise<unknown> => {
  try {
    return blob === undefined ? undefined : JSON.parse(await blob.text());
  } catch {
    return undefined;
  }
};

/** The entries of the zip, after every byte was checked against the digest at its end. */
const readEntries = async (file: Blob, signal?: AbortSignal): Promise<Result<readonly ZipEntry[], BackupFault>> => {
  const start = await bytesOf(file.slice(0, 30 + HEAD_NAME.length));
  const ours = isLocalHeader(start) && new TextDecoder().decode(start.subarray(30)) === HEAD_NAME;
  if (!ours) return err('not_a_backup');
  const bodyBytes = file.size - TRAILER_BYTES;
  const endBytes = await bytesOf(file.slice(Math.max(0, bodyBytes - END_BYTES), Math.max(0, bodyBytes)));
  const end = readEndRecord(endBytes);
  const digest = await file.slice(Math.max(0, bodyBytes)).text();
  const hasTrailer = digest.startsWith(trailer(''));
  if (end === undefined) return err(hasTrailer ? 'damaged' : 'cut_short');
  if (digest !== trailer(await sha256OfBlob(file.slice(0, bodyBytes), signal))) return err('damaged');
  const directory = await bytesOf(file.slice(end.offset, end.offset + end.bytes));
  const entries = readCentralDirectory(directory, end.entries);
  return entries === undefined ? err('damaged') : ok(entries);
};

const readOpen = async (file: Blob, { signal }: UnpackOptions): Promise<Result<Unpacked, BackupFault>> => {
  const entries = await readEntries(file, signal);
  if (!entries.ok) return entries;
  const byName = new Map(entries.value.map((entry) => [entry.name, entry]));
  const headEntry = byName.get(HEAD_NAME);
  const json = headEntry && (await readJson(await inflate(file, headEntry, signal)));
  const anyVersion = anyVersionSchema.safeParse(json);
  if (anyVersion.success && anyVersion.data.version > BACKUP_VERSION) return err('newer');
  const head = backupHeadSchema.safeParse(json);
  if (!head.success) return err('damaged');

  const found = head.data.entries.map((expected) => ({ expected, entry: byName.get(expected.name) }));
  const files: Unpacked['files'][number][] = [];
  let clinic: unknown;
  for (const { expected, entry } of found) {
    if (entry?.bytes !== expected.bytes) return err('damaged');
    if (expected.name === CLINIC_NAME) {
      const opened = await openEntry(file, entry, expected, signal);
      if (!opened.ok) return opened;
      clinic = await readJson(opened.value);
    } else if (expected.name === blobEntryName(expected.sha256)) {
      const { sha256, bytes } = expected;
      files.push({ sha256, bytes, open: (stop) => openEntry(file, entry, expected, stop) });
    } else return err('damaged');
  }
  if (clinic === undefined || byName.size !== found.length + 1) return err('damaged');
  return ok({ madeAt: head.data.madeAt, counts: head.data.counts, clinic, files });
};

/**
 * Reads a backup made by `pack`. Every byte of it is checked before anything is told of it: an open one by the digest at
 * its end, a sealed one by its cipher as well. A file in it is unpacked, and checked again, when it is opened.
 *
 * @throws the signal's reason once it is aborted
 */
export const unpack = async (file: Blob, options: UnpackOptions): Promise<Result<Unpacked, BackupFault>> => {
  if (!(await isSealed(file))) return readOpen(file, options);
  if (options.passphrase === null) return err('passphrase_needed');
  const opened = await openStream(blobPieces(file), { passphrase: options.passphrase });
  if (!opened.ok) return opened;
  let plain: Blob;
  try {
    plain = await blobFromStream(opened.value, options.signal);
  } catch {
    options.signal?.throwIfAborted();
    return err('damaged');
  }
  return readOpen(plain, options);
};
