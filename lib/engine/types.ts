/** What a cell of a result can be. Dates arrive as `YYYY-MM-DD` text, whole numbers as numbers. */
export type Cell = string | number | boolean | null;

export type Row = Readonly<Record<string, Cell>>;

/** One database. The pipeline speaks to nothing else. */
export interface Engine {
  readonly dialect: 'duckdb' | 'postgres';
  /** Runs statements that return nothing. Values never stand in the text. */
  run(sql: string): Promise<void>;
  /** Runs one query and returns its rows; rejects with an AbortError when the signal fires. */
  query(sql: string, signal?: AbortSignal): Promise<readonly Row[]>;
  /** Inserts rows through a prepared statement; the columns' types are the table's. */
  insert(table: string, columns: readonly string[], rows: readonly (readonly Cell[])[]): Promise<void>;
  /** Makes bytes readable under `import/<name>`; the returned text is the path for SQL. Only DuckDB reads files. */
  addFile(name: string, bytes: Uint8Array): Promise<string>;
  removeFile(name: string): Promise<void>;
  close(): Promise<void>;
}
