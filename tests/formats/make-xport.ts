interface Variable {
  readonly name: string;
  readonly label?: string;
  readonly format?: string;
  /** Length of a text; a number takes eight bytes. */
  readonly text?: number;
}

/** A cell: text, or the eight bytes of a number in hexadecimal. */
type Cell = string | { readonly hex: string };

const padded = (text: string, length: number): string => text.padEnd(length).slice(0, length);

const record = (...parts: readonly (readonly [string, number])[]): string =>
  padded(parts.map(([text, length]) => padded(text, length)).join(''), 80);

const header = (kind: string, numbers: string): string =>
  record([`HEADER RECORD*******${kind.padEnd(8)}HEADER RECORD!!!!!!!`, 48], [numbers, 32]);

const bytesOf = (text: string): number[] => [...text].map((sign) => sign.charCodeAt(0) & 0xff);

const short = (value: number): number[] => [(value >> 8) & 0xff, value & 0xff];

const filled = (bytes: readonly number[]): readonly number[] => [
  ...bytes,
  ...Array<number>((80 - (bytes.length % 80)) % 80).fill(0x20),
];

/**
 * One data set of a SAS transport file, version 5, after the record layout of technical paper TS-140: member headers,
 * descriptor records, NAMESTR records of 140 bytes, observations one after the other, filled up to 80 bytes.
 */
export const makeXportMember = (
  name: string,
  variables: readonly Variable[],
  rows: readonly (readonly Cell[])[],
): readonly number[] => {
  let position = 0;
  const names = variables.flatMap(({ name: variable, label = '', format = '', text }, index) => {
    const length = text ?? 8;
    const bytes = [
      ...short(text === undefined ? 1 : 2),
      ...short(0),
      ...short(length),
      ...short(index + 1),
      ...bytesOf(padded(variable, 8) + padded(label, 40) + padded(format, 8)),
      ...Array<number>(8).fill(0),
      ...bytesOf(padded('', 8)),
      ...Array<number>(4).fill(0),
      ...[24, 16, 8, 0].map((shift) => (position >> shift) & 0xff),
      ...Array<number>(52).fill(0),
    ];
    position += length;
    return bytes;
  });
  const observations = rows.flatMap((cells) =>
    cells.flatMap((cell, index) =>
      typeof cell === 'string'
        ? bytesOf(padded(cell, variables[index]?.text ?? 8))
        : (cell.hex.match(/../g) ?? []).map((byte) => Number.parseInt(byte, 16)),
    ),
  );
  const stamp = '04MAR25:08:30:00';
  const zeros = '0'.repeat(30);
  return [
    ...bytesOf(
      header('MEMBER', '000000000000000001600000000140  ') +
        header('DSCRPTR', zeros) +
        record(['SAS', 8], [name, 8], ['SASDATA', 8], ['9.4', 8], ['', 32], [stamp, 16]) +
        record([stamp, 16]) +
        header('NAMESTR', `000000${String(variables.length).padStart(4, '0')}00000000000000000000`),
    ),
    ...filled(names),
    ...bytesOf(header('OBS', zeros)),
    ...filled(observations),
  ];
};

/** A transport file of these data sets. */
export const makeXport = (...members: readonly (readonly number[])[]): Uint8Array<ArrayBuffer> =>
  Uint8Array.from([
    ...bytesOf(
      header('LIBRARY', '0'.repeat(30)) +
        record(['SAS', 8], ['SAS', 8], ['SASLIB', 8], ['9.4', 8], ['', 32], ['04MAR25:08:30:00', 16]) +
        record(['04MAR25:08:30:00', 16]),
    ),
    ...members.flat(),
  ]);
