import { blobBytes, blobChunks } from '../blob-chunks';
import { DamagedFile, type ReadOptions } from '../raw-table';

const RECORD = 80;
const NAMESTR = 140;
const MOST_VARIABLES = 9999;
const LONGEST_TEXT = 200;

/** One column of a data set. */
export interface XportVariable {
  readonly name: string;
  readonly isText: boolean;
  readonly bytes: number;
  readonly format: string;
  readonly position: number;
}

/** One data set of a transport file; its observations stand in the bytes from `start` to `end`. */
export interface XportMember {
  readonly name: string;
  readonly variables: readonly XportVariable[];
  readonly observationBytes: number;
  readonly start: number;
  readonly end: number;
}

const ascii = (bytes: Uint8Array): string => String.fromCharCode(...bytes);

const isHeader = (record: string, kind: string): boolean =>
  record.startsWith(`HEADER RECORD*******${kind.padEnd(8)}HEADER RECORD!!!!!!!`);

/** Places of the records that begin a data set. */
const memberStarts = async (blob: Blob, options: ReadOptions): Promise<readonly number[]> => {
  const starts: number[] = [];
  let offset = 0;
  for await (const chunk of blobChunks(blob, { signal: options.signal }, RECORD * 50_000)) {
    for (let at = 0; at + RECORD <= chunk.length; at += RECORD)
      if (chunk[at] === 0x48 && isHeader(ascii(chunk.subarray(at, at + 48)), 'MEMBER')) starts.push(offset + at);
    offset += chunk.length;
  }
  return starts;
};

const variableOf = (bytes: Uint8Array): XportVariable => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const variable = {
    isText: view.getInt16(0) === 2,
    bytes: view.getInt16(4),
    name: ascii(bytes.subarray(8, 16)).trim(),
    format: ascii(bytes.subarray(56, 64)).trim(),
    position: view.getInt32(84),
  };
  const longest = variable.isText ? LONGEST_TEXT : 8;
  if (variable.bytes < 1 || variable.bytes > longest || variable.position < 0)
    throw new DamagedFile('A variable of the file has no possible place.');
  return variable;
};

const readMember = async (blob: Blob, start: number, end: number): Promise<XportMember> => {
  const header = await blobBytes(blob, start, start + 5 * RECORD);
  const names = ascii(header.subarray(4 * RECORD));
  const size = Number(ascii(header.subarray(75, 78))) || NAMESTR;
  const count = Number(names.slice(54, 58));
  if (!isHeader(names, 'NAMESTR') || !Number.isInteger(count) || count < 1 || count > MOST_VARIABLES || size < 88)
    throw new DamagedFile('A data set of the file has no list of variables.');
  const first = start + 5 * RECORD;
  const observations = first + Math.ceil((count * size) / RECORD) * RECORD;
  const list = await blobBytes(blob, first, observations + RECORD);
  if (list.length < observations + RECORD - first || !isHeader(ascii(list.subarray(observations - first)), 'OBS'))
    throw new DamagedFile('A data set of the file has no observations.');
  const variables = Array.from({ length: count }, (_, index) =>
    variableOf(list.subarray(index * size, (index + 1) * size)),
  );
  const observationBytes = Math.max(...variables.map(({ position, bytes }) => position + bytes));
  if (observationBytes > MOST_VARIABLES * LONGEST_TEXT) throw new DamagedFile('A variable has no possible place.');
  return {
    name: ascii(header.subarray(2 * RECORD + 8, 2 * RECORD + 16)).trim(),
    variables,
    observationBytes,
    start: observations + RECORD,
    end,
  };
};

/**
 * The data sets of a SAS transport file, version 5 or 6. Rejects with a `DamagedFile`.
 *
 * Source: SAS technical paper TS-140, record layout of a data set in transport format.
 */
export const readMembers = async (blob: Blob, options: ReadOptions = {}): Promise<readonly XportMember[]> => {
  const starts = await memberStarts(blob, options);
  if (starts.length === 0) throw new DamagedFile('The file has no data set.');
  return Promise.all(starts.map((start, index) => readMember(blob, start, starts[index + 1] ?? blob.size)));
};
