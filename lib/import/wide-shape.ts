import type { PlacedGuess } from './column-guesses';
import { VALUE_COLUMNS } from './columns';

const WIDE: ReadonlySet<string> = new Set(VALUE_COLUMNS);
const MOST_READINGS = 20;

/**
 * The numbered replicate columns of one canonical column (R1, R2, …), by reading: their numbers run from 1 without a
 * gap. `R, R2, R3` counts as three. Undefined where the columns are no such set.
 */
export const replicates = (
  guesses: readonly PlacedGuess[],
): readonly { readonly reading: number; readonly guess: PlacedGuess }[] | undefined => {
  const [first] = guesses;
  if (first === undefined || guesses.length < 2 || guesses.length > MOST_READINGS || !WIDE.has(first.to))
    return undefined;
  const plain = guesses.filter(({ number }) => number === null).length;
  const all = guesses.map((guess) => ({ reading: guess.number ?? 1, guess })).sort((a, b) => a.reading - b.reading);
  const inOrder = plain <= 1 && all.every(({ reading }, index) => reading === index + 1);
  return inOrder ? all : undefined;
};
