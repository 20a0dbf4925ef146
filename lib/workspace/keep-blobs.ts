import type { AppError } from '../core/app-error';
import type { LongStep } from '../core/progress';
import { err, type Result } from '../core/result';
import type { ClinicHeader } from '../storage/clinic-store';
import { keptNames } from '../storage/sealed-store';
import { roomForBytes } from './room-for';
import { storageWords } from './storage-words';
import type { Workbench } from './workbench';

/** A file to be kept, with the name that a person knows it by. */
export interface BlobToKeep {
  readonly blob: Blob;
  readonly name?: string;
}

/**
 * Keeps files and then does what names them; asks for room before. Where the second step fails or is stopped, the files
 * that were not there before are removed again, unless a clinic names them by then.
 */
export const keepBlobs = async <T>(
  bench: Workbench,
  header: ClinicHeader,
  files: ReadonlyMap<string, BlobToKeep>,
  step: LongStep,
  name: () => Promise<Result<T, AppError>>,
): Promise<Result<T, AppError>> => {
  const { store, tabs } = bench.parts;
  const blobs = bench.keeper.blobsOf(header);
  return tabs.whileKeeping(async () => {
    const before = new Set((await blobs.blobs()).map((kept) => kept.name));
    const fresh: (BlobToKeep & { readonly sha256: string })[] = [];
    for (const [sha256, file] of files) {
      // A kept file that is damaged is kept anew.
      const isWhole = before.has(sha256) && (await blobs.getBlob(sha256)) !== undefined;
      if (!isWhole) fresh.push({ sha256, ...file });
    }
    const full = await roomForBytes(
      store,
      fresh.reduce((sum, { blob }) => sum + blob.size, 0),
    );
    if (full !== undefined) return err(full);
    const kept: string[] = [];
    const forget = (): void => {
      bench.tidyLater(keptNames(header, kept));
    };
    try {
      for (const { sha256, blob, name: fileName } of fresh) {
        step.signal?.throwIfAborted();
        step.onProgress?.({ step: 'keeping', file: fileName ?? '', bytes: 0, totalBytes: blob.size, rows: 0 });
        kept.push(sha256);
        try {
          await blobs.putBlob(sha256, blob, step.signal);
        } catch (reason) {
          const words = storageWords(reason, fileName ?? '');
          if (words === undefined) throw reason;
          forget();
          return err(words);
        }
      }
      const named = await name();
      if (!named.ok && named.error.code !== 'empty_clinic') forget();
      return named;
    } catch (reason) {
      forget();
      throw reason;
    }
  });
};
