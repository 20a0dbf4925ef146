import type { Messages } from '../../../lib/core/messages/en';
import type { Equation, Regressor } from '../../../lib/measures/equation';
import type { Measure } from '../../../lib/measures/measure';

type Words = Messages['methodsEntries']['sign'];

/** A sign of a formula: what it stands for, in which unit. */
export interface FormulaSign {
  readonly sign: string;
  readonly meaning: string;
  readonly unit: string;
}

type SignId = 'R' | 'Xc' | 'Z' | 'H' | 'W' | 'age' | 'sex' | 'FFM' | 'FM';

const SIGNS: Readonly<Record<Regressor, readonly SignId[]>> = {
  height2_per_resistance: ['H', 'R'],
  height2_per_impedance: ['H', 'Z'],
  height2_per_reactance: ['H', 'Xc'],
  resistance: ['R'],
  reactance: ['Xc'],
  weight: ['W'],
  height: ['H'],
  height2: ['H'],
  age: ['age'],
  sex: ['sex'],
  ffm: ['FFM'],
  fm: ['FM'],
};

const UNITS: Readonly<Record<SignId, string>> = {
  R: 'Ω',
  Xc: 'Ω',
  Z: 'Ω',
  H: 'cm',
  W: 'kg',
  age: '',
  sex: '',
  FFM: 'kg',
  FM: 'kg',
};

/** The signs of an equation, each once, in the order in which they come. */
export const equationSigns = (equation: Equation, words: Words): readonly FormulaSign[] => {
  const ids = equation.branches.flatMap(({ terms, dividedBy }) =>
    [...terms, ...(dividedBy?.terms ?? [])].flatMap(({ regressor }) => SIGNS[regressor]),
  );
  return [...new Set(ids)].map((sign) => ({
    sign,
    meaning: sign === 'sex' ? (equation.sexCoding.M === 1 ? words.sexMen : words.sexWomen) : words[sign],
    unit: sign === 'age' ? words.years : UNITS[sign],
  }));
};

/** Values whose notation takes the height in centimetres; the others take metres. */
const HEIGHT_IN_CENTIMETRES: ReadonlySet<string> = new Set(['h2_r', 'waist_height', 'r_specific', 'xc_specific']);

const IN_NOTATION = ['R', 'Xc', 'H', 'W', 'FFM', 'FM', 'SMM', 'ASM', 'BMI', 'waist', 'arm', 'calf'] as const;

const NOTATION_UNITS: Readonly<Record<(typeof IN_NOTATION)[number], string>> = {
  R: 'Ω',
  Xc: 'Ω',
  H: 'm',
  W: 'kg',
  FFM: 'kg',
  FM: 'kg',
  SMM: 'kg',
  ASM: 'kg',
  BMI: 'kg/m²',
  waist: 'cm',
  arm: 'cm',
  calf: 'cm',
};

/** The signs of a value's notation. */
export const notationSigns = (
  { id, notation }: Pick<Measure, 'id' | 'notation'>,
  words: Words,
): readonly FormulaSign[] => {
  const present = new Set(notation.match(/[A-Za-z]+/g) ?? []);
  return IN_NOTATION.filter((sign) => present.has(sign)).map((sign) => ({
    sign,
    meaning: words[sign],
    unit: sign === 'H' && HEIGHT_IN_CENTIMETRES.has(id) ? 'cm' : NOTATION_UNITS[sign],
  }));
};
