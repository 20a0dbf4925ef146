import type { RawCell, RawFormat, RawTable } from '../../../lib/formats/raw-table';
import { COLUMNS } from '../../../lib/import/columns';
import type { Mapping, MappingQuestion, TableProfile } from '../../../lib/import/mapping';
import { mappingQuestions } from '../../../lib/import/mapping-questions';
import { profileTable } from '../../../lib/import/profile-table';
import { createRowMapper, type MappedRow } from '../../../lib/import/row-mapper';
import { suggestMapping } from '../../../lib/import/suggest-mapping';

/** A table in memory; its rows are the lines 1, 2, …, in batches of three. */
export const tableOf = (
  rows: readonly (readonly RawCell[])[],
  format: RawFormat = 'CSV',
  headed = false,
): RawTable => ({
  name: '',
  format,
  encoding: format === 'CSV' ? 'UTF-8' : '',
  delimiter: format === 'CSV' ? ',' : '',
  headed,
  rows: async function* () {
    for (let start = 0; start < rows.length; start += 3) {
      await Promise.resolve();
      yield rows.slice(start, start + 3).map((cells, index) => ({ line: start + index + 1, cells }));
    }
  },
});

export interface Understood {
  readonly profile: TableProfile;
  readonly mapping: Mapping;
  readonly questions: readonly MappingQuestion[];
}

/** What is suggested and asked for a table. */
export const understood = async (table: RawTable, remembered: readonly Mapping[] = []): Promise<Understood> => {
  const profile = await profileTable(table);
  const { mapping } = suggestMapping(profile, remembered);
  return { profile, mapping, questions: mappingQuestions(mapping, profile) };
};

/** The rows of a table below its header, as the mapping makes them. */
export const mappedRows = async (table: RawTable, mapping: Mapping): Promise<readonly MappedRow[]> => {
  const mapper = createRowMapper(mapping, table);
  const rows: MappedRow[] = [];
  for await (const batch of table.rows()) {
    for (const row of batch) if (row.line > (mapping.headerLine ?? 1)) rows.push(...mapper.map(row));
  }
  return rows;
};

/** The filled cells of a mapped row by column. */
export const cellsOf = (row: MappedRow | undefined): Readonly<Record<string, string>> =>
  Object.fromEntries(COLUMNS.flatMap(({ name }, index) => (row?.cells[index] ? [[name, row.cells[index]]] : [])));

/** Questions in short: kind and column. */
export const asked = (questions: readonly MappingQuestion[]): readonly string[] =>
  questions.map((question) =>
    question.kind === 'same-header' ? `same-header ${question.name}` : `${question.kind} ${question.to}`,
  );

/** Maps a table with a suggestion that needs no answer; fails where something is asked. */
export const mapUnasked = async (table: RawTable): Promise<readonly Readonly<Record<string, string>>[]> => {
  const { mapping, questions } = await understood(table);
  if (questions.length > 0) throw new Error(`asked: ${asked(questions).join(', ')}`);
  return (await mappedRows(table, mapping)).map(cellsOf);
};
