import { COLUMNS } from '../import/columns';
import type { Mapping } from '../import/mapping';
import type { ReadTable } from '../import/plan';
import { createRowMapper } from '../import/row-mapper';

/** First rows of a table in canonical columns. */
export interface PreviewRows {
  /** Canonical columns that the mapping fills, in their order. */
  readonly columns: readonly string[];
  /** Cells in the order of `columns`; the line of the file, and the reading's number where one line holds several. */
  readonly rows: readonly { readonly line: number; readonly part: number; readonly cells: readonly string[] }[];
}

/**
 * The first rows of a table as a mapping reads them: the same row mapper that the import runs, on the rows at hand.
 *
 * @param count rows of the file, at most
 */
export const previewRows = (table: ReadTable, mapping: Mapping, count = 5): PreviewRows => {
  const filled = new Set([...mapping.columns, ...mapping.constants].map(({ to }) => to));
  const places = COLUMNS.flatMap(({ name }, place) => (filled.has(name) ? [place] : []));
  const mapper = createRowMapper(mapping, table);
  const headerLine = mapping.headerLine ?? table.profile.headerLine;
  const rows = table.firstRows
    .filter((row) => row.line > headerLine)
    .slice(0, count)
    .flatMap((row) => mapper.map(row))
    .map(({ line, part, cells }) => ({ line, part, cells: places.map((place) => cells[place] ?? '') }));
  return { columns: places.map((place) => COLUMNS[place]?.name ?? ''), rows };
};
