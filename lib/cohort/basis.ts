import { ALL_MEASURES } from '../measures/catalogue';
import type { Measure } from '../measures/measure';

/** What a visit must hold for a value: the same inputs make the same basis. Each is one bit and one count of readings. */
export interface Basis {
  readonly index: number;
  /** The column of `visits` that counts the readings which hold it. */
  readonly column: string;
  /** A value that exists exactly where the basis is held. */
  readonly witness: string;
}

const keyOf = (measure: Measure): string => measure.inputs.join('+');

const KEYS = [...new Set(ALL_MEASURES.map(keyOf))];

/** Every basis of the catalogue. */
export const BASES: readonly Basis[] = KEYS.map((key, index) => ({
  index,
  column: `k_${String(index)}`,
  witness: ALL_MEASURES.find((measure) => keyOf(measure) === key)?.id ?? '',
}));

/** The basis of a value. */
export const basisOf = (measure: Measure): Basis => {
  const basis = BASES[KEYS.indexOf(keyOf(measure))];
  if (basis === undefined) throw new Error(`no basis for ${measure.id}`);
  return basis;
};
