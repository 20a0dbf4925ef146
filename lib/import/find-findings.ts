import type { Engine, Row } from '../engine/types';
import { findingText } from './finding-words';
import type { ImportInput } from './import-input';
import type { Finding, FindingKind } from './plan';

/** A person reads no more. */
const LISTED = 20_000;

const AT = 's.file_no = f.file_no AND s.line_no = f.line_no AND s.part_no = f.part_no';

/** What is said of each row's cells, and one line for every row that is not accepted for what it is. */
const everyFinding = (prefix: string): string => `every_finding AS (
  SELECT f.file_no, f.line_no, f.part_no, f.kind, f.code, f.column_name, f.cell, f.became, f.client_id, f.visit_date
  FROM ${prefix}finding AS f
  JOIN ${prefix}status AS s ON ${AT}
  WHERE s.status IN ('accepted', 'held') OR (s.status = 'refused' AND f.kind <> 'changed')
  UNION ALL
  SELECT f.file_no, f.line_no, f.part_no, 'question', s.waits_for, 'reading', COALESCE(f.reading, ''), NULL, f.client_id, f.visit_date
  FROM ${prefix}status AS s JOIN ${prefix}cells AS f ON ${AT} WHERE s.status = 'held' AND s.waits_for IS NOT NULL
  UNION ALL
  SELECT f.file_no, f.line_no, f.part_no, s.status, s.code, 'client_id', COALESCE(f.client_id, ''), NULL, f.client_id, f.visit_date
  FROM ${prefix}status AS s JOIN ${prefix}cells AS f ON ${AT} WHERE s.status IN ('duplicate', 'set-aside')
  UNION ALL
  SELECT s.file_no, s.line_no, s.part_no, 'erased', 'erased', '', '', NULL, NULL, NULL
  FROM ${prefix}status AS s WHERE s.status = 'erased'
)`;

const text = (row: Row, name: string): string => String(row[name] ?? '');
const textOrNull = (row: Row, name: string): string | null => (row[name] === null ? null : text(row, name));

/** What the plan says about rows and cells: questions and refusals first where there are more than can be listed. */
export const findFindings = async (
  engine: Engine,
  prefix: string,
  inputs: readonly ImportInput[],
  signal?: AbortSignal,
): Promise<{
  readonly findings: readonly Finding[];
  readonly count: number;
  readonly warnings: number;
  readonly corrected: number;
}> => {
  const [counts] = await engine.query(
    `WITH ${everyFinding(prefix)}
SELECT COUNT(*) AS n, COUNT(*) FILTER (WHERE kind = 'warning') AS warnings, COUNT(*) FILTER (WHERE code = 'corrected') AS corrected
FROM every_finding`,
    signal,
  );
  const rows = await engine.query(
    `WITH ${everyFinding(prefix)}
SELECT * FROM (
  SELECT * FROM every_finding
  ORDER BY CASE kind WHEN 'question' THEN 0 WHEN 'refused' THEN 1 WHEN 'changed' THEN 2 WHEN 'duplicate' THEN 3 ELSE 4 END,
    file_no, line_no, part_no, code, column_name LIMIT ${String(LISTED)}
)
ORDER BY file_no, line_no, part_no, kind, code, column_name`,
    signal,
  );
  const count = (name: string): number => Number(counts?.[name] ?? 0);
  return {
    count: count('n'),
    warnings: count('warnings'),
    corrected: count('corrected'),
    findings: rows.map((row) => {
      const input = inputs[Number(row['file_no']) - 1];
      const kind = text(row, 'kind') as FindingKind;
      return {
        kind,
        file: input?.name ?? '',
        row: { source: input?.source ?? '', line: Number(row['line_no']), part: Number(row['part_no']) },
        line: Number(row['line_no']),
        column: text(row, 'column_name'),
        value: text(row, 'cell'),
        code: text(row, 'code'),
        ...findingText(text(row, 'code'), text(row, 'column_name'), kind, text(row, 'became')),
        client: textOrNull(row, 'client_id'),
        visitDate: textOrNull(row, 'visit_date'),
      };
    }),
  };
};
