import type { RawCell } from '../formats/raw-table';
import { cellText } from './cell-reader';
import { plainText } from './plain-text';

const BETWEEN_WORDS = /[\s,;:|"'()[\]]+/;

/** Each text, and each two that follow each other with a space between: an id may be a given and a family name. */
const withPairs = (texts: readonly string[]): readonly string[] => [
  ...texts,
  ...texts.slice(1).map((text, place) => `${texts[place] ?? ''} ${text}`),
];

/**
 * Whether a record that is no row of a table names one of some people, in any of its cells; in a line of free text in any
 * of its words.
 */
export const namesPerson = (
  cells: readonly RawCell[],
  isPerson: (clientId: string) => boolean,
  isText: boolean,
): boolean => {
  const texts = cells.map((cell) => plainText(cellText(cell)));
  const bare = texts.map((text) => plainText(text.replace(/^"|"$/g, '')));
  const words = isText ? texts.flatMap((text) => text.split(BETWEEN_WORDS)).filter((word) => word !== '') : [];
  return [...texts, ...withPairs(bare), ...withPairs(words)].some(isPerson);
};
