import { blobBytes, blobChunks } from '../blob-chunks';
import type { ReadOptions } from '../raw-table';
import { eachLine, joined, utf8OrNull, type TextEncoding } from './text-encoding';

const SAMPLE = 8192;

/** Where the NUL bytes of the first kilobytes stand: at odd places in UTF-16LE text, at even places in UTF-16BE. */
const nulShares = (bytes: Uint8Array): { odd: number; even: number; control: number } => {
  let [odd, even, control] = [0, 0, 0];
  bytes.forEach((byte, index) => {
    if (byte === 0 && index % 2 === 1) odd += 1;
    else if (byte === 0) even += 1;
    if (byte < 9 || (byte > 13 && byte < 32)) control += 1;
  });
  return { odd: (2 * odd) / bytes.length, even: (2 * even) / bytes.length, control: control / bytes.length };
};

const isUtf8 = async (blob: Blob, options: ReadOptions): Promise<boolean> => {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  try {
    for await (const chunk of blobChunks(blob, options)) decoder.decode(chunk, { stream: true });
    decoder.decode();
    return true;
  } catch (error) {
    if (error instanceof TypeError) return false;
    throw error;
  }
};

const isAscii = (bytes: Uint8Array): boolean => bytes.every((byte) => byte < 0x80);

/** Of the lines that hold more than ASCII, how many are UTF-8 and how many are not. */
const linesByEncoding = async (blob: Blob, options: ReadOptions): Promise<{ utf8: number; other: number }> => {
  const counts = { utf8: 0, other: 0 };
  const count = (line: Uint8Array): void => {
    if (isAscii(line)) return;
    counts[utf8OrNull(line) === null ? 'other' : 'utf8'] += 1;
  };
  let rest: Uint8Array = new Uint8Array();
  for await (const chunk of blobChunks(blob, options)) {
    const end = chunk.lastIndexOf(10) + 1;
    if (end === 0) {
      count(chunk);
      continue;
    }
    eachLine(joined(rest, chunk.subarray(0, end)), count);
    rest = chunk.slice(end);
  }
  count(rest);
  return counts;
};

/**
 * The encoding of a text file: UTF-8 with or without a mark, UTF-16 with or without one, else Windows-1252; null where
 * the bytes are no text. The whole file is looked at before it is called UTF-8. Where some lines are UTF-8 and a minority
 * is not (two exports in one file), each line is read by itself. A few stray NUL characters in a cell are text.
 */
export const detectEncoding = async (blob: Blob, options: ReadOptions = {}): Promise<TextEncoding | null> => {
  const sample = await blobBytes(blob, 0, SAMPLE);
  if (sample[0] === 0xff && sample[1] === 0xfe) return 'UTF-16LE';
  if (sample[0] === 0xfe && sample[1] === 0xff) return 'UTF-16BE';
  const shares = nulShares(sample);
  if (shares.odd > 0.6 && shares.even < 0.1) return 'UTF-16LE';
  if (shares.even > 0.6 && shares.odd < 0.1) return 'UTF-16BE';
  if (shares.control > 0.02) return null;
  if (await isUtf8(blob, options)) return 'UTF-8';
  const lines = await linesByEncoding(blob, options);
  return lines.utf8 > lines.other ? 'UTF-8 and Windows-1252' : 'Windows-1252';
};
