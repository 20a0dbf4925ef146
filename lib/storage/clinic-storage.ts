/**
 * Where a clinic is kept: files by their content, and one manifest that is swapped as a whole. The order of a commit is
 * blob, read back, manifest; a crash leaves the old manifest and at most a file that nobody names.
 */
export interface ClinicStorage {
  /** The manifest as it was last swapped in; undefined at the very first start. */
  readManifest(): Promise<unknown>;
  /** Swaps the manifest when the kept revision is the expected one (0: none yet). False: another tab was faster. */
  swapManifest(expectedRevision: number, manifest: { readonly revision: number }): Promise<boolean>;
  /** Keeps bytes under their SHA-256 and reads them back; rejects when they cannot be kept whole. */
  putBlob(sha256: string, bytes: Uint8Array): Promise<void>;
  /** The bytes with this SHA-256; undefined where they are missing or damaged. */
  getBlob(sha256: string): Promise<Uint8Array | undefined>;
}
