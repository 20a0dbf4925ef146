import type { AppError } from '../core/app-error';
import type { Engine } from '../engine/types';
import { DamagedFile } from '../formats/raw-table';
import { appendStatement, CHUNK_COLUMNS, chunkStatement } from './cells-sql';
import { COLUMNS } from './columns';
import { correctionStatements } from './corrections-sql';
import { fileErrors } from './file-errors';
import type { ImportInput, JudgeOptions } from './import-input';
import { insertTexts } from './insert-texts';
import { keptCodes } from './kept-codes';
import { createRowMapper, type MappedRow } from './row-mapper';
import { rowsBelowHeader } from './rows-below-header';
import { verdictStatement } from './verdict-sql';
import { withoutFormulaMark } from './without-formula-mark';

/** Rows of a chunk, and characters: whichever comes first. */
const CHUNK_ROWS = 20_000;
const CHUNK_CHARACTERS = 24_000_000;

const FOUND_COLUMNS = [
  'file_no',
  'line_no',
  'part_no',
  'client_id',
  'visit_date',
  'kind',
  'code',
  'column_name',
  'cell',
  'became',
];

const CLIENT = COLUMNS.findIndex((column) => column.name === 'client_id');
const VISIT_DATE = COLUMNS.findIndex((column) => column.name === 'visit_date');
const CORRECTS_ROW = COLUMNS.findIndex((column) => column.name === 'corrects_row');

/** What reading a table told beside its rows. */
export interface LoadedTable {
  readonly input: ImportInput;
  readonly fileNo: number;
  readonly unknownColumns: readonly string[];
  readonly conversions: readonly {
    readonly column: string;
    readonly from: string;
    readonly to: string;
    readonly cells: number;
  }[];
  /** The file broke in the middle: none of its rows is kept. */
  readonly error: AppError | null;
}

interface Chunk {
  rows: string[][];
  found: string[][];
  characters: number;
  corrected: boolean;
}

const emptyChunk = (): Chunk => ({ rows: [], found: [], characters: 0, corrected: false });

const flush = async (
  engine: Engine,
  prefix: string,
  mapping: ImportInput['mapping'],
  chunk: Chunk,
  correctable: readonly string[],
): Promise<void> => {
  if (chunk.rows.length === 0) return;
  await insertTexts(engine, `${prefix}loaded`, CHUNK_COLUMNS, chunk.rows);
  const statements = [
    chunkStatement(prefix),
    ...(chunk.corrected ? correctionStatements(prefix, correctable) : []),
    verdictStatement(prefix, mapping.role, keptCodes(mapping)),
    appendStatement(prefix),
  ];
  for (const statement of statements) await engine.run(statement);
  if (chunk.found.length > 0) {
    await insertTexts(engine, `${prefix}loaded`, FOUND_COLUMNS, chunk.found);
    await engine.run(`INSERT INTO ${prefix}found
SELECT CAST(file_no AS INTEGER), CAST(line_no AS INTEGER), CAST(part_no AS INTEGER), client_id, visit_date, kind, code,
  COALESCE(column_name, ''), COALESCE(cell, ''), became FROM ${prefix}loaded`);
  }
  await engine.run(`DROP TABLE ${prefix}loaded`);
  await engine.run(`DROP TABLE ${prefix}chunk`);
};

const placesOf = (
  rows: readonly { readonly source: string; readonly line: number; readonly part: number }[],
  source: string,
) => new Set(rows.flatMap((row) => (row.source === source ? [`${String(row.line)}:${String(row.part)}`] : [])));

/** Reads one table to its end, chunk by chunk. */
const loadTable = async (
  engine: Engine,
  input: ImportInput,
  fileNo: number,
  options: JudgeOptions,
): Promise<LoadedTable> => {
  const { prefix, signal, onProgress, ignoredColumns } = options;
  const mapper = createRowMapper(input.mapping, input.table);
  const corrected = placesOf(
    options.corrections.map(({ row }) => row),
    input.source,
  );
  const aside = placesOf(options.setAside, input.source);
  const correctable = COLUMNS.flatMap(({ name }) =>
    options.corrections.some(({ column }) => column === name) ? [name] : [],
  );
  const ignored = COLUMNS.flatMap((column, place) => (ignoredColumns?.has(column.name) === true ? [place] : []));
  const converted = mapper.conversions.map((conversion) => ({
    ...conversion,
    place: COLUMNS.findIndex((column) => column.name === conversion.column),
    cells: 0,
  }));
  let [chunk, read, bytes] = [emptyChunk(), 0, 0];

  const take = (row: MappedRow): void => {
    const place = `${String(row.line)}:${String(row.part)}`;
    const id = [String(fileNo), String(row.line), String(row.part)];
    const cells = row.trouble === undefined ? [...row.cells] : COLUMNS.map(() => '');
    for (const column of ignored) cells[column] = '';
    for (const conversion of converted) if ((cells[conversion.place] ?? '') !== '') conversion.cells += 1;
    const isReported = (cells[CORRECTS_ROW] ?? '').trim() !== '';
    const kept = isReported ? cells.map(withoutFormulaMark) : cells;
    const extra = row.trouble === undefined ? row.extra : '';
    chunk.corrected ||= corrected.has(place);
    chunk.rows.push([
      ...id,
      row.trouble ?? '',
      aside.has(place) ? '1' : '0',
      corrected.has(place) ? '1' : '0',
      isReported ? extra.split('\u001F').map(withoutFormulaMark).join('\u001F') : extra,
      ...kept,
    ]);
    chunk.characters += kept.reduce((total, cell) => total + cell.length, extra.length);
    const who = [kept[CLIENT] ?? '', kept[VISIT_DATE] ?? ''];
    if (row.trouble !== undefined) chunk.found.push([...id, '', '', 'refused', row.trouble, '', row.excerpt ?? '', '']);
    for (const { column, from, to, code } of row.changed)
      chunk.found.push([...id, ...who, 'changed', code, column, from, to]);
  };

  const say = (): void => {
    onProgress?.({ step: 'reading', file: input.name, bytes, totalBytes: input.bytes, rows: read });
  };
  const next = async (): Promise<void> => {
    await flush(engine, prefix, input.mapping, chunk, correctable);
    chunk = emptyChunk();
    signal?.throwIfAborted();
  };
  let error: AppError | null = null;
  try {
    const onBytes = (count: number): void => {
      bytes = count;
    };
    for await (const batch of rowsBelowHeader(input.table, input.mapping, { signal, onBytes })) {
      signal?.throwIfAborted();
      for (const row of batch) {
        mapper.map(row).forEach(take);
        if (chunk.rows.length >= CHUNK_ROWS || chunk.characters >= CHUNK_CHARACTERS) await next();
      }
      read += batch.length;
      say();
    }
    await next();
  } catch (thrown) {
    if (!(thrown instanceof DamagedFile)) throw thrown;
    error = fileErrors.damaged(input.name);
    for (const table of ['cells', 'found'])
      await engine.run(`DELETE FROM ${prefix}${table} WHERE file_no = ${String(fileNo)}`);
  }
  await engine.insert(
    `${prefix}converted`,
    ['file_no', 'column_name', 'decimals'],
    mapper.resolutions().map(({ column, step }) => [fileNo, column, -Math.log10(step)]),
  );
  return {
    input,
    fileNo,
    unknownColumns: mapper.unknownColumns,
    conversions: [
      ...converted.map(({ column, from, to, cells }) => ({ column, from, to, cells })),
      ...mapper.unknownCells().map(({ column, word, cells }) => ({ column, from: word, to: '', cells })),
    ],
    error,
  };
};

/**
 * Streams every table through its mapping into `<prefix>cells` and judges its cells on the way; no more than a chunk of
 * rows is in memory. A table that breaks in the middle leaves no row behind and carries its error.
 */
export const loadRows = async (
  engine: Engine,
  inputs: readonly ImportInput[],
  options: JudgeOptions,
): Promise<readonly LoadedTable[]> => {
  const { prefix } = options;
  const loaded: LoadedTable[] = [];
  for (const [index, input] of inputs.entries()) {
    const fileNo = index + 1;
    options.signal?.throwIfAborted();
    await engine.insert(
      `${prefix}corrections`,
      ['file_no', 'line_no', 'part_no', 'column_name', 'cell'],
      options.corrections.flatMap(({ row, column, to }) =>
        row.source === input.source ? [[fileNo, row.line, row.part, column, to]] : [],
      ),
    );
    await engine.insert(
      `${prefix}files`,
      ['file_no', 'source', 'file_name', 'sha256', 'table_name', 'unknown_columns', 'is_enrolment', 'imported_on'],
      [
        [
          fileNo,
          input.source,
          input.name,
          input.sha256,
          input.table.name,
          createRowMapper(input.mapping, input.table).unknownColumns.join('\u001F'),
          input.mapping.role === 'enrolment' ? 1 : 0,
          input.importedOn,
        ],
      ],
    );
    loaded.push(await loadTable(engine, input, fileNo, options));
  }
  return loaded;
};
