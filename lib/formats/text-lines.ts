import { blobChunks } from './blob-chunks';
import { DamagedFile, type ReadOptions } from './raw-table';

const LINE_FEED = 10;
const LONGEST_LINE = 256 * 1024 * 1024;

/** A line is longer than what is held. */
export class EndlessLine extends DamagedFile {}

/** The lines of a UTF-8 file in groups, blank ones as ''. Rejects with a `DamagedFile` for bytes that are not UTF-8. */
export async function* textLines(blob: Blob, options: ReadOptions = {}): AsyncGenerator<readonly string[]> {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  const decoded = (bytes?: Uint8Array): string => {
    try {
      return bytes === undefined ? decoder.decode() : decoder.decode(bytes, { stream: true });
    } catch (cause) {
      throw new DamagedFile('The file is not UTF-8.', { cause });
    }
  };
  let rest = '';
  for await (const chunk of blobChunks(blob, options)) {
    rest += decoded(chunk);
    if (chunk.includes(LINE_FEED)) {
      const lines = rest.split('\n');
      rest = lines.pop() ?? '';
      yield lines.map((line) => line.trim());
    }
    if (rest.length > (options.limitBytes ?? LONGEST_LINE)) throw new EndlessLine('A line of the file has no end.');
  }
  rest += decoded();
  yield [rest.trim()];
}
