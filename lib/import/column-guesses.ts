import { guessColumn, type ColumnGuess } from './guess-column';
import type { TableProfile } from './mapping';
import { plausibleShare } from './plausible-share';

/** What one source column is taken for. */
export interface PlacedGuess extends ColumnGuess {
  readonly place: number;
  readonly name: string;
}

const HALF = 0.5;

/** A guess for every column whose heading is known; cells that do not fit make it less sure, the canonical name itself stays. */
export const columnGuesses = (profile: TableProfile): readonly PlacedGuess[] =>
  profile.columns.flatMap((column) => {
    const guess = guessColumn(column.name);
    if (guess === undefined) return [];
    const sure = guess.sure === 1 || plausibleShare(guess.to, column) >= HALF ? guess.sure : guess.sure * 0.3;
    return [{ ...guess, sure, place: column.place, name: column.name }];
  });
