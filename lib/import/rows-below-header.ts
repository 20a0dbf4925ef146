import type { RawRow, RawTable, ReadOptions } from '../formats/raw-table';
import type { Mapping } from './mapping';

/** The rows of a table that follow the mapping's header line, in batches; without one those after the first row. */
export async function* rowsBelowHeader(
  table: RawTable,
  mapping: Mapping,
  options: ReadOptions,
): AsyncGenerator<readonly RawRow[]> {
  let header = mapping.headerLine;
  for await (const batch of table.rows(options)) {
    header ??= batch[0]?.line ?? null;
    const last = header;
    yield last === null || (batch[0]?.line ?? 0) > last ? batch : batch.filter((row) => row.line > last);
  }
}
