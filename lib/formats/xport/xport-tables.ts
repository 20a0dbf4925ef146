import { blobChunks } from '../blob-chunks';
import { joined, utf8OrNull, windows1252 } from '../csv/text-encoding';
import type { RawCell, RawRow, RawTable, ReadOptions } from '../raw-table';
import { rowBatches } from '../row-batches';
import { ibmDouble } from './ibm-double';
import { readMembers, type XportMember, type XportVariable } from './read-members';
import { kindOfFormat, sasDate } from './sas-date';

const BLANK = 0x20;

const cellReader = ({ isText, bytes, position, format }: XportVariable): ((observation: Uint8Array) => RawCell) => {
  const kind = kindOfFormat(format);
  return (observation) => {
    const field = observation.subarray(position, position + bytes);
    if (isText) return (utf8OrNull(field) ?? windows1252(field)).replace(/[ \0]+$/, '');
    const value = ibmDouble(field);
    if (value === null) return '';
    return kind === null ? value : sasDate(value, kind);
  };
};

async function* observations(blob: Blob, member: XportMember, options: ReadOptions): AsyncGenerator<readonly RawRow[]> {
  const { variables, observationBytes: size, start, end } = member;
  const readers = variables.map(cellReader);
  yield [{ line: 1, cells: variables.map(({ name }) => name) }];
  let line = 1;
  let rest: Uint8Array = new Uint8Array();
  const onBytes = (bytes: number): void => options.onBytes?.(start + bytes);
  for await (const chunk of blobChunks(blob.slice(start, end), { signal: options.signal, onBytes })) {
    const bytes = joined(rest, chunk);
    const rows: RawRow[] = [];
    let at = 0;
    for (; at + size <= bytes.length; at += size) {
      line += 1;
      const observation = bytes.subarray(at, at + size);
      // The last record is filled up with blanks, which may look like observations.
      if (observation.some((byte) => byte !== BLANK))
        rows.push({ line, cells: readers.map((read) => read(observation)) });
    }
    rest = bytes.slice(at);
    yield rows;
  }
}

/**
 * The data sets of a SAS transport file as tables, the variables' names as first row. Missing values of every kind are
 * empty; numbers shown as dates or times are ISO text; texts lose the blanks at their end. Rejects with a `DamagedFile`.
 */
export const xportTables = async (blob: Blob, options: ReadOptions = {}): Promise<readonly RawTable[]> =>
  (await readMembers(blob, options)).map((member) => ({
    name: member.name,
    format: 'XPORT',
    encoding: '',
    delimiter: '',
    headed: true,
    rows: (given = {}) => rowBatches(observations(blob, member, given), given),
  }));
