/** One member of a zip archive, as its central directory describes it. */
export interface ZipEntry {
  /** Path inside the archive, folders divided by `/`; a folder itself ends with one. */
  readonly path: string;
  readonly isEncrypted: boolean;
  /** 0 = stored, 8 = deflated; others are not read. */
  readonly method: number;
  readonly crc32: number;
  readonly packedBytes: number;
  readonly bytes: number;
  /** Where its local header begins. */
  readonly offset: number;
}
