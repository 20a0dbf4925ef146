import type { Engine } from '../engine/types';
import { COLUMNS, ENROLMENT_COLUMNS } from './columns';
import type { Mapping } from './mapping';
import { isReportColumn } from './report-columns';

const OF_ENROLMENTS: ReadonlySet<string> = new Set([...ENROLMENT_COLUMNS.map(({ name }) => name), 'corrects_row']);

/**
 * The columns that a file of rows of one kind needs: canonical ones that any such row fills, and its files' unknown ones
 * by name. A file of enrolments has no column of a visit, so that it is known for what it is when it comes back.
 */
export const fileColumns = async (
  engine: Engine,
  prefix: string,
  needed: readonly string[],
  role: Mapping['role'] = 'visits',
): Promise<{ readonly canonical: readonly string[]; readonly unknown: readonly string[] }> => {
  const isOfRole = `f.is_enrolment = ${role === 'enrolment' ? '1' : '0'}`;
  const canonical = role === 'enrolment' ? COLUMNS.filter(({ name }) => OF_ENROLMENTS.has(name)) : COLUMNS;
  const [filled] = await engine.query(
    `SELECT ${COLUMNS.map(({ name }) => `COUNT(c.${name}) AS ${name}`).join(', ')}
FROM ${prefix}cells AS c JOIN ${prefix}files AS f ON f.file_no = c.file_no AND ${isOfRole}`,
  );
  const files = await engine.query(
    `SELECT f.unknown_columns FROM ${prefix}files AS f WHERE ${isOfRole} ORDER BY f.file_no`,
  );
  const unknown = files.flatMap((row) => String(row['unknown_columns'] ?? '').split('\u001F'));
  return {
    canonical: canonical.flatMap(({ name }) =>
      Number(filled?.[name] ?? 0) > 0 || needed.includes(name) ? [name] : [],
    ),
    unknown: [...new Set(unknown)].filter((name) => name !== '' && !isReportColumn(name)),
  };
};
