import { COLUMNS } from './columns';

/**
 * Texts that decide each row's state: refused, then duplicate (equal in every column to an earlier row that is not
 * refused), then held (a question without an answer), else accepted. Answers stand in `<prefix>answers`.
 */
export const statusStatements = (prefix: string): readonly string[] => {
  const every = COLUMNS.map((column) => column.name).join(', ');
  return [
    `CREATE OR REPLACE TABLE ${prefix}finding AS
SELECT f.file_no, f.line_no, f.client_id, f.visit_date, f.code, f.column_name, f.cell,
  CASE
    WHEN f.kind <> 'question' THEN f.kind
    WHEN a.decision = 'refuse' THEN 'refused'
    WHEN a.decision = 'keep' OR t.accept_questions = 1 THEN 'warning'
    ELSE 'question'
  END AS kind
FROM ${prefix}found AS f
CROSS JOIN ${prefix}today AS t
LEFT JOIN ${prefix}answers AS a
  ON a.client = f.client_id AND a.visit_date = f.visit_date AND a.column_name = f.column_name AND a.cell = f.cell`,
    `CREATE OR REPLACE TABLE ${prefix}status AS
WITH verdict AS (
  SELECT file_no, line_no,
    MAX(CASE WHEN kind = 'refused' THEN 1 ELSE 0 END) AS refused,
    MAX(CASE WHEN kind = 'question' THEN 1 ELSE 0 END) AS held
  FROM ${prefix}finding GROUP BY file_no, line_no
),
joined AS (
  SELECT t.*, COALESCE(v.refused, 0) AS refused, COALESCE(v.held, 0) AS held
  FROM ${prefix}typed AS t LEFT JOIN verdict AS v ON v.file_no = t.file_no AND v.line_no = t.line_no
),
numbered AS (
  SELECT file_no, line_no, refused, held,
    ROW_NUMBER() OVER (PARTITION BY refused, ${every}, extra ORDER BY file_no, line_no) AS copy_no,
    FIRST_VALUE(line_no) OVER (PARTITION BY refused, ${every}, extra ORDER BY file_no, line_no) AS first_line
  FROM joined
)
SELECT file_no, line_no, first_line,
  CASE
    WHEN refused = 1 THEN 'refused'
    WHEN copy_no > 1 THEN 'duplicate'
    WHEN held = 1 THEN 'held'
    ELSE 'accepted'
  END AS status
FROM numbered`,
  ];
};
