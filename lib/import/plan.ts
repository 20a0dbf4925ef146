import type { AppError } from '../core/app-error';
import type { IsoDate } from '../core/iso-date';
import type { RawFormat, RawRow } from '../formats/raw-table';
import type { ColumnSuggestion, Mapping, MappingQuestion, TableProfile } from './mapping';

/** What import makes of a row or a cell. `changed`: read as something else than it says, by a rule or a person. */
export type FindingKind = 'refused' | 'question' | 'warning' | 'duplicate' | 'changed' | 'set-aside' | 'erased';

/**
 * Where a row stands: the source is `<import id>/<file number>/<table name>` (0 = first file), the line that of the
 * file, the part 0, or the reading's number where one line holds several readings.
 */
export interface RowRef {
  readonly source: string;
  readonly line: number;
  readonly part: number;
}

/** One cell (or row) about which the plan has something to say. */
export interface Finding {
  readonly kind: FindingKind;
  readonly file: string;
  readonly row: RowRef;
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

/** One table of a file, as the plan reads it. */
export interface PlannedFile {
  /** The file's name, with the table's in brackets where it holds several. */
  readonly name: string;
  readonly source: string;
  readonly sha256: string;
  readonly bytes: number;
  readonly rows: number;
  /** Records that the file itself calls withdrawn (entered in error, cancelled): they are no rows. */
  readonly leftOut?: number;
  readonly format: RawFormat;
  readonly encoding: string;
  readonly delimiter: string;
  readonly columns: readonly string[];
  /** Kept verbatim, not used. */
  readonly unknownColumns: readonly string[];
  /** Condition columns that the file does not have or that are empty in every row. */
  readonly missingConditions: readonly string[];
  readonly mapping: Mapping;
  /** Whether this file came with this import (false: kept earlier). */
  readonly isNew: boolean;
  /**
   * Columns whose every cell was converted, e.g. from pounds, and words for a missing value that were read as unknown
   * (`to` is ''); so many cells each.
   */
  readonly conversions: readonly {
    readonly column: string;
    readonly from: string;
    readonly to: string;
    readonly cells: number;
  }[];
}

/** Conditions that no row of a site records, over the days given: what a written procedure could stand for. */
export interface MissingConditions {
  readonly site: string | null;
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly visits: number;
  /** Condition columns that are empty there. */
  readonly columns: readonly string[];
  /** The declared procedure that covers these days and leaves the columns out: its place among the answers. */
  readonly declaredBy: number | null;
}

/** What only a person can say about somebody; rows stay accepted, each choice is kept in the settings' answers. */
export type PersonQuestion =
  | {
      readonly kind: 'similar-ids';
      readonly ids: readonly { readonly id: string; readonly visits: number }[];
      readonly why: 'spelling' | 'name-and-birth';
    }
  | {
      readonly kind: 'birth-dates';
      readonly client: string;
      readonly dates: readonly { readonly date: string; readonly visits: number }[];
    }
  | {
      readonly kind: 'sexes';
      readonly client: string;
      readonly sexes: readonly { readonly sex: string; readonly visits: number }[];
    }
  | {
      readonly kind: 'heights';
      readonly client: string;
      readonly medianCm: number;
      readonly heights: readonly { readonly cm: number; readonly visits: number; readonly firstDate: string }[];
    };

/** Rows that describe one reading and differ, or one reading number given twice: the later row waits. */
export interface ReadingQuestion {
  readonly kind: 'same-figures' | 'same-number';
  /** What an answer names beside client and day: the reading's circumstances and figures, the same when the file comes again. */
  readonly key: string;
  readonly client: string;
  readonly visitDate: string;
  readonly rows: readonly { readonly row: RowRef; readonly file: string; readonly line: number }[];
  /** Columns in which they differ, with the cells in the rows' order. */
  readonly differs: readonly { readonly column: string; readonly cells: readonly string[] }[];
}

/** What an import would do. A commit does exactly this. rows = accepted + held + duplicates + refused + setAside + erased. */
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
  /** Rows that a person set aside. */
  readonly setAside: number;
  /** Rows of people who were erased: they stay out. */
  readonly erased: number;
  readonly warnings: number;
  /** Cells that say something else than their file, by a correction of the clinic. */
  readonly corrected: number;
  /** Rows of enrolment files that were used; they are among the accepted ones. */
  readonly enrolments: number;
  readonly findings: readonly Finding[];
  /** Of so many findings; the plan lists at most 20,000. */
  readonly findingCount: number;
  readonly people: readonly PersonQuestion[];
  readonly readings: readonly ReadingQuestion[];
  readonly missingConditions: readonly MissingConditions[];
  readonly clients: number;
  readonly firstVisit: IsoDate | null;
  readonly lastVisit: IsoDate | null;
  /** Visits marked `precision`, by distinct client and day: whether the error can be measured here. */
  readonly precisionVisits: number;
  /** Whether any accepted row holds R and Xc. */
  readonly hasImpedance: boolean;
  /** Hash of all that decides the committed rows: files, mappings, answers, overlays. A commit recomputes and compares it. */
  readonly fingerprint: string;
}

/** A table of the given files, before it is planned. */
export interface ReadTable {
  /** The table's name in its file; '' where the file is one table. */
  readonly table: string;
  readonly format: RawFormat;
  readonly encoding: string;
  readonly delimiter: string;
  readonly profile: TableProfile;
  /** The table's first rows as they stand, preamble and header among them, at most 20: for the screen. */
  readonly firstRows: readonly RawRow[];
  readonly mapping: Mapping;
  readonly suggestions: readonly ColumnSuggestion[];
  readonly questions: readonly MappingQuestion[];
  /** The mapping was used before for the same header. */
  readonly remembered: boolean;
}
