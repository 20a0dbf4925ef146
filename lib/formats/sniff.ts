/** What the first bytes of a file say that it is. `text` = none of the others: its characters have to be looked at. */
export type FileKind =
  | 'empty'
  | 'zip'
  | 'parquet'
  | 'sealed-parquet'
  | 'xport'
  | 'xport-newer'
  | 'old-workbook'
  | 'pdf'
  | 'picture'
  | 'packed'
  | 'other-program'
  | 'text';

/** Bytes that `sniff` needs. */
export const SNIFFED = 512;

const MAGIC: readonly (readonly [FileKind, number, string])[] = [
  ['zip', 0, 'PK\x03\x04'],
  ['zip', 0, 'PK\x05\x06'],
  ['zip', 0, 'PK00PK\x03\x04'],
  ['parquet', 0, 'PAR1'],
  ['sealed-parquet', 0, 'PARE'],
  ['xport', 0, 'HEADER RECORD*******LIBRARY HEADER RECORD!!!!!!!'],
  ['xport-newer', 0, 'HEADER RECORD*******LIBV8   HEADER RECORD!!!!!!!'],
  ['xport-newer', 0, '**COMPRESSED** **COMPRESSED**'],
  ['old-workbook', 0, '\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1'],
  ['pdf', 0, '%PDF-'],
  ['picture', 0, '\x89PNG\r\n\x1A\n'],
  ['picture', 0, '\xFF\xD8\xFF'],
  ['picture', 0, 'GIF8'],
  ['picture', 0, 'II*\0'],
  ['picture', 0, 'MM\0*'],
  ['picture', 8, 'WEBP'],
  ['picture', 4, 'ftyphei'],
  ['packed', 0, '\x1F\x8B\x08'],
  ['packed', 0, 'BZh'],
  ['packed', 0, "7z\xBC\xAF'\x1C"],
  ['packed', 0, 'Rar!\x1A\x07'],
  ['packed', 0, '\xFD7zXZ\0'],
  ['packed', 0, '\x28\xB5\x2F\xFD'],
  ['packed', 257, 'ustar'],
  ['other-program', 0, '$FL2@(#)'],
  ['other-program', 0, '$FL3@(#)'],
  ['other-program', 0, '<stata_dta>'],
  ['other-program', 0, 'SQLite format 3\0'],
  ['other-program', 12, '\xC2\xEA\x81\x60\xB3\x14\x11\xCF\xBD\x92\x08\0\x09\xC7\x31\x8C'],
  ['other-program', 4, 'Standard Jet DB\0'],
  ['other-program', 4, 'Standard ACE DB\0'],
  ['other-program', 0, '{\\rtf'],
];

/** What a file is by its first bytes; its name is not asked. */
export const sniff = (start: Uint8Array): FileKind => {
  if (start.length === 0) return 'empty';
  const text = String.fromCharCode(...start.subarray(0, SNIFFED));
  return MAGIC.find(([, offset, magic]) => text.startsWith(magic, offset))?.[0] ?? 'text';
};

/** What text is that is no delimited table, by its first characters. */
export type MarkupKind = 'web-page' | 'xml' | 'json' | 'fhir' | 'rows';

/** null = a delimited table, as far as can be seen. */
export const sniffMarkup = (sample: string): MarkupKind | null => {
  const start = sample.trimStart();
  if (/^MIME-Version:/i.test(start)) return 'web-page';
  if (/^<(!doctype\s+html|html|head|body|table|meta|style|div)\b/i.test(start)) return 'web-page';
  if (/^<\?xml\b|^<[A-Za-z][\w:.-]*\s+xmlns/.test(start))
    return /<html\b/i.test(start.slice(0, 2000)) ? 'web-page' : 'xml';
  if (/^\{"driftline":"rows"/.test(start)) return 'rows';
  if (!/^(\{\s*("|\})|\[\s*(\{|\]))/.test(start)) return null;
  return /"resourceType"\s*:/.test(start) ? 'fhir' : 'json';
};
