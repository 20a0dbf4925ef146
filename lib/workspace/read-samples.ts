import { COLUMNS } from '../import/columns';
import type { ColumnMapping } from '../import/mapping';
import { createRowMapper } from '../import/row-mapper';

/**
 * What sample cells of one source column would be as a canonical column, by the row mapper that the import runs; '' where
 * a cell would be unknown.
 */
export const readSamples = (column: Omit<ColumnMapping, 'from'>, samples: readonly string[]): readonly string[] => {
  const place = COLUMNS.findIndex(({ name }) => name === column.to);
  const { reading: _reading, ...rest } = column;
  const mapper = createRowMapper({
    version: 1,
    role: 'visits',
    header: ['sample'],
    headerLine: null,
    columns: [{ ...rest, from: [0] }],
    constants: [],
  });
  return samples.map((sample, index) => mapper.map({ line: index + 2, cells: [sample] })[0]?.cells[place] ?? '');
};
