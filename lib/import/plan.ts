import type { AppError } from '../core/app-error';
import type { IsoDate } from '../core/iso-date';

/** What import makes of a row or a cell. */
export type FindingKind = 'refused' | 'question' | 'warning' | 'duplicate';

/** One cell (or row) about which the plan has something to say. */
export interface Finding {
  readonly kind: FindingKind;
  readonly file: string;
  /** Line of the file, 1 = header. */
  readonly line: number;
  readonly column: string;
  readonly value: string;
  readonly code: string;
  readonly message: string;
  readonly remedy: string;
  /** For a question: what an answer in the settings has to name. */
  readonly client: string | null;
  readonly visitDate: string | null;
}

export interface PlannedFile {
  readonly name: string;
  readonly sha256: string;
  readonly bytes: number;
  readonly rows: number;
  readonly encoding: string;
  readonly delimiter: string;
  readonly columns: readonly string[];
  /** Kept verbatim, not used. */
  readonly unknownColumns: readonly string[];
  /** Condition columns that the file does not have or that are empty in every row. */
  readonly missingConditions: readonly string[];
}

/** What an import would do. A commit does exactly this. rows = accepted + held + duplicates + refused. */
export interface ImportPlan {
  readonly files: readonly PlannedFile[];
  /** Files that could not be read at all; the others are planned without them. */
  readonly failedFiles: readonly { readonly name: string; readonly error: AppError }[];
  readonly today: IsoDate;
  readonly rows: number;
  readonly accepted: number;
  readonly held: number;
  readonly duplicates: number;
  readonly refused: number;
  readonly warnings: number;
  readonly findings: readonly Finding[];
  readonly clients: number;
  readonly firstVisit: IsoDate | null;
  readonly lastVisit: IsoDate | null;
}
