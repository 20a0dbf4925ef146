import type { Engine } from '../../lib/engine/types';
import { judge } from '../../lib/import/judge';
import type { Mapping, MappingQuestion, TableProfile } from '../../lib/import/mapping';
import { mappingQuestions } from '../../lib/import/mapping-questions';
import { openTables } from '../../lib/import/open-tables';
import type { ImportPlan } from '../../lib/import/plan';
import { profileTable } from '../../lib/import/profile-table';
import { suggestMapping } from '../../lib/import/suggest-mapping';
import { codes, PLAIN, TODAY } from './judged';

/** What import makes of the first table of a file as a clinic has it, without any answer. */
export interface ClinicFile {
  readonly profile: TableProfile;
  readonly mapping: Mapping;
  readonly questions: readonly MappingQuestion[];
  readonly plan: ImportPlan;
  /** `accepted 70` … for every row: its state and the cells of the columns asked for, '' unknown. */
  readonly rows: readonly string[];
  /** Findings in short. */
  readonly said: readonly string[];
}

/** A file's bytes through the whole path: opened, profiled, mapped as suggested, judged. */
export const clinicFile = async (
  engine: Engine,
  content: string | Uint8Array<ArrayBuffer>,
  columns: readonly string[] = ['client_id'],
  change: (mapping: Mapping) => Mapping = (mapping) => mapping,
): Promise<ClinicFile> => {
  const blob = new Blob([content]);
  const opened = await openTables('visits', blob);
  if (!opened.ok) throw new Error(opened.error.message);
  const [table] = opened.value;
  if (table === undefined) throw new Error('the file holds no table');
  const profile = await profileTable(table);
  const mapping = change(suggestMapping(profile, []).mapping);
  const input = {
    source: 'given/0/',
    name: 'visits',
    sha256: 'a'.repeat(64),
    bytes: blob.size,
    table,
    mapping,
    isNew: true,
    importedOn: TODAY,
  };
  const plan = await judge(engine, [input], PLAIN);
  if (!plan.ok) throw new Error(plan.error.message);
  const cells = columns.map((name) => `COALESCE(CAST(t.v_${name} AS VARCHAR), '')`).join(', ');
  const rows = await engine.query(`SELECT CONCAT_WS(' ', s.status, ${cells}) AS row_text FROM test_typed AS t
JOIN test_status AS s ON s.file_no = t.file_no AND s.line_no = t.line_no AND s.part_no = t.part_no ORDER BY t.line_no, t.part_no`);
  return {
    profile,
    mapping,
    questions: mappingQuestions(mapping, profile),
    plan: plan.value,
    rows: rows.map((row) => String(row['row_text']).trim()),
    said: codes(plan.value),
  };
};

export const HEADINGS = 'Patient ID,Visit date,Height (cm),Weight (kg),R,Xc';

/** Lines of a file with one row for each cell, which takes the place of one column's. */
export const linesWith = (column: 'id' | 'date' | 'weight' | 'r', cells: readonly string[]): string =>
  [
    HEADINGS,
    ...cells.map((cell, index) => {
      const own: Record<typeof column, string> = {
        id: `P-${String(index)}`,
        date: '2025-03-04',
        weight: '70.5',
        r: String(500 + index),
      };
      own[column] = /[",]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
      const { id, date, weight, r } = own;
      return `${id},${date},170,${weight},${r},50`;
    }),
  ].join('\n');
