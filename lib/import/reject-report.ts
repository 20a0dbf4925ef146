import type { Engine, Row } from '../engine/types';
import { writeCsv } from '../formats/csv/write-csv';
import { fileColumns } from './file-columns';
import { findingText } from './finding-words';
import { keptRow, keptRowsSource, type KeptRow } from './kept-rows';
import type { FindingKind } from './plan';
import { REPORT_COLUMNS } from './report-columns';

const BATCH = 5_000;

/** What is wrong with a row's cell, and what to do. */
export interface ReportedCell {
  readonly column: string;
  readonly value: string;
  readonly code: string;
  readonly reason: string;
  readonly remedy: string;
}

/** A row that was refused, waits, or holds a cell that is read as something else than it says. */
export interface ReportedRow extends KeptRow {
  readonly cellsSaid: readonly ReportedCell[];
  /** What a corrected row names in `corrects_row`, so that it stands for this one. */
  readonly corrects: string;
}

export interface ReportOptions {
  readonly prefix?: string;
  readonly role?: 'visits' | 'enrolment';
  readonly signal?: AbortSignal | undefined;
}

/** Cells that belong into the report; what the clinic corrected itself does not. */
const reported = (prefix: string): string => `said AS (
  SELECT s.order_no, f.kind, f.code, f.column_name, f.cell, f.became
  FROM ${prefix}finding AS f
  JOIN ${prefix}status AS s ON s.file_no = f.file_no AND s.line_no = f.line_no AND s.part_no = f.part_no
  WHERE s.status IN ('refused', 'held', 'accepted') AND f.code <> 'corrected'
    AND (f.kind IN ('refused', 'question', 'changed') OR f.code = 'unknown_word')
  UNION ALL
  SELECT order_no, 'question', waits_for, 'reading', '', NULL FROM ${prefix}status WHERE status = 'held' AND waits_for IS NOT NULL
)`;

const text = (row: Row, name: string): string => String(row[name] ?? '');

const reportedCell = (row: Row): ReportedCell => {
  const [code, column] = [text(row, 'code'), text(row, 'column_name')];
  const { message, remedy } = findingText(code, column, text(row, 'kind') as FindingKind, text(row, 'became'));
  return { column, value: text(row, 'cell'), code, reason: message, remedy };
};

const correctsOf = (row: Row): string => {
  if (row['corrects_row'] !== null) return text(row, 'corrects_row');
  const table = text(row, 'table_name') === '' ? '' : `:${text(row, 'table_name')}`;
  return `row ${text(row, 'sha256').slice(0, 12)}:${text(row, 'line_no')}:${text(row, 'part_no')}${table}`;
};

/** The rows that were refused, wait or were changed, in batches, each with all that is said about it. */
export async function* reportRows(engine: Engine, options: ReportOptions = {}): AsyncGenerator<readonly ReportedRow[]> {
  const { prefix = '', role = 'visits', signal } = options;
  const [last] = await engine.query(`SELECT MAX(order_no) AS n FROM ${prefix}status`, signal);
  for (let start = 0; start < Number(last?.['n'] ?? 0); start += BATCH) {
    const within = `order_no > ${String(start)} AND order_no <= ${String(start + BATCH)}`;
    const said = await engine.query(
      `WITH ${reported(prefix)} SELECT * FROM said WHERE ${within} ORDER BY order_no, kind, code, column_name`,
      signal,
    );
    if (said.length === 0) continue;
    const byRow = new Map<number, ReportedCell[]>();
    for (const row of said) {
      const cells = byRow.get(Number(row['order_no'])) ?? [];
      byRow.set(Number(row['order_no']), [...cells, reportedCell(row)]);
    }
    const rows = await engine.query(
      `WITH ${reported(prefix)}, kept AS (${keptRowsSource(prefix)})
SELECT * FROM kept WHERE ${within} AND is_enrolment = ${role === 'visits' ? '0' : '1'} AND order_no IN (SELECT order_no FROM said)
ORDER BY order_no`,
      signal,
    );
    yield rows.map((row) => ({
      ...keptRow(row),
      cellsSaid: byRow.get(Number(row['order_no'])) ?? [],
      corrects: correctsOf(row),
    }));
  }
}

const line = ({ row, file }: KeptRow): string => `${file}, line ${String(row.line)}`;

/**
 * The report of rows not accepted or changed as CSV text in pieces: canonical columns as they stand, the unknown ones,
 * and for each row what is wrong and what to do. Corrected in a spreadsheet and imported again, its rows stand for
 * those of the first file.
 */
export async function* rejectReport(engine: Engine, options: ReportOptions = {}): AsyncGenerator<string> {
  const { prefix = '', role = 'visits' } = options;
  const named = await engine.query(`SELECT DISTINCT column_name FROM ${prefix}finding WHERE column_name <> ''`);
  const { canonical, unknown } = await fileColumns(
    engine,
    prefix,
    [
      ...(role === 'visits' ? ['client_id', 'visit_date'] : ['client_id', 'program']),
      'corrects_row',
      ...named.map((row) => text(row, 'column_name')),
    ],
    role,
  );
  let header: readonly string[] | undefined = [...canonical, ...unknown, ...REPORT_COLUMNS];
  for await (const rows of reportRows(engine, options)) {
    const lines = rows.map((reportedRow) => [
      ...canonical.map((name) => (name === 'corrects_row' ? reportedRow.corrects : (reportedRow.cells[name] ?? ''))),
      ...unknown.map((name) => reportedRow.unknown[name] ?? ''),
      line(reportedRow),
      reportedRow.cellsSaid.map(({ column }) => column).join('; '),
      reportedRow.cellsSaid
        .map(({ column, value, reason }) => (value === '' ? reason : `${column} “${value}”: ${reason}`))
        .join(' '),
      [...new Set(reportedRow.cellsSaid.map(({ remedy }) => remedy))].join(' '),
    ]);
    const [first = [], ...rest] = header === undefined ? lines : [header, ...lines];
    header = undefined;
    yield writeCsv(first, rest);
  }
  if (header !== undefined) yield writeCsv(header, []);
}
