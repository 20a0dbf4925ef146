import type { Engine } from '../engine/types';

const quoted = (cell: string): string => (cell === '' ? '' : `"${cell.replaceAll('"', '""')}"`);

/**
 * Puts rows of text into a new table, every column as text, empty cells as NULL: by a CSV file, which is many times
 * faster than a prepared INSERT.
 */
export const insertTexts = async (
  engine: Engine,
  table: string,
  columns: readonly string[],
  rows: readonly (readonly string[])[],
): Promise<void> => {
  const types = columns.map((name) => `'${name}': 'VARCHAR'`).join(', ');
  const text = [columns, ...rows].map((row) => row.map(quoted).join(',')).join('\n');
  const name = `${table}.csv`;
  const path = await engine.addFile(name, new TextEncoder().encode(`${text}\n`));
  try {
    await engine.run(`CREATE OR REPLACE TABLE ${table} AS SELECT * FROM read_csv('${path}', columns = {${types}},
header = true, delim = ',', quote = '"', escape = '"', auto_detect = false, max_line_size = 16777216)`);
  } finally {
    await engine.removeFile(name);
  }
};
