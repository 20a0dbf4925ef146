import type { Engine, Row } from '../engine/types';
import { COLUMNS } from './columns';
import type { RowRef } from './plan';
import { isReportColumn } from './report-columns';

/** A row of the judged files as it stands: its canonical cells with the clinic's corrections, and what was kept unused. */
export interface KeptRow {
  readonly row: RowRef;
  readonly file: string;
  /** accepted, held, refused, duplicate, set-aside; rows of erased people are never given. */
  readonly status: string;
  readonly cells: Readonly<Record<string, string>>;
  /** Cells of the file's unknown columns, by the column's own name. */
  readonly unknown: Readonly<Record<string, string>>;
  /** Columns that say something else than the file, by a correction of the clinic. */
  readonly corrected: readonly string[];
}

const cellsOf = COLUMNS.map(({ name }) =>
  name === 'client_id' ? 'COALESCE(a.client, c.client_id) AS client_id' : `c.${name}`,
);

/** Every row beside its state and file, the client under one id; `k` lists the corrected columns. */
export const keptRowsSource = (
  prefix: string,
): string => `SELECT s.order_no, s.status, s.code, f.source, f.file_name, f.sha256, f.table_name,
  f.unknown_columns, f.is_enrolment, c.file_no, c.line_no, c.part_no, c.extra, k.corrected_columns, ${cellsOf.join(', ')}
FROM ${prefix}status AS s
JOIN ${prefix}cells AS c ON c.file_no = s.file_no AND c.line_no = s.line_no AND c.part_no = s.part_no
JOIN ${prefix}files AS f ON f.file_no = s.file_no
LEFT JOIN ${prefix}aliases AS a ON a.id = c.client_id
LEFT JOIN (SELECT file_no, line_no, part_no, STRING_AGG(column_name, ' ' ORDER BY column_name) AS corrected_columns
  FROM ${prefix}corrections GROUP BY file_no, line_no, part_no) AS k
  ON k.file_no = s.file_no AND k.line_no = s.line_no AND k.part_no = s.part_no
WHERE s.status <> 'erased'`;

const text = (row: Row, name: string): string => String(row[name] ?? '');

export const keptRow = (row: Row): KeptRow => {
  const names = text(row, 'unknown_columns') === '' ? [] : text(row, 'unknown_columns').split('\u001F');
  const extra = text(row, 'extra').split('\u001F');
  return {
    row: { source: text(row, 'source'), line: Number(row['line_no']), part: Number(row['part_no']) },
    file: text(row, 'file_name'),
    status: text(row, 'status'),
    cells: Object.fromEntries(COLUMNS.map(({ name }) => [name, text(row, name)])),
    unknown: Object.fromEntries(
      names.flatMap((name, place) => (isReportColumn(name) ? [] : [[name, extra[place] ?? '']])),
    ),
    corrected: text(row, 'corrected_columns')
      .split(' ')
      .filter((name) => name !== ''),
  };
};

/** All rows of one client, under whatever spelling, in the order of the files. */
export const rowsOfClient = async (engine: Engine, client: string, prefix = ''): Promise<readonly KeptRow[]> => {
  await engine.run(`CREATE OR REPLACE TABLE ${prefix}asked (client TEXT)`);
  await engine.insert(`${prefix}asked`, ['client'], [[client]]);
  const rows = await engine.query(
    `WITH kept AS (${keptRowsSource(prefix)}) SELECT kept.* FROM kept JOIN ${prefix}asked AS q ON q.client = kept.client_id ORDER BY order_no`,
  );
  await engine.run(`DROP TABLE ${prefix}asked`);
  return rows.map(keptRow);
};

const BATCH = 5_000;

/** The accepted rows (readings, or enrolments) in batches, in the order of the files. */
export async function* acceptedRows(
  engine: Engine,
  options: {
    readonly prefix?: string;
    readonly role?: 'visits' | 'enrolment';
    readonly signal?: AbortSignal | undefined;
  } = {},
): AsyncGenerator<readonly KeptRow[]> {
  const { prefix = '', role = 'visits', signal } = options;
  const [last] = await engine.query(`SELECT MAX(order_no) AS n FROM ${prefix}status`, signal);
  for (let start = 0; start < Number(last?.['n'] ?? 0); start += BATCH) {
    const rows = await engine.query(
      `WITH kept AS (${keptRowsSource(prefix)}) SELECT * FROM kept
WHERE status = 'accepted' AND is_enrolment = ${role === 'visits' ? '0' : '1'} AND order_no > ${String(start)} AND order_no <= ${String(start + BATCH)}
ORDER BY order_no`,
      signal,
    );
    if (rows.length > 0) yield rows.map(keptRow);
  }
}
