/**
 * A cell as the file holds it. Text formats give text alone ('' = empty). Typed formats give numbers and booleans where
 * the cell is one; their dates come as ISO text (`YYYY-MM-DD` or `YYYY-MM-DDTHH:MM:SS`), times as `HH:MM:SS`.
 */
export type RawCell = string | number | boolean;

/** One record of a table, with the line on which it begins (1 = first line; a spreadsheet's row; else a running number). */
export interface RawRow {
  readonly line: number;
  readonly cells: readonly RawCell[];
  /** The record's quotes are out of order: its cells are not to be trusted. */
  readonly trouble?: 'broken_quote';
}

export type RawFormat = 'CSV' | 'XLSX' | 'Parquet' | 'XPORT' | 'FHIR' | 'rows';

/** What happens while a table is read. */
export interface ReadOptions {
  readonly signal?: AbortSignal | undefined;
  /** Bytes of what has to be held whole; default: what the reader can hold. */
  readonly limitBytes?: number | undefined;
  /** Bytes of the file that were read so far; called often. */
  readonly onBytes?: ((bytes: number) => void) | undefined;
}

/** One table of a file. Reading it again starts anew; nothing of it is kept in memory but a batch. */
export interface RawTable {
  /** The sheet, or the path inside a zip, or both (`a.zip member/sheet` without the zip's own name); '' where the file is one table. */
  readonly name: string;
  readonly format: RawFormat;
  /** '' where the format has none. */
  readonly encoding: string;
  readonly delimiter: string;
  /** Whether the first row holds the columns' names for sure (Parquet, XPORT, FHIR); else it is looked for. */
  readonly headed: boolean;
  /** Records that the file itself calls withdrawn (FHIR: entered in error, cancelled); they are no rows. */
  readonly leftOut?: number;
  /**
   * The rows in batches, in the file's order, empty lines left out, the header row among them. Rejects with an
   * AbortError when the signal fires, with a `DamagedFile` where the bytes end or break in the middle.
   */
  rows(options?: ReadOptions): AsyncIterable<readonly RawRow[]>;
}

/** A file, or a part of it, has to be held whole and is larger than what is held. */
export class TooLargeFile extends Error {
  override readonly name = 'TooLargeFile';
  constructor(
    readonly what: 'json' | 'workbook',
    readonly limitBytes: number,
  ) {
    super(`the ${what} is larger than ${String(limitBytes)} bytes`);
  }
}

/** The bytes of a file are not what its beginning promised. */
export class DamagedFile extends Error {
  override readonly name = 'DamagedFile';
}
