import type { AppError } from '../core/app-error';
import type { IsoDate } from '../core/iso-date';
import type { LongStep } from '../core/progress';
import type { RawTable } from '../formats/raw-table';
import type { Mapping } from './mapping';
import type { RowRef } from './plan';

/** One table to be judged, with the mapping that makes its rows canonical. Nothing of it is in memory. */
export interface ImportInput {
  /** `<import id>/<file number>/<table name>`: what a row reference names. */
  readonly source: string;
  /** The file's name, with the table's in brackets where it holds several. */
  readonly name: string;
  readonly sha256: string;
  readonly bytes: number;
  readonly table: RawTable;
  readonly mapping: Mapping;
  readonly isNew: boolean;
  /** No visit of the table may lie after this day. */
  readonly importedOn: IsoDate;
}

/** What people answered to the questions of an import. */
export interface ImportAnswers {
  readonly aliases: readonly { readonly id: string; readonly client: string }[];
  readonly farOff: readonly {
    readonly client: string;
    readonly visitDate: string;
    readonly column: string;
    readonly value: string;
    readonly decision: 'keep' | 'refuse';
  }[];
  /** Of readings that came twice; without a key for every question of that day. */
  readonly readings: readonly {
    readonly client: string;
    readonly visitDate: string;
    readonly key: string | null;
    readonly decision: 'first' | 'last' | 'all';
  }[];
  readonly differentClients: readonly (readonly string[])[];
  readonly birthDates: readonly string[];
  readonly sexes: readonly string[];
  readonly heights: readonly string[];
  /** Condition columns that a written procedure stands for. */
  readonly procedures: readonly {
    readonly site: string | null;
    readonly from: string | null;
    readonly to: string | null;
    readonly columns: readonly string[];
  }[];
  /** Sites (null = visits that name none) and days at which there was none by answer. */
  readonly withoutProcedure: readonly {
    readonly site: string | null;
    readonly from: string | null;
    readonly to: string | null;
  }[];
}

/** A clinic that has answered nothing. */
export const NO_ANSWERS: ImportAnswers = {
  aliases: [],
  farOff: [],
  readings: [],
  differentClients: [],
  birthDates: [],
  sexes: [],
  heights: [],
  procedures: [],
  withoutProcedure: [],
};

export interface JudgeOptions extends LongStep {
  readonly today: IsoDate;
  readonly answers: ImportAnswers;
  /** Cells that are read as something else than their file says. */
  readonly corrections: readonly { readonly row: RowRef; readonly column: string; readonly to: string }[];
  readonly setAside: readonly RowRef[];
  /** People who were erased: asked once for every distinct id. */
  readonly erased: { isErased(clientId: string): boolean } | null;
  readonly acceptQuestions?: boolean | undefined;
  readonly ignoredColumns?: ReadonlySet<string> | undefined;
  /** Prefix of the tables, so that a preview leaves an open clinic alone. */
  readonly prefix: string;
  /** Files that could not even be opened: named in the plan. */
  readonly failedFiles?: readonly { readonly name: string; readonly error: AppError }[] | undefined;
}
