import type { Engine } from '../engine/types';
import { writeCsv, type CsvCell } from '../formats/csv/write-csv';
import { fileColumns } from './file-columns';
import { acceptedRows } from './kept-rows';

const NEEDED = { visits: ['client_id'], enrolment: ['client_id', 'program'] } as const;

/** The column that names the corrected columns of a row. */
const CORRECTED = 'corrected_columns';

/**
 * The accepted rows as CSV text in pieces: canonical columns, the files' unknown columns under their own names, and
 * which columns the clinic corrected.
 */
export async function* acceptedCsv(
  engine: Engine,
  options: {
    readonly prefix?: string;
    readonly role?: 'visits' | 'enrolment';
    readonly signal?: AbortSignal | undefined;
  } = {},
): AsyncGenerator<string> {
  const { canonical, unknown } = await fileColumns(
    engine,
    options.prefix ?? '',
    NEEDED[options.role ?? 'visits'],
    options.role,
  );
  const columns = canonical.filter((name) => name !== 'corrects_row');
  let waiting: readonly CsvCell[] = [...columns, ...unknown, CORRECTED];
  for await (const rows of acceptedRows(engine, options)) {
    const lines = rows.map(({ cells, unknown: kept, corrected }) => [
      ...columns.map((name) => cells[name] ?? ''),
      ...unknown.map((name) => kept[name] ?? ''),
      corrected.join(' '),
    ]);
    yield writeCsv(waiting.map(String), lines.slice(0, -1));
    waiting = lines.at(-1) ?? [];
  }
  yield writeCsv(waiting.map(String), []);
}
