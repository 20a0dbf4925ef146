import { columnGuesses, type PlacedGuess } from './column-guesses';
import { isByFrequency } from './guess-column';
import type { TableProfile } from './mapping';
import { DATE_AND_TIME } from './synonyms/column-synonyms';
import { replicates } from './wide-shape';

export interface ChosenColumn {
  readonly to: string;
  readonly reading: number | undefined;
  readonly guess: PlacedGuess;
}

/** Which source columns fill which canonical ones, and where that is a person's choice. */
export interface ColumnChoice {
  readonly guesses: readonly PlacedGuess[];
  readonly chosen: readonly ChosenColumn[];
  /** Several source columns look alike for one canonical column: none of them is chosen. */
  readonly contested: readonly { readonly to: string; readonly places: readonly number[] }[];
  /** The one frequency of the chosen impedance columns, where their headings name it. */
  readonly frequencyKHz: number | null;
}

const SURE_ENOUGH = 0.5;
const LEAD = 0.05;
const USUAL_FREQUENCY = 50;

type OneTarget = { readonly chosen: readonly ChosenColumn[] } | { readonly places: readonly number[] };

const numberAsFrequency = (guesses: readonly PlacedGuess[]): readonly PlacedGuess[] =>
  guesses.map((guess) =>
    guess.frequencyKHz === null && guess.number !== null && guess.number > 4
      ? { ...guess, frequencyKHz: guess.number, number: null }
      : guess,
  );

const chooseOne = (to: string, given: readonly PlacedGuess[]): OneTarget => {
  const numbered = given.some(({ number }) => number !== null);
  const plain = numbered ? replicates(given) : undefined;
  const asFrequencies = plain === undefined && numbered && isByFrequency(to) ? numberAsFrequency(given) : given;
  const frequencies = new Set(asFrequencies.flatMap(({ frequencyKHz }) => frequencyKHz ?? []));
  const guesses =
    frequencies.size > 1 && frequencies.has(USUAL_FREQUENCY)
      ? asFrequencies.filter(({ frequencyKHz }) => frequencyKHz === USUAL_FREQUENCY)
      : asFrequencies;
  const wide = frequencies.size > 1 && guesses === asFrequencies ? undefined : replicates(guesses);
  if (wide !== undefined) return { chosen: wide.map(({ reading, guess }) => ({ to, reading, guess })) };
  const [best, next] = [...guesses].sort((a, b) => b.sure - a.sure);
  if (best === undefined) return { chosen: [] };
  const clear = next === undefined || best.sure - next.sure >= LEAD;
  if (clear) return { chosen: [{ to, reading: undefined, guess: best }] };
  return { places: guesses.filter(({ sure }) => best.sure - sure < LEAD).map(({ place }) => place) };
};

const expanded = (guess: PlacedGuess): readonly PlacedGuess[] =>
  guess.to === DATE_AND_TIME ? ['visit_date', 'visit_time'].map((to) => ({ ...guess, to })) : [guess];

/**
 * Lays source columns onto canonical ones by their headings: the surest takes the place, numbered ones are readings, of
 * several frequencies 50 kHz is taken. Where two look alike, nothing is chosen.
 */
export const chooseColumns = (profile: TableProfile): ColumnChoice => {
  const guesses = columnGuesses(profile).flatMap(expanded);
  const targets = new Map<string, PlacedGuess[]>();
  for (const guess of guesses) {
    if (guess.sure < SURE_ENOUGH) continue;
    targets.set(guess.to, [...(targets.get(guess.to) ?? []), guess]);
  }
  const made = [...targets].map(([to, of]) => ({ to, made: chooseOne(to, of) }));
  const chosen = made.flatMap(({ made: one }) => ('chosen' in one ? one.chosen : []));
  const frequencies = new Set(
    chosen.filter(({ to }) => isByFrequency(to)).flatMap(({ guess }) => guess.frequencyKHz ?? []),
  );
  const [only] = frequencies;
  return {
    guesses,
    chosen,
    contested: made.flatMap(({ to, made: one }) => ('places' in one ? [{ to, places: one.places }] : [])),
    frequencyKHz: frequencies.size === 1 && !targets.has('frequency_khz') ? (only ?? null) : null,
  };
};
