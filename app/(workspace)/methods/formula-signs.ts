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

/** Whether a value's notation takes the height in centimetres; the others take metres. */
export const inCentimetres = (id: Measure['id']): boolean =>
  ['h2_r', 'waist_height', 'r_specific', 'xc_specific'].includes(id);

const NOTATION_UNITS = {
  R: 'Ω',
  Xc: 'Ω',
  H: 'm',
  W: 'kg',
  FFM: 'kg',
  FM: 'kg',
  SMM: 'kg',
  ASM: 'kg',
  TBW: 'L',
  ECW: 'L',
  ΔW: 'kg',
  ΔFM: 'kg',
  ΔFFM: 'kg',
  f: '',
  BMI: 'kg/m²',
  waist: 'cm',
  arm: 'cm',
  calf: 'cm',
  sex: '',
  thigh: 'cm',
  BV: 'L',
  BMC: 'kg',
} as const;

type NotationSign = keyof typeof NOTATION_UNITS;

const IN_NOTATION = Object.keys(NOTATION_UNITS) as readonly NotationSign[];

/** The signs of a one-line notation. */
export const notationSigns = (notation: string, heightInCentimetres: boolean, words: Words): readonly FormulaSign[] => {
  const present = new Set(notation.match(/[A-Za-zΔ]+/g) ?? []);
  return IN_NOTATION.filter((sign) => present.has(sign)).map((sign) => ({
    sign,
    meaning: sign === 'sex' ? words.sexMen : words[sign],
    unit: sign === 'H' && heightInCentimetres ? 'cm' : NOTATION_UNITS[sign],
  }));
};
