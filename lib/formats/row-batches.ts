import type { RawRow, ReadOptions } from './raw-table';

const BATCH = 5000;

/** Rows that come in groups of any size as batches of about 5,000. Rejects with an AbortError when the signal fires. */
export async function* rowBatches(
  groups: AsyncIterable<Iterable<RawRow>> | Iterable<Iterable<RawRow>>,
  { signal }: ReadOptions = {},
): AsyncGenerator<readonly RawRow[]> {
  let batch: RawRow[] = [];
  for await (const group of groups)
    for (const row of group) {
      batch.push(row);
      if (batch.length < BATCH) continue;
      signal?.throwIfAborted();
      yield batch;
      batch = [];
    }
  signal?.throwIfAborted();
  if (batch.length > 0) yield batch;
}
