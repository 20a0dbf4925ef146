import type { Engine, Row } from '../engine/types';
import { COLUMNS } from './columns';
import type { ImportInput } from './import-input';
import type { ReadingQuestion } from './plan';

/** Rows of questions that a person may be shown. */
const ASKED = 2_000;

const query = (prefix: string): string => `WITH open_questions AS (
  SELECT DISTINCT code, group_file, group_key FROM ${prefix}reading_question WHERE verdict = 'ask'
)
SELECT q.code, q.question_key, q.client, c.*
FROM open_questions AS o
JOIN ${prefix}reading_question AS q ON q.code = o.code AND q.group_file = o.group_file AND q.group_key = o.group_key
JOIN ${prefix}cells AS c ON c.file_no = q.file_no AND c.line_no = q.line_no AND c.part_no = q.part_no
ORDER BY q.client, q.visit_date, q.code, q.question_key, q.order_no LIMIT ${String(ASKED)}`;

const cell = (row: Row, name: string): string => String(row[name] ?? '');

const questionOf = (rows: readonly Row[], inputs: readonly ImportInput[]): ReadingQuestion => {
  const [first] = rows;
  return {
    kind: first?.['code'] === 'same_figures' ? 'same-figures' : 'same-number',
    key: String(first?.['question_key']),
    client: String(first?.['client']),
    visitDate: String(first?.['visit_date']),
    rows: rows.map((row) => {
      const input = inputs[Number(row['file_no']) - 1];
      const line = Number(row['line_no']);
      return {
        row: { source: input?.source ?? '', line, part: Number(row['part_no']) },
        file: input?.name ?? '',
        line,
      };
    }),
    differs: COLUMNS.flatMap(({ name }) => {
      const cells = rows.map((row) => cell(row, name));
      return new Set(cells).size > 1 ? [{ column: name, cells }] : [];
    }),
  };
};

/** Rows of which only a person can say whether they are one reading, with the columns in which they differ. */
export const findReadingQuestions = async (
  engine: Engine,
  prefix: string,
  inputs: readonly ImportInput[],
  signal?: AbortSignal,
): Promise<readonly ReadingQuestion[]> => {
  const columns = COLUMNS.map(({ name }) => `c.${name}`).filter((name) => name !== 'c.client_id');
  const sql = query(prefix).replace('c.*', `c.file_no, c.line_no, c.part_no, ${columns.join(', ')}`);
  const groups = new Map<string, Row[]>();
  for (const row of await engine.query(sql, signal)) {
    const key = JSON.stringify([row['client'], row['visit_date'], row['question_key']]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [row]);
    else group.push(row);
  }
  return [...groups.values()].filter((rows) => rows.length > 1).map((rows) => questionOf(rows, inputs));
};
