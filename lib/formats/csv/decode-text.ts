import { err, ok, type Result } from '../../core/result';

/** Why bytes are not text. */
export type NotText = 'empty' | 'zip' | 'binary';

export interface DecodedText {
  readonly text: string;
  readonly encoding: 'UTF-8' | 'UTF-16LE' | 'UTF-16BE' | 'Windows-1252';
}

const startsWith = (bytes: Uint8Array, ...prefix: readonly number[]): boolean =>
  prefix.every((value, index) => bytes[index] === value);

const decoded = (bytes: Uint8Array, label: string, encoding: DecodedText['encoding']): Result<DecodedText, NotText> =>
  ok({ text: new TextDecoder(label).decode(bytes), encoding });

/** Characters of the bytes 0x80–0x9F. Source: WHATWG Encoding, index windows-1252. */
const WINDOWS_1252 =
  '\u20AC\u0081\u201A\u0192\u201E\u2026\u2020\u2021\u02C6\u2030\u0160\u2039\u0152\u008D\u017D\u008F' +
  '\u0090\u2018\u2019\u201C\u201D\u2022\u2013\u2014\u02DC\u2122\u0161\u203A\u0153\u009D\u017E\u0178';

/** Some decoders (Node 20) read windows-1252 as Latin-1, which leaves control characters in place of these. */
const windows1252 = (bytes: Uint8Array): string =>
  new TextDecoder('windows-1252')
    .decode(bytes)
    .replace(/[\u0080-\u009F]/g, (sign) => WINDOWS_1252[sign.charCodeAt(0) - 0x80] ?? sign);

/** Where the NUL bytes of the first kilobytes stand: at odd places in UTF-16LE text, at even places in UTF-16BE. */
const nulShares = (bytes: Uint8Array): { odd: number; even: number; control: number } => {
  const length = Math.min(bytes.length, 8192);
  let [odd, even, control] = [0, 0, 0];
  for (let index = 0; index < length; index += 1) {
    const byte = bytes[index] ?? 0;
    if (byte === 0 && index % 2 === 1) odd += 1;
    else if (byte === 0) even += 1;
    if (byte < 9 || (byte > 13 && byte < 32)) control += 1;
  }
  return { odd: (2 * odd) / length, even: (2 * even) / length, control: control / length };
};

/**
 * Bytes as text: UTF-8 with or without a mark, UTF-16 with or without one, else Windows-1252. Refuses what is no text.
 * A few stray NUL characters in a cell are text.
 */
export const decodeText = (bytes: Uint8Array): Result<DecodedText, NotText> => {
  if (bytes.length === 0) return err('empty');
  if (startsWith(bytes, 0x50, 0x4b, 0x03, 0x04)) return err('zip');
  if (startsWith(bytes, 0xff, 0xfe)) return decoded(bytes, 'utf-16le', 'UTF-16LE');
  if (startsWith(bytes, 0xfe, 0xff)) return decoded(bytes, 'utf-16be', 'UTF-16BE');
  const shares = nulShares(bytes);
  if (shares.odd > 0.6 && shares.even < 0.1) return decoded(bytes, 'utf-16le', 'UTF-16LE');
  if (shares.even > 0.6 && shares.odd < 0.1) return decoded(bytes, 'utf-16be', 'UTF-16BE');
  if (shares.control > 0.02) return err('binary');
  try {
    return ok({ text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), encoding: 'UTF-8' });
  } catch {
    return ok({ text: windows1252(bytes), encoding: 'Windows-1252' });
  }
};
