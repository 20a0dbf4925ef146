import type { RawRow } from '../raw-table';

/** The first line of the format. */
export const ROWS_HEAD = '{"driftline":"rows","version":1}';

const TROUBLE = { broken_quote: 'broken_quote' } as const;

/**
 * Rows as NDJSON, in pieces of text: the head, then for each row an array of its line and its cells, so that numbers stay
 * numbers and lines keep their numbers. A row in trouble is `[line, [cells], trouble]`.
 */
export async function* writeRows(batches: AsyncIterable<readonly RawRow[]>): AsyncGenerator<string> {
  yield `${ROWS_HEAD}\n`;
  for await (const batch of batches)
    yield batch
      .map(({ line, cells, trouble }) =>
        trouble === undefined ? JSON.stringify([line, ...cells]) : JSON.stringify([line, [...cells], TROUBLE[trouble]]),
      )
      .map((text) => `${text}\n`)
      .join('');
}
