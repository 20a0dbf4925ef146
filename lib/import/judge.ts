import type { AppError } from '../core/app-error';
import { parseIsoDate, type IsoDate } from '../core/iso-date';
import { err, ok, type Result } from '../core/result';
import type { Engine, Row } from '../engine/types';
import { acceptedStatement } from './accepted-sql';
import { emptyTables } from './cells-sql';
import { CONDITION_COLUMNS } from './columns';
import { fileErrors } from './file-errors';
import { fillAnswers, fillErased } from './fill-answers';
import { findFindings } from './find-findings';
import { findMissingConditions } from './find-missing-conditions';
import { findPeople } from './find-people';
import { findReadingQuestions } from './find-reading-questions';
import type { ImportInput, JudgeOptions } from './import-input';
import { loadRows, type LoadedTable } from './load-rows';
import { planFingerprint } from './plan-fingerprint';
import type { ImportPlan, PlannedFile } from './plan';
import { statusStatements } from './status-sql';

export type { ImportInput, JudgeOptions } from './import-input';

const STATUSES = ['accepted', 'held', 'duplicate', 'refused', 'set-aside', 'erased'];

const countsQuery = (prefix: string): string => `WITH statuses AS (
  SELECT COUNT(*) AS n, ${STATUSES.map((status) => `COUNT(*) FILTER (WHERE status = '${status}') AS ${status.replace('-', '_')}`).join(', ')}
  FROM ${prefix}status
)
SELECT s.*, COUNT(*) FILTER (WHERE a.is_enrolment = 1) AS enrolments,
  COUNT(DISTINCT CASE WHEN a.is_enrolment = 0 THEN a.client END) AS clients,
  MIN(CASE WHEN a.is_enrolment = 0 THEN a.visit_date END) AS first_visit,
  MAX(CASE WHEN a.is_enrolment = 0 THEN a.visit_date END) AS last_visit,
  COUNT(DISTINCT CASE WHEN a.is_enrolment = 0 AND a.visit_purpose = 'precision' THEN CONCAT(a.client, CHR(31), a.visit_date) END) AS precision_visits,
  COUNT(*) FILTER (WHERE a.has_impedance = 1) AS with_impedance
FROM statuses AS s LEFT JOIN ${prefix}accepted AS a ON TRUE
GROUP BY ALL`;

const filesQuery = (prefix: string): string => `SELECT file_no, COUNT(*) AS n,
  ${CONDITION_COLUMNS.map((name) => `COUNT(${name}) AS ${name}`).join(', ')}
FROM ${prefix}cells GROUP BY file_no`;

const plannedFile = ({ input, unknownColumns, conversions }: LoadedTable, counts: Row | undefined): PlannedFile => ({
  name: input.name,
  source: input.source,
  sha256: input.sha256,
  bytes: input.bytes,
  rows: Number(counts?.['n'] ?? 0),
  ...(input.table.leftOut === undefined || input.table.leftOut === 0 ? {} : { leftOut: input.table.leftOut }),
  format: input.table.format,
  encoding: input.table.encoding,
  delimiter: input.table.delimiter,
  columns: input.mapping.header,
  unknownColumns,
  missingConditions:
    input.mapping.role === 'enrolment' ? [] : CONDITION_COLUMNS.filter((name) => Number(counts?.[name] ?? 0) === 0),
  mapping: input.mapping,
  isNew: input.isNew,
  conversions: conversions.filter(({ cells }) => cells > 0),
});

/**
 * Judges tables: streams their rows into the engine through their mappings and decides each row's state. Changes nothing
 * but the tables with the prefix, of which `<prefix>cells`, `typed`, `status`, `finding`, `files` and `aliases` stay.
 * Fails only when no file could be read; rejects with an AbortError when the signal fires.
 */
export const judge = async (
  engine: Engine,
  inputs: readonly ImportInput[],
  options: JudgeOptions,
): Promise<Result<ImportPlan, AppError>> => {
  const { prefix, signal, onProgress, answers } = options;
  for (const statement of emptyTables(prefix)) await engine.run(statement);
  await fillAnswers(engine, options);
  const loaded = await loadRows(engine, inputs, options);
  await fillErased(engine, options);
  const bytes = inputs.reduce((total, input) => total + input.bytes, 0);
  for (const statement of [...statusStatements(prefix), acceptedStatement(prefix)]) {
    signal?.throwIfAborted();
    onProgress?.({ step: 'judging', file: '', bytes, totalBytes: bytes, rows: 0 });
    await engine.run(statement);
  }
  const perFile = new Map((await engine.query(filesQuery(prefix), signal)).map((row) => [Number(row['file_no']), row]));
  const failedFiles = [
    ...(options.failedFiles ?? []),
    ...loaded.flatMap(({ input, fileNo, error }) => {
      if (error !== null) return [{ name: input.name, error }];
      return perFile.has(fileNo) ? [] : [{ name: input.name, error: fileErrors.header_only(input.name) }];
    }),
  ];
  const usable = loaded.filter(({ fileNo, error }) => error === null && perFile.has(fileNo));
  const [firstFailed] = failedFiles;
  if (usable.length === 0 && firstFailed !== undefined) return err(firstFailed.error);
  const [counts] = await engine.query(countsQuery(prefix), signal);
  const count = (name: string): number => Number(counts?.[name] ?? 0);
  const date = (name: string): IsoDate | null => parseIsoDate(String(counts?.[name] ?? '')) ?? null;
  const { findings, count: findingCount, warnings, corrected } = await findFindings(engine, prefix, inputs, signal);
  const people = await findPeople(engine, prefix, answers, signal);
  const missingConditions = await findMissingConditions(engine, prefix, answers, signal);
  await engine.run(`DROP TABLE ${prefix}accepted`);
  return ok({
    files: usable.map((table) => plannedFile(table, perFile.get(table.fileNo))),
    failedFiles,
    today: options.today,
    rows: count('n'),
    accepted: count('accepted'),
    held: count('held'),
    duplicates: count('duplicate'),
    refused: count('refused'),
    setAside: count('set_aside'),
    erased: count('erased'),
    warnings,
    corrected,
    enrolments: count('enrolments'),
    findings,
    findingCount,
    people,
    readings: await findReadingQuestions(engine, prefix, inputs, signal),
    missingConditions,
    clients: count('clients'),
    firstVisit: date('first_visit'),
    lastVisit: date('last_visit'),
    precisionVisits: count('precision_visits'),
    hasImpedance: count('with_impedance') > 0,
    fingerprint: await planFingerprint(engine, inputs, options),
  });
};
