import type { Engine } from '../engine/types';
import { COLUMNS } from './columns';
import { isReportColumn } from './report-columns';

/** The columns that a file of rows needs: canonical ones that any row fills, and the files' unknown ones by name. */
export const fileColumns = async (
  engine: Engine,
  prefix: string,
  needed: readonly string[],
): Promise<{ readonly canonical: readonly string[]; readonly unknown: readonly string[] }> => {
  const [filled] = await engine.query(
    `SELECT ${COLUMNS.map(({ name }) => `COUNT(${name}) AS ${name}`).join(', ')} FROM ${prefix}cells`,
  );
  const files = await engine.query(`SELECT unknown_columns FROM ${prefix}files ORDER BY file_no`);
  const unknown = files.flatMap((row) => String(row['unknown_columns'] ?? '').split('\u001F'));
  return {
    canonical: COLUMNS.flatMap(({ name }) => (Number(filled?.[name] ?? 0) > 0 || needed.includes(name) ? [name] : [])),
    unknown: [...new Set(unknown)].filter((name) => name !== '' && !isReportColumn(name)),
  };
};
