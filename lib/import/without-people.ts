import { strToU8, Zip, ZipDeflate } from 'fflate';
import type { RawRow } from '../formats/raw-table';
import { writeRows } from '../formats/rows/write-rows';
import { COLUMNS } from './columns';
import type { ImportInput } from './import-input';
import { namesPerson } from './names-person';
import type { RowRef } from './plan';
import { createRowMapper } from './row-mapper';

/** What is wrong with a record that cannot be told from its cells alone. */
const OUT_OF_ORDER: ReadonlySet<string> = new Set(['broken_quote', 'ragged', 'too_long']);

const CLIENT = COLUMNS.findIndex((column) => column.name === 'client_id');

/** Text is gathered to pieces of this size, so that a large file lies in the browser's files and not in memory. */
const PIECE_BYTES = 4 * 1024 * 1024;

/** A file without the rows of some people. */
export interface FileWithoutPeople {
  readonly blob: Blob;
  /** Where the rows stood that are gone: every part of a line goes together. */
  readonly gone: readonly Pick<RowRef, 'source' | 'line'>[];
  /** Rows that stay, by source. */
  readonly rows: ReadonlyMap<string, number>;
  /** Corrections of `client_id` that are now the row's own cell. */
  readonly settled: readonly Pick<RowRef, 'source' | 'line'>[];
}

export interface PeopleToRemove {
  readonly isGone: (clientId: string) => boolean;
  /** Corrected ids of rows, for a row belongs to whom the correction says. */
  readonly corrections: readonly { readonly row: RowRef; readonly column: string; readonly to: string }[];
  readonly signal?: AbortSignal | undefined;
}

interface Tally {
  rows: number;
  readonly gone: Pick<RowRef, 'source' | 'line'>[];
  readonly settled: Pick<RowRef, 'source' | 'line'>[];
}

/** Decides over the rows of one table. A row whose own id is of a removed person, but was corrected, takes the corrected id. */
const rowFilter = (input: ImportInput, { isGone, corrections }: PeopleToRemove, tally: Tally) => {
  const { source, mapping, table } = input;
  const mapper = createRowMapper(mapping, table);
  const corrected = new Map(
    corrections
      .filter(({ row, column }) => row.source === source && column === 'client_id')
      .map(({ row, to }) => [row.line, to]),
  );
  const places = mapping.columns.find(({ to }) => to === 'client_id')?.from ?? [];
  return (row: RawRow): RawRow | undefined => {
    const [mapped] = mapper.map(row);
    const where = { source, line: row.line };
    if (mapped?.trouble !== undefined) {
      // A record out of order has no column of ids: any cell of it may be one.
      if (namesPerson(row.cells, isGone, mapped.trouble === 'text_line')) {
        tally.gone.push(where);
        return undefined;
      }
      tally.rows += 1;
      // The kept form has no separators, so that only its trouble says that the record is out of order.
      return OUT_OF_ORDER.has(mapped.trouble) ? { ...row, trouble: 'broken_quote' } : row;
    }
    const own = mapped?.cells[CLIENT] ?? '';
    const id = corrected.get(row.line) ?? own;
    if (isGone(id)) {
      tally.gone.push(where);
      return undefined;
    }
    tally.rows += 1;
    if (id === own || !isGone(own)) return row;
    tally.settled.push(where);
    const [first] = places;
    return {
      ...row,
      cells: row.cells.map((cell, place) => (place === first ? id : places.includes(place) ? '' : cell)),
    };
  };
};

async function* keptRows(input: ImportInput, people: PeopleToRemove, tally: Tally): AsyncGenerator<readonly RawRow[]> {
  const keep = rowFilter(input, people, tally);
  let header = input.mapping.headerLine;
  for await (const batch of input.table.rows({ signal: people.signal })) {
    header ??= batch[0]?.line ?? null;
    const last = header ?? 0;
    yield batch.flatMap((row) => {
      if (row.line > last) return keep(row) ?? [];
      if (row.line === last || !namesPerson(row.cells, people.isGone, true)) return row;
      tally.gone.push({ source: input.source, line: row.line });
      return [];
    });
  }
}

/** Gathers bytes as a Blob, piece by piece. */
const gathering = (): { readonly add: (bytes: Uint8Array) => void; readonly blob: () => Blob } => {
  const pieces: Blob[] = [];
  let waiting: Uint8Array<ArrayBuffer>[] = [];
  let bytes = 0;
  const settle = (): void => {
    pieces.push(new Blob(waiting));
    [waiting, bytes] = [[], 0];
  };
  return {
    add: (chunk) => {
      waiting.push(chunk as Uint8Array<ArrayBuffer>);
      bytes += chunk.length;
      if (bytes >= PIECE_BYTES) settle();
    },
    blob: () => {
      settle();
      return new Blob(pieces);
    },
  };
};

/**
 * Writes the used tables of one file anew without the rows of some people, lines and cells as they were; tables that are
 * not used stay behind, for nobody knows who is in them. Lines above the header and lines of text go where a word of
 * them is such a person's id. One table becomes a file of rows, several a zip of such files
 * under the tables' names. Undefined where the file holds none of these people.
 */
export const withoutPeople = async (
  inputs: readonly ImportInput[],
  people: PeopleToRemove,
): Promise<FileWithoutPeople | undefined> => {
  const file = gathering();
  const rows = new Map<string, number>();
  const gone: Pick<RowRef, 'source' | 'line'>[] = [];
  const settled: Pick<RowRef, 'source' | 'line'>[] = [];
  const write = async (input: ImportInput, add: (bytes: Uint8Array) => void): Promise<void> => {
    const tally: Tally = { rows: 0, gone, settled };
    for await (const text of writeRows(keptRows(input, people, tally))) add(strToU8(text));
    rows.set(input.source, tally.rows);
  };
  const [only] = inputs;
  if (inputs.length === 1 && only !== undefined) await write(only, file.add);
  else {
    const zip = new Zip((error, bytes) => {
      if (error !== null) throw error;
      file.add(bytes);
    });
    for (const input of inputs) {
      const entry = new ZipDeflate(input.table.name, { level: 1 });
      zip.add(entry);
      await write(input, (bytes) => {
        entry.push(bytes);
      });
      entry.push(new Uint8Array(), true);
    }
    zip.end();
  }
  return gone.length === 0 && settled.length === 0 ? undefined : { blob: file.blob(), gone, rows, settled };
};
