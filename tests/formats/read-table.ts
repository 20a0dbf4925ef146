import type { RawRow, RawTable } from '../../lib/formats/raw-table';

export const rowsOf = async (table: RawTable | null | undefined): Promise<readonly RawRow[]> => {
  const rows: RawRow[] = [];
  if (table !== null && table !== undefined) for await (const batch of table.rows()) rows.push(...batch);
  return rows;
};

export const cellsOf = async (table: RawTable | null | undefined): Promise<readonly (readonly unknown[])[]> =>
  (await rowsOf(table)).map(({ cells }) => cells);
