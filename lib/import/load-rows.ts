import Papa from 'papaparse';
import type { Engine } from '../engine/types';
import { COLUMNS } from './columns';
import type { ReadFile } from './read-file';

const CHUNK = 50_000;
const HEADER = ['file_no', 'line_no', 'extra', ...COLUMNS.map((column) => column.name)];

/** Puts the rows of all files into `<prefix>raw`, every cell as text. */
export const loadRows = async (engine: Engine, prefix: string, files: readonly ReadFile[]): Promise<void> => {
  const columns = HEADER.map((name) => `${name} ${name.endsWith('_no') ? 'INTEGER' : 'VARCHAR'}`).join(', ');
  await engine.run(`CREATE OR REPLACE TABLE ${prefix}raw (${columns})`);
  const types = HEADER.map((name) => `'${name}': 'VARCHAR'`).join(', ');
  for (const [index, file] of files.entries()) {
    for (let start = 0; start < file.rows.length; start += CHUNK) {
      const rows = file.rows
        .slice(start, start + CHUNK)
        .map((row) => [String(index + 1), String(row.line), row.extra, ...row.cells]);
      const text = Papa.unparse([HEADER, ...rows], { quotes: true, newline: '\n' });
      const name = `${prefix}rows.csv`;
      const path = await engine.addFile(name, new TextEncoder().encode(text));
      await engine.run(
        `INSERT INTO ${prefix}raw SELECT * REPLACE (CAST(file_no AS INTEGER) AS file_no, CAST(line_no AS INTEGER) AS line_no)
FROM read_csv('${path}', columns = {${types}}, header = true, delim = ',', quote = '"', escape = '"', auto_detect = false, max_line_size = 16777216)`,
      );
      await engine.removeFile(name);
    }
  }
};
