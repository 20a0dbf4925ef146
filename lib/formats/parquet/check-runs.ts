import { DamagedFile } from '../raw-table';

/** Values by which a bit-packed run may go past the last one: runs are filled up to a multiple of eight. */
const FILLING = 512;

/**
 * Walks over a run-length / bit-packed section without decoding it, and throws a `DamagedFile` where a run holds more
 * values than are left: a decoder that believes it would write without end.
 *
 * Source: Apache Parquet format, Encodings.md, “Run Length Encoding / Bit-Packing Hybrid”.
 */
export const checkRuns = (bytes: Uint8Array, bitWidth: number, values: number): void => {
  if (bitWidth > 32) throw new DamagedFile('A page has no possible width of bits.');
  const valueBytes = Math.ceil(bitWidth / 8);
  let [at, seen] = [0, 0];
  while (seen < values) {
    let [header, factor] = [0, 1];
    for (let more = true; more; at += 1, factor *= 128) {
      const byte = bytes[at];
      if (byte === undefined || factor > 2 ** 35) throw new DamagedFile('A page ends before its values.');
      header += (byte & 127) * factor;
      more = byte >= 128;
    }
    const isPacked = header % 2 === 1;
    const run = Math.floor(header / 2) * (isPacked ? 8 : 1);
    if (run > values - seen + (isPacked ? FILLING : 0)) throw new DamagedFile('A run of a page is too long.');
    at += isPacked ? (run / 8) * bitWidth : valueBytes;
    seen += run;
  }
};
