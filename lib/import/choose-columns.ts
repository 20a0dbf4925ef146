import { columnGuesses, type PlacedGuess } from './column-guesses';
import { COLUMN_BY_NAME } from './columns';
import { isByFrequency } from './guess-column';
import type { TableProfile } from './mapping';
import { DATE_AND_TIME } from './synonyms/column-synonyms';
import { replicates } from './wide-shape';

export interface ChosenColumn {
  readonly to: string;
  readonly reading: number | undefined;
  readonly guess: PlacedGuess;
}

/** Which source columns fill which canonical ones. */
export interface ColumnChoice {
  readonly guesses: readonly PlacedGuess[];
  readonly chosen: readonly ChosenColumn[];
  /** The one frequency of the chosen impedance columns, where their headings name it. */
  readonly frequencyKHz: number | null;
}

const SURE_ENOUGH = 0.5;
/** How much surer one heading has to be than the next; figures under two names or units may differ. */
const LEAD = { figures: 0.08, other: 0.05 } as const;
const USUAL_FREQUENCY = 50;

const numberAsFrequency = (guesses: readonly PlacedGuess[]): readonly PlacedGuess[] =>
  guesses.map((guess) =>
    guess.frequencyKHz === null && guess.number !== null && guess.number > 4
      ? { ...guess, frequencyKHz: guess.number, number: null }
      : guess,
  );

const chooseOne = (to: string, given: readonly PlacedGuess[]): readonly ChosenColumn[] => {
  const numbered = given.some(({ number }) => number !== null);
  const plain = numbered ? replicates(given) : undefined;
  const asFrequencies = plain === undefined && numbered && isByFrequency(to) ? numberAsFrequency(given) : given;
  const frequencies = new Set(asFrequencies.flatMap(({ frequencyKHz }) => frequencyKHz ?? []));
  const guesses =
    frequencies.size > 1 && frequencies.has(USUAL_FREQUENCY)
      ? asFrequencies.filter(({ frequencyKHz }) => frequencyKHz === USUAL_FREQUENCY)
      : asFrequencies;
  const wide = frequencies.size > 1 && guesses === asFrequencies ? undefined : replicates(guesses);
  if (wide !== undefined) return wide.map(({ reading, guess }) => ({ to, reading, guess }));
  const best = Math.max(...guesses.map(({ sure }) => sure));
  const lead = COLUMN_BY_NAME.get(to)?.type === 'number' ? LEAD.figures : LEAD.other;
  return guesses.filter(({ sure }) => best - sure < lead).map((guess) => ({ to, reading: undefined, guess }));
};

/** Of impedance columns of several frequencies those of the usual one, for R and Xc of different ones are no pair. */
const ofOneFrequency = (chosen: readonly ChosenColumn[]): readonly ChosenColumn[] => {
  const frequencies = new Set(chosen.flatMap(({ guess }) => guess.frequencyKHz ?? []));
  if (frequencies.size < 2 || !frequencies.has(USUAL_FREQUENCY)) return chosen;
  return chosen.filter(({ guess }) => guess.frequencyKHz === null || guess.frequencyKHz === USUAL_FREQUENCY);
};

const expanded = (guess: PlacedGuess): readonly PlacedGuess[] =>
  guess.to === DATE_AND_TIME ? ['visit_date', 'visit_time'].map((to) => ({ ...guess, to })) : [guess];

/**
 * Lays source columns onto canonical ones by their headings: the surest takes the place, numbered ones are readings, of
 * several frequencies 50 kHz is taken. Where two look alike, both are chosen without a reading: a person is asked.
 */
export const chooseColumns = (profile: TableProfile): ColumnChoice => {
  const guesses = columnGuesses(profile).flatMap(expanded);
  const targets = new Map<string, PlacedGuess[]>();
  for (const guess of guesses) {
    if (guess.sure < SURE_ENOUGH) continue;
    targets.set(guess.to, [...(targets.get(guess.to) ?? []), guess]);
  }
  const chosen = ofOneFrequency([...targets].flatMap(([to, of]) => chooseOne(to, of)));
  const frequencies = new Set(
    chosen.filter(({ to }) => isByFrequency(to)).flatMap(({ guess }) => guess.frequencyKHz ?? []),
  );
  const [only] = frequencies;
  return {
    guesses,
    chosen,
    frequencyKHz: frequencies.size === 1 && !targets.has('frequency_khz') ? (only ?? null) : null,
  };
};
