import { measureNames } from '../core/messages/en/measure-names';
import { citationLine } from './citation';
import { equationExpression, type Equation, type Verification } from './equation';
import { FFM_KYLE_2001 } from './equations/ffm-kyle-2001';
import { SMM_JANSSEN_2000 } from './equations/smm-janssen-2000';
import { equationNotation } from './equation-notation';
import {
  angleDegrees,
  choose,
  constant,
  difference,
  input,
  product,
  quotient,
  squareRoot,
  sum,
  type Expression,
} from './expression';
import type { InputId } from './input-id';
import { inputsOf } from './inputs-of';
import { coefficientsOf, splitsIntoParts } from './linear-parts';
import type { Measure, MeasureParts } from './measure';
import { MEASURE_FACTS } from './measure-facts';
import type { AnyMeasureId, MeasureId } from './measure-id';
import { substitute } from './substitute';

/** Which equation computes which quantity; null: not computed here. */
export interface EquationsInForce {
  readonly ffm: Equation;
  readonly smm: Equation | null;
  readonly asm: Equation | null;
  readonly tbw: Equation | null;
  readonly ecw: Equation | null;
  /** Vectors corrected by circumferences: from memory, so a clinic switches them on. */
  readonly geometryCorrected: boolean;
}

/** Before a clinic chooses. Nothing from memory stands here. */
export const DEFAULT_EQUATIONS: EquationsInForce = {
  ffm: FFM_KYLE_2001,
  smm: SMM_JANSSEN_2000,
  asm: null,
  tbw: null,
  ecw: null,
  geometryCorrected: false,
};

/** The values that are followed, with the equations in force. */
export interface Catalogue {
  readonly equations: EquationsInForce;
  /** The values that lists, files and the command line show, in order. */
  readonly measures: readonly Measure[];
  /** Those and the values that only explain others. */
  readonly all: readonly Measure[];
  /** Throws where the value is not followed: ask `follows` first where that can be. */
  readonly measure: (id: AnyMeasureId) => Measure;
  readonly follows: (id: AnyMeasureId) => boolean;
}

const heightMetres = quotient(input('height_cm'), constant(100));
const perHeight = (value: Expression): Expression => quotient(value, heightMetres);
const perHeightSquared = (value: Expression): Expression => quotient(value, product(heightMetres, heightMetres));

const weight = input('weight_kg');
const resistance = input('r_ohm');
const reactance = input('xc_ohm');
const impedance = squareRoot(sum(product(resistance, resistance), product(reactance, reactance)));
const bodyMassIndex = perHeightSquared(weight);

interface Details {
  readonly notation: string;
  readonly equation?: Equation;
  readonly parts?: MeasureParts;
  readonly recordedAs?: InputId;
  readonly source?: string;
  readonly verification?: Verification;
}

const define = (id: AnyMeasureId, formula: Expression, details: Details): Measure => ({
  id,
  name: measureNames[id].name,
  ...MEASURE_FACTS[id],
  formula,
  inputs: inputsOf(formula),
  source: details.equation === undefined ? 'definition' : citationLine(details.equation.citation),
  verification: details.equation?.verification ?? 'definition',
  ...details,
});

const recorded = (id: MeasureId, column: InputId, notation: string): Measure =>
  define(id, input(column), { notation, recordedAs: column, source: 'as recorded in the export' });

const INDEX_SOURCE = 'Schutz Y et al. Int J Obes 2002;26:953–960 (FFMI + FMI = BMI, read in the abstract)';

const partsOf = (
  equation: Equation,
  sign: 1 | -1,
  weightCoefficient: 0 | 1,
  index: boolean,
): { readonly parts?: MeasureParts } =>
  splitsIntoParts(equation) ? { parts: { sign, weightCoefficient, perHeightSquared: index } } : {};

/** Litres and kilograms as the equation gives them. */
const computed = (id: MeasureId, equation: Equation): Measure =>
  define(id, equationExpression(equation), {
    notation: equationNotation(equation),
    equation,
    ...partsOf(equation, 1, 0, false),
  });

const index = (id: MeasureId, of: string, equation: Equation): Measure =>
  define(id, perHeightSquared(equationExpression(equation)), {
    notation: `${of} / H²`,
    equation,
    ...partsOf(equation, 1, 0, true),
  });

const MEASURED: readonly Measure[] = [
  recorded('weight', 'weight_kg', 'W'),
  define('bmi', bodyMassIndex, { notation: 'W / H²' }),
  recorded('waist', 'waist_cm', 'waist'),
  define('waist_height', quotient(input('waist_cm'), input('height_cm')), { notation: 'waist / H' }),
  recorded('r', 'r_ohm', 'R'),
  recorded('xc', 'xc_ohm', 'Xc'),
  define('z', impedance, { notation: '√(R² + Xc²)' }),
  define('phase_angle', angleDegrees(reactance, resistance), { notation: 'atan(Xc / R)' }),
  define('r_h', perHeight(resistance), { notation: 'R / H' }),
  define('xc_h', perHeight(reactance), { notation: 'Xc / H' }),
  define('h2_r', quotient(product(input('height_cm'), input('height_cm')), resistance), { notation: 'H² / R' }),
];

const EXPORTED: readonly Measure[] = [
  recorded('ffm_exported', 'ffm_kg', 'FFM, as exported'),
  recorded('fm_exported', 'fm_kg', 'FM, as exported'),
  recorded('smm_exported', 'smm_kg', 'SMM, as exported'),
  recorded('tbw_exported', 'tbw_l', 'TBW, as exported'),
  recorded('ecw_exported', 'ecw_l', 'ECW, as exported'),
  recorded('phase_angle_exported', 'phase_angle_deg', 'phase angle, as exported'),
];

const squared = (of: InputId): Expression => product(input(of), input(of));

/** A = 0.45·arm² + 0.10·waist² + 0.45·calf², each over 4π (cm²); L = 1.1·H (cm). */
const areaPerLength = quotient(
  sum(
    product(constant(0.45 / (4 * Math.PI)), squared('arm_cm')),
    product(constant(0.1 / (4 * Math.PI)), squared('waist_cm')),
    product(constant(0.45 / (4 * Math.PI)), squared('calf_cm')),
  ),
  product(constant(1.1), input('height_cm')),
);

const SPECIFIC_SOURCE =
  'Marini E et al. J Nutr Health Aging 2013;17:515–521 (weights of the segments and the length factor from memory; the use of arm, waist and calf read in Saragat B et al. Exp Gerontol 2014;50:52–56)';

const geometryCorrected: readonly Measure[] = [
  define('r_specific', product(resistance, areaPerLength), {
    notation: 'R · A / L, A = (0.45·arm² + 0.10·waist² + 0.45·calf²) / 4π, L = 1.1·H',
    source: SPECIFIC_SOURCE,
    verification: 'from-memory',
  }),
  define('xc_specific', product(reactance, areaPerLength), {
    notation: 'Xc · A / L, A = (0.45·arm² + 0.10·waist² + 0.45·calf²) / 4π, L = 1.1·H',
    source: SPECIFIC_SOURCE,
    verification: 'from-memory',
  }),
];

const fatFree = (equation: Equation): readonly Measure[] => {
  const fatFreeMass = equationExpression(equation);
  const fatMass = difference(weight, fatFreeMass);
  const source = `${citationLine(equation.citation)}; ${INDEX_SOURCE}`;
  return [
    computed('ffm', equation),
    define('fm', fatMass, { notation: 'W − FFM', equation, ...partsOf(equation, -1, 1, false) }),
    define('fat_percent', quotient(product(constant(100), fatMass), weight), { notation: '100·FM / W', equation }),
    { ...index('ffmi', 'FFM', equation), source },
    define('fmi', perHeightSquared(fatMass), {
      notation: 'FM / H²',
      equation,
      source,
      ...partsOf(equation, -1, 1, true),
    }),
  ];
};

const appendicular = (equation: Equation): readonly Measure[] => [
  computed('asm', equation),
  index('asmi', 'ASM', equation),
  define('asm_bmi', quotient(equationExpression(equation), bodyMassIndex), { notation: 'ASM / BMI', equation }),
];

const weightTerm = (equation: Equation): Expression => {
  const whole = equationExpression(equation);
  // A weight term that is divided, or differs by age, is what the weight adds to the whole.
  if (
    equation.branches.some(({ dividedBy, ageFrom, ageBelow }) =>
      [dividedBy, ageFrom, ageBelow].some((part) => part !== undefined),
    )
  )
    return difference(whole, substitute(whole, 'weight_kg', constant(0)));
  const { F, M } = coefficientsOf(equation, 'weight');
  return product(
    F === M
      ? constant(M)
      : choose(
          { when: [{ input: 'sex_male', from: 1 }], then: constant(M) },
          { when: [{ input: 'sex_male', below: 1 }], then: constant(F) },
        ),
    weight,
  );
};

const support = (equation: Equation): readonly Measure[] => [
  define('z_h', perHeight(impedance), { notation: '√(R² + Xc²) / H' }),
  define('ffm_without_weight', difference(equationExpression(equation), weightTerm(equation)), {
    notation: 'FFM − its weight term',
    equation,
  }),
];

/** The catalogue with these equations in force. */
export const catalogueFor = (equations: EquationsInForce): Catalogue => {
  const { ffm, smm, asm, tbw, ecw } = equations;
  const measures = [
    ...MEASURED,
    ...(equations.geometryCorrected ? geometryCorrected : []),
    ...fatFree(ffm),
    ...(smm === null ? [] : [computed('smm', smm), index('smi', 'SMM', smm)]),
    ...(asm === null ? [] : appendicular(asm)),
    ...(tbw === null ? [] : [computed('tbw', tbw)]),
    ...(ecw === null ? [] : [computed('ecw', ecw)]),
    ...EXPORTED,
  ];
  const all = [...measures, ...support(ffm)];
  const byId = new Map<AnyMeasureId, Measure>(all.map((measure) => [measure.id, measure]));
  return {
    equations,
    measures,
    all,
    measure: (id) => {
      const found = byId.get(id);
      if (found === undefined) throw new Error(`the catalogue in force holds no ${id}`);
      return found;
    },
    follows: (id) => byId.has(id),
  };
};

/** The catalogue before a clinic chooses. */
export const DEFAULT_CATALOGUE: Catalogue = catalogueFor(DEFAULT_EQUATIONS);
