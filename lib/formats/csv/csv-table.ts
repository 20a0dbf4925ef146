import { blobBytes, blobChunks } from '../blob-chunks';
import type { RawRow, RawTable, ReadOptions } from '../raw-table';
import { rowBatches } from '../row-batches';
import { detectDelimiter, namedDelimiter } from './detect-delimiter';
import { recordCutter } from './record-cutter';
import { textStream, type TextEncoding } from './text-encoding';

const SAMPLE = 512 * 1024;

async function* recordsOf(
  blob: Blob,
  encoding: TextEncoding,
  delimiter: string,
  hasHint: boolean,
  options: ReadOptions,
): AsyncGenerator<Iterable<RawRow>> {
  const stream = textStream(encoding);
  const cutter = recordCutter(delimiter);
  let isFirst = hasHint;
  function* withoutHint(rows: Iterable<RawRow>): Generator<RawRow> {
    for (const row of rows) {
      if (!isFirst) yield row;
      isFirst = false;
    }
  }
  for await (const chunk of blobChunks(blob, options))
    yield withoutHint(cutter.push(stream.decode(chunk, false), false));
  yield withoutHint(cutter.push(stream.decode(new Uint8Array(), true), true));
}

/** The text of the first half megabyte. */
export const textSample = async (blob: Blob, encoding: TextEncoding): Promise<string> => {
  const bytes = await blobBytes(blob, 0, SAMPLE);
  return textStream(encoding).decode(bytes, blob.size <= SAMPLE);
};

/**
 * A delimited text file (RFC 4180 and its dialects) in a known encoding as a table: its separator is found, a first line
 * `sep=;` is obeyed and left out. The text is never held whole.
 */
export const csvTable = async (name: string, blob: Blob, encoding: TextEncoding): Promise<RawTable> => {
  const sample = await textSample(blob, encoding);
  const named = namedDelimiter(sample);
  const delimiter = named ?? detectDelimiter(sample, blob.size <= SAMPLE);
  return {
    name,
    format: 'CSV',
    encoding,
    delimiter,
    headed: false,
    rows: (given = {}) => rowBatches(recordsOf(blob, encoding, delimiter, named !== null, given), given),
  };
};
