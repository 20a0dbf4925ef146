import type { AppError } from '../../../lib/core/app-error';
import type { ImportPlan } from '../../../lib/import/plan';
import type { ImportDifference } from '../../../lib/workspace/workspace';
import type { ImportWork } from './import-work';

/** Where an import stands. Nothing is kept before `keeping`. */
export type ImportState =
  | { readonly kind: 'idle' }
  | {
      readonly kind: 'reading';
      readonly step: 'reading' | 'judging';
      readonly files: number;
      readonly bytes: number;
      /** Where a cancel leads back to; null: to the beginning. */
      readonly before: ImportWork | null;
    }
  | {
      readonly kind: 'mapping';
      readonly work: ImportWork;
      readonly error: AppError | undefined;
      readonly busy: boolean;
    }
  | {
      readonly kind: 'planned';
      readonly work: ImportWork;
      readonly plan: ImportPlan;
      readonly updating: boolean;
      readonly error: AppError | undefined;
    }
  | { readonly kind: 'failed'; readonly error: AppError }
  | { readonly kind: 'keeping'; readonly rows: number; readonly work: ImportWork; readonly plan: ImportPlan }
  | {
      readonly kind: 'done';
      /** Rows that came in, and all that the clinic holds since. */
      readonly rows: number;
      readonly held: number;
      readonly files: number;
      /** The import that was added; null where the clinic held all of its files before. */
      readonly importId: string | null;
      readonly difference: ImportDifference | null;
    };

export const givenBytes = (files: readonly { readonly blob: Blob }[]): number =>
  files.reduce((sum, { blob }) => sum + blob.size, 0);
