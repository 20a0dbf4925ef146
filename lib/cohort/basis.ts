import { inputsForSex } from '../measures/inputs-of';
import type { Measure } from '../measures/measure';

/** What a visit must hold for a value: the same inputs, for either sex, make the same basis. Each is one bit and one count of readings. */
export interface Basis {
  readonly index: number;
  /** The column of `visits` that counts the readings which hold it. */
  readonly column: string;
  /** A value that exists exactly where the basis is held. */
  readonly witness: string;
}

/** The bases of a catalogue in force. */
export interface Bases {
  readonly list: readonly Basis[];
  readonly of: (measure: Measure) => Basis;
}

const keyOf = ({ formula }: Measure): string =>
  (['F', 'M'] as const).map((sex) => inputsForSex(formula, sex).join('+')).join(' ');

/** Bits of an INTEGER without its sign. */
const BITS = 31;

/** The bases of these values, each one bit; throws where there are more than an INTEGER holds. */
export const basesOf = (measures: readonly Measure[]): Bases => {
  const keys = [...new Set(measures.map(keyOf))];
  if (keys.length > BITS) throw new RangeError(`${String(keys.length)} bases, and an INTEGER holds ${String(BITS)}`);
  const list = keys.map((key, index) => ({
    index,
    column: `k_${String(index)}`,
    witness: measures.find((measure) => keyOf(measure) === key)?.id ?? '',
  }));
  return {
    list,
    of: (measure) => {
      const basis = list[keys.indexOf(keyOf(measure))];
      if (basis === undefined) throw new Error(`no basis for ${measure.id}`);
      return basis;
    },
  };
};
