import type { AppError } from '../core/app-error';
import { parseIsoDate, type IsoDate } from '../core/iso-date';
import { err, ok, type Result } from '../core/result';
import type { Engine, Row } from '../engine/types';
import { COLUMNS, CONDITION_COLUMNS } from './columns';
import { findingText } from './finding-words';
import { loadRows } from './load-rows';
import type { Finding, FindingKind, ImportPlan, PlannedFile } from './plan';
import { readFile, type ReadFile } from './read-file';
import { sha256 } from '../core/sha256';
import { statusStatements } from './status-sql';
import { verdictStatements } from './verdict-sql';

/** What people answered to the questions of an import. */
export interface ImportAnswers {
  readonly aliases: readonly { readonly id: string; readonly client: string }[];
  readonly farOff: readonly {
    readonly client: string;
    readonly visitDate: string;
    readonly column: string;
    readonly value: string;
    readonly decision: 'keep' | 'refuse';
  }[];
}

export interface JudgeOptions {
  readonly today: IsoDate;
  readonly answers: ImportAnswers;
  readonly acceptQuestions?: boolean;
  readonly ignoredColumns?: ReadonlySet<string>;
  /** Prefix of the tables, so that a preview leaves an open clinic alone. */
  readonly prefix: string;
}

const text = (row: Row, name: string): string => String(row[name] ?? '');

const prepare = async (engine: Engine, options: JudgeOptions): Promise<void> => {
  const { prefix, answers } = options;
  await engine.run(`CREATE OR REPLACE TABLE ${prefix}today (today DATE, accept_questions INTEGER)`);
  await engine.insert(
    `${prefix}today`,
    ['today', 'accept_questions'],
    [[options.today, options.acceptQuestions === true ? 1 : 0]],
  );
  await engine.run(
    `CREATE OR REPLACE TABLE ${prefix}answers (client TEXT, visit_date TEXT, column_name TEXT, cell TEXT, decision TEXT)`,
  );
  await engine.insert(
    `${prefix}answers`,
    ['client', 'visit_date', 'column_name', 'cell', 'decision'],
    answers.farOff.map((answer) => [answer.client, answer.visitDate, answer.column, answer.value, answer.decision]),
  );
  await engine.run(`CREATE OR REPLACE TABLE ${prefix}aliases (id TEXT, client TEXT)`);
  await engine.insert(
    `${prefix}aliases`,
    ['id', 'client'],
    answers.aliases.map((alias) => [alias.id, alias.client]),
  );
};

const rowFindings = async (engine: Engine, prefix: string, files: readonly ReadFile[]): Promise<readonly Finding[]> => {
  const rows =
    await engine.query(`SELECT f.file_no, f.line_no, f.kind, f.code, f.column_name, f.cell, f.client_id, f.visit_date
FROM ${prefix}finding AS f
JOIN ${prefix}status AS s ON s.file_no = f.file_no AND s.line_no = f.line_no
WHERE f.kind = 'refused' OR s.status IN ('accepted', 'held')
UNION ALL
SELECT s.file_no, s.line_no, 'duplicate', 'duplicate', 'client_id', t.client_id, t.client_id, t.visit_date
FROM ${prefix}status AS s JOIN ${prefix}typed AS t ON t.file_no = s.file_no AND t.line_no = s.line_no
WHERE s.status = 'duplicate'
ORDER BY 1, 2, 3, 4, 5`);
  return rows.map((row) => ({
    kind: text(row, 'kind') as FindingKind,
    file: files[Number(row['file_no']) - 1]?.name ?? '',
    line: Number(row['line_no']),
    column: text(row, 'column_name'),
    value: text(row, 'cell'),
    code: text(row, 'code'),
    ...findingText(text(row, 'code'), text(row, 'column_name'), text(row, 'kind') as FindingKind),
    client: row['client_id'] === null ? null : text(row, 'client_id'),
    visitDate: row['visit_date'] === null ? null : text(row, 'visit_date'),
  }));
};

const raggedFindings = (file: ReadFile): readonly Finding[] =>
  file.ragged.map((record) => ({
    kind: 'refused',
    file: file.name,
    line: record.line,
    column: '',
    value: record.excerpt,
    code: record.code,
    ...findingText(record.code, ''),
    client: null,
    visitDate: null,
  }));

const plannedFile = async (file: ReadFile, bytes: Uint8Array): Promise<PlannedFile> => {
  const filled = (name: string): boolean => {
    const place = COLUMNS.findIndex((column) => column.name === name);
    return file.rows.some((row) => (row.cells[place] ?? '').trim() !== '');
  };
  return {
    name: file.name,
    sha256: await sha256(bytes),
    bytes: bytes.byteLength,
    rows: file.rows.length + file.ragged.length,
    encoding: file.encoding,
    delimiter: file.delimiter,
    columns: file.columns,
    unknownColumns: file.unknownColumns,
    missingConditions: CONDITION_COLUMNS.filter((name) => !filled(name)),
  };
};

/**
 * Judges visit exports: reads them, puts every row into the engine and decides its state. Leaves `<prefix>typed`,
 * `<prefix>status`, `<prefix>finding` and `<prefix>aliases` behind. Fails only when no file could be read.
 */
export const judge = async (
  engine: Engine,
  given: readonly { readonly name: string; readonly bytes: Uint8Array }[],
  options: JudgeOptions,
): Promise<Result<ImportPlan, AppError>> => {
  const { prefix } = options;
  const read = given.map((file) => ({ ...file, result: readFile(file.name, file.bytes, options.ignoredColumns) }));
  const failedFiles = read.flatMap(({ name, result }) => (result.ok ? [] : [{ name, error: result.error }]));
  const readable = read.flatMap(({ bytes, result }) => (result.ok ? [{ bytes, file: result.value }] : []));
  const [firstFailed] = failedFiles;
  if (readable.length === 0 && firstFailed !== undefined) return err(firstFailed.error);
  const files = readable.map(({ file }) => file);
  await loadRows(engine, prefix, files);
  await prepare(engine, options);
  for (const statement of [...verdictStatements(prefix), ...statusStatements(prefix)]) await engine.run(statement);
  const findings = [...files.flatMap(raggedFindings), ...(await rowFindings(engine, prefix, files))];
  const [counts] = await engine.query(`SELECT COUNT(*) AS n,
  COUNT(*) FILTER (WHERE s.status = 'accepted') AS accepted, COUNT(*) FILTER (WHERE s.status = 'held') AS held,
  COUNT(*) FILTER (WHERE s.status = 'duplicate') AS duplicates, COUNT(*) FILTER (WHERE s.status = 'refused') AS refused,
  COUNT(DISTINCT CASE WHEN s.status = 'accepted' THEN COALESCE(a.client, t.client_id) END) AS clients,
  MIN(CASE WHEN s.status = 'accepted' THEN t.v_visit_date END) AS first_visit,
  MAX(CASE WHEN s.status = 'accepted' THEN t.v_visit_date END) AS last_visit
FROM ${prefix}status AS s JOIN ${prefix}typed AS t ON t.file_no = s.file_no AND t.line_no = s.line_no
LEFT JOIN ${prefix}aliases AS a ON a.id = t.client_id`);
  const count = (name: string): number => Number(counts?.[name] ?? 0);
  const ragged = files.reduce((total, file) => total + file.ragged.length, 0);
  const date = (name: string): IsoDate | null => parseIsoDate(String(counts?.[name] ?? '')) ?? null;
  return ok({
    files: await Promise.all(readable.map(({ file, bytes }) => plannedFile(file, bytes))),
    failedFiles,
    today: options.today,
    rows: count('n') + ragged,
    accepted: count('accepted'),
    held: count('held'),
    duplicates: count('duplicates'),
    refused: count('refused') + ragged,
    warnings: findings.filter((finding) => finding.kind === 'warning').length,
    findings,
    clients: count('clients'),
    firstVisit: date('first_visit'),
    lastVisit: date('last_visit'),
  });
};
