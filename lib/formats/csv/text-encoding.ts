/** How the bytes of a text file are read. `mixed`: each line as UTF-8 where it is valid, else as Windows-1252. */
export type TextEncoding = 'UTF-8' | 'UTF-16LE' | 'UTF-16BE' | 'Windows-1252' | 'UTF-8 and Windows-1252';

/** Bytes into text, piece by piece. */
export interface TextStream {
  decode(bytes: Uint8Array, last: boolean): string;
}

/** Characters of the bytes 0x80–0x9F. Source: WHATWG Encoding, index windows-1252. */
const WINDOWS_1252 =
  '\u20AC\u0081\u201A\u0192\u201E\u2026\u2020\u2021\u02C6\u2030\u0160\u2039\u0152\u008D\u017D\u008F' +
  '\u0090\u2018\u2019\u201C\u201D\u2022\u2013\u2014\u02DC\u2122\u0161\u203A\u0153\u009D\u017E\u0178';

/** Some decoders (Node 20) read windows-1252 as Latin-1, which leaves control characters in place of these. */
export const windows1252 = (bytes: Uint8Array): string =>
  new TextDecoder('windows-1252')
    .decode(bytes)
    .replace(/[\u0080-\u009F]/g, (sign) => WINDOWS_1252[sign.charCodeAt(0) - 0x80] ?? sign);

/** Whether the bytes are valid UTF-8; null where they are not. */
export const utf8OrNull = (bytes: Uint8Array): string | null => {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
};

const LINE_FEED = 10;
const LONGEST_LINE = 16 * 1024 * 1024;

/** Calls `line` for each line of the bytes, its end included. */
export const eachLine = (bytes: Uint8Array, line: (bytes: Uint8Array) => void): void => {
  for (let start = 0; start < bytes.length;) {
    const found = bytes.indexOf(LINE_FEED, start);
    const end = found < 0 ? bytes.length : found + 1;
    line(bytes.subarray(start, end));
    start = end;
  }
};

export const joined = (first: Uint8Array, second: Uint8Array): Uint8Array => {
  if (first.length === 0) return second;
  const bytes = new Uint8Array(first.length + second.length);
  bytes.set(first);
  bytes.set(second, first.length);
  return bytes;
};

const mixedStream = (): TextStream => {
  let rest: Uint8Array = new Uint8Array();
  return {
    decode: (bytes, last) => {
      const all = joined(rest, bytes);
      const end = last || all.length > LONGEST_LINE ? all.length : all.lastIndexOf(LINE_FEED) + 1;
      rest = all.slice(end);
      const pieces: string[] = [];
      const whole = utf8OrNull(all.subarray(0, end));
      if (whole !== null) return whole;
      eachLine(all.subarray(0, end), (line) => pieces.push(utf8OrNull(line) ?? windows1252(line)));
      return pieces.join('');
    },
  };
};

/** A decoder that keeps what is left of a character between two pieces. A byte order mark is dropped. */
export const textStream = (encoding: TextEncoding): TextStream => {
  if (encoding === 'Windows-1252') return { decode: windows1252 };
  if (encoding === 'UTF-8 and Windows-1252') return mixedStream();
  const decoder = new TextDecoder(encoding.toLowerCase());
  return { decode: (bytes, last) => decoder.decode(bytes, { stream: !last }) };
};
