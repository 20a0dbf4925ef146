/** What a number stands for when it is shown in a cell. */
export type NumberKind = 'number' | 'date' | 'time' | 'datetime' | 'duration';

const spread = (kind: NumberKind, from: number, to: number): readonly (readonly [number, NumberKind])[] =>
  Array.from({ length: to - from + 1 }, (_, index) => [from + index, kind] as const);

/** The formats that a workbook does not spell out. Source: ECMA-376-1, section 18.8.30 (numFmt), East Asian ones too. */
const BUILT_IN: ReadonlyMap<number, NumberKind> = new Map([
  ...spread('date', 14, 17),
  ...spread('time', 18, 21),
  [22, 'datetime'] as const,
  ...spread('date', 27, 31),
  ...spread('time', 32, 33),
  ...spread('date', 34, 36),
  [45, 'time'] as const,
  [46, 'duration'] as const,
  [47, 'time'] as const,
  ...spread('date', 50, 58),
]);

export const builtInKind = (id: number): NumberKind => BUILT_IN.get(id) ?? 'number';

/** What is left of a format code when literal text, colours, locales, padding and later sections are taken away. */
const bareCode = (code: string): string =>
  (code.replace(/"[^"]*"?|\\.|_.|\*./g, '').split(';')[0] ?? '')
    .toLowerCase()
    .replace(/\[(?!h+\]|m+\]|s+\])[^\]]*\]/g, '')
    .replace(/general|standard/g, '');

/** The kind of a spelled-out format code such as `dd/mm/yyyy`, `[h]:mm` or `0.0`. */
export const kindOfCode = (code: string): NumberKind => {
  const bare = bareCode(code);
  if (/\[(h+|m+|s+)\]/.test(bare)) return 'duration';
  const hasTime = /[hs]|am\/pm|a\/p/.test(bare);
  const letters = bare.replace(/am\/pm|a\/p/g, '');
  const hasDate = /[dy]/.test(letters) || (!hasTime && letters.includes('m')) || /mmm/.test(letters);
  if (hasDate && hasTime) return 'datetime';
  if (hasDate) return 'date';
  return hasTime ? 'time' : 'number';
};
