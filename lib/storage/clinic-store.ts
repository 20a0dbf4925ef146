/** What can be known of a kept clinic without opening it. */
export interface ClinicHeader {
  /** Opaque; names no person and no clinic. */
  readonly id: string;
  /** The name that the clinic goes by in lists; it stays readable when the clinic is sealed. */
  readonly name: string;
  /** Version of the body's schema. */
  readonly version: number;
  /** Goes up by one with every change. */
  readonly revision: number;
  /** The body is sealed with a passphrase. */
  readonly sealed: boolean;
  readonly changedAt: string;
}

/** A clinic's manifest: its header, and its body as plain data, or as sealed bytes. */
export interface StoredClinic extends ClinicHeader {
  readonly body: unknown;
}

/** Why a clinic was not swapped in. `newer`: another tab of a newer app wrote it. */
export type SwapResult = 'swapped' | 'changed-meanwhile' | 'newer' | 'gone';

/** How much the browser lets the app keep. */
export interface StorageRoom {
  readonly usedBytes: number | null;
  readonly quotaBytes: number | null;
  /** Whether the browser promised not to clear it by itself. */
  readonly persisted: boolean;
}

/**
 * Why something could not be kept or read: the use cases turn it into words.
 *
 * - `denied`: this browser lets the page keep nothing
 * - `full`: no room; what was kept before is whole
 * - `damaged`: what is kept cannot be read
 * - `cleared`: the storage went away while the page was open
 * - `changed`: the bytes that were given to keep are not those of their name (the file changed since it was read)
 * - `newer`: a newer version of the app has taken the storage over; this page has to be loaded again
 */
export type StorageFault = 'denied' | 'full' | 'damaged' | 'cleared' | 'changed' | 'newer' | 'failed';

export class StorageError extends Error {
  override readonly name = 'StorageError';
  constructor(
    readonly fault: StorageFault,
    message: string,
  ) {
    super(message);
  }
}

/** A kept file, as a list of files tells it. */
export interface KeptBlob {
  readonly name: string;
  readonly bytes: number;
  /** When it was kept, in milliseconds since 1970. */
  readonly keptAt: number;
}

/**
 * Files by their content. A name is the SHA-256 of the bytes, or a sealed name (`sealedName`) for a file that a sealed
 * clinic keeps. Everything rejects with a `StorageError`, or with the signal's reason.
 */
export interface BlobStore {
  /** Keeps bytes as a stream and reads them back; rejects where they cannot be kept whole. */
  putBlob(name: string, blob: Blob, signal?: AbortSignal): Promise<void>;
  /** The bytes with this SHA-256, verified; undefined where they are missing or damaged. A sealed one is verified when opened. */
  getBlob(name: string): Promise<Blob | undefined>;
  removeBlob(name: string): Promise<void>;
  blobs(): Promise<readonly KeptBlob[]>;
}

/**
 * Where clinics are kept: files by their content, and one manifest for each clinic that is swapped as a whole. The order
 * of a commit is blob, read back, manifest; a crash leaves the old manifest and at most a file that nobody names.
 * Everything rejects with a `StorageError`, or with the signal's reason.
 */
export interface ClinicStore extends BlobStore {
  list(): Promise<readonly ClinicHeader[]>;
  read(id: string): Promise<StoredClinic | undefined>;
  /** Swaps a manifest when the kept revision is the expected one (0: none yet). `next.revision` must be expected + 1. */
  swap(expectedRevision: number, next: StoredClinic): Promise<SwapResult>;
  remove(id: string): Promise<void>;
  /** Which clinic was open last; undefined at the very first start. */
  lastOpen(): Promise<string | undefined>;
  setLastOpen(id: string): Promise<void>;
  /** When the list of clinics was begun, in milliseconds since 1970: a file that is older outlived a lost list. */
  begunAt(): Promise<number>;

  room(): Promise<StorageRoom>;
  /** Asks the browser not to clear what is kept; whether it agreed. */
  persist(): Promise<boolean>;
}
