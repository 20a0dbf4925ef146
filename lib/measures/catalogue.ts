import { measureNames } from '../core/messages/en/measure-names';
import type { Ucum } from '../core/units';
import { equationExpression, type Equation, type Verification } from './equation';
import { FFM_KYLE_2001 } from './equations/ffm-kyle-2001';
import { SMM_JANSSEN_2000 } from './equations/smm-janssen-2000';
import {
  angleDegrees,
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
import type { Measure, MeasureGroup, MeasureParts } from './measure';
import { MEASURE_IDS, SUPPORT_IDS, type AnyMeasureId, type MeasureId } from './measure-id';

const heightMetres = quotient(input('height_cm'), constant(100));
const perHeight = (value: Expression): Expression => quotient(value, heightMetres);
const perHeightSquared = (value: Expression): Expression => quotient(value, product(heightMetres, heightMetres));

const weight = input('weight_kg');
const resistance = input('r_ohm');
const reactance = input('xc_ohm');
const impedance = squareRoot(sum(product(resistance, resistance), product(reactance, reactance)));
const fatFreeMass = equationExpression(FFM_KYLE_2001);
const fatMass = difference(weight, fatFreeMass);
const skeletalMuscle = equationExpression(SMM_JANSSEN_2000);
const weightTerm = FFM_KYLE_2001.terms.find((term) => term.regressor === 'weight');

interface Details {
  readonly notation: string;
  readonly equation?: Equation;
  readonly parts?: MeasureParts;
  readonly recordedAs?: InputId;
  readonly source?: string;
  readonly verification?: Verification;
}

const define = (
  id: AnyMeasureId,
  unit: Ucum,
  decimals: number,
  group: MeasureGroup,
  formula: Expression,
  details: Details,
): Measure => ({
  id,
  name: measureNames[id].name,
  unit,
  decimals,
  group,
  formula,
  inputs: inputsOf(formula),
  source: details.equation?.source ?? 'definition',
  verification: details.equation?.verification ?? 'definition',
  ...details,
});

const recorded = (
  id: MeasureId,
  unit: Ucum,
  decimals: number,
  group: MeasureGroup,
  column: InputId,
  notation: string,
) =>
  define(id, unit, decimals, group, input(column), {
    notation,
    recordedAs: column,
    source: 'as recorded in the export',
  });

const parts = (sign: 1 | -1, weightCoefficient: 0 | 1, index: boolean): MeasureParts => ({
  sign,
  weightCoefficient,
  perHeightSquared: index,
});

const INDEX_SOURCE = 'Schutz Y et al. Int J Obes 2002;26:953–960 (FFMI + FMI = BMI, read in the abstract)';

const ALL: readonly Measure[] = [
  recorded('weight', 'kg', 1, 'weight', 'weight_kg', 'W'),
  define('bmi', 'kg/m2', 1, 'bmi', perHeightSquared(weight), { notation: 'W / H²' }),
  recorded('r', 'Ohm', 1, 'electrical', 'r_ohm', 'R'),
  recorded('xc', 'Ohm', 1, 'electrical', 'xc_ohm', 'Xc'),
  define('z', 'Ohm', 1, 'electrical', impedance, { notation: '√(R² + Xc²)' }),
  define('phase_angle', 'deg', 2, 'electrical', angleDegrees(reactance, resistance), { notation: 'atan(Xc / R)' }),
  define('r_h', 'Ohm/m', 1, 'electrical', perHeight(resistance), { notation: 'R / H' }),
  define('xc_h', 'Ohm/m', 1, 'electrical', perHeight(reactance), { notation: 'Xc / H' }),
  define('h2_r', 'cm2/Ohm', 1, 'electrical', quotient(product(input('height_cm'), input('height_cm')), resistance), {
    notation: 'H² / R',
  }),
  define('ffm', 'kg', 1, 'composition', fatFreeMass, {
    notation: '−4.104 + 0.518·H²/R + 0.231·W + 0.130·Xc + 4.229·sex',
    equation: FFM_KYLE_2001,
    parts: parts(1, 0, false),
  }),
  define('fm', 'kg', 1, 'composition', fatMass, {
    notation: 'W − FFM',
    equation: FFM_KYLE_2001,
    parts: parts(-1, 1, false),
  }),
  define('fat_percent', '%', 1, 'composition', quotient(product(constant(100), fatMass), weight), {
    notation: '100·FM / W',
    equation: FFM_KYLE_2001,
  }),
  define('ffmi', 'kg/m2', 1, 'composition', perHeightSquared(fatFreeMass), {
    notation: 'FFM / H²',
    equation: FFM_KYLE_2001,
    parts: parts(1, 0, true),
    source: `${FFM_KYLE_2001.source}; ${INDEX_SOURCE}`,
  }),
  define('fmi', 'kg/m2', 1, 'composition', perHeightSquared(fatMass), {
    notation: 'FM / H²',
    equation: FFM_KYLE_2001,
    parts: parts(-1, 1, true),
    source: `${FFM_KYLE_2001.source}; ${INDEX_SOURCE}`,
  }),
  define('smm', 'kg', 1, 'composition', skeletalMuscle, {
    notation: '5.102 + 0.401·H²/R + 3.825·sex − 0.071·age',
    equation: SMM_JANSSEN_2000,
    parts: parts(1, 0, false),
  }),
  define('smi', 'kg/m2', 1, 'composition', perHeightSquared(skeletalMuscle), {
    notation: 'SMM / H²',
    equation: SMM_JANSSEN_2000,
    parts: parts(1, 0, true),
  }),
  recorded('ffm_exported', 'kg', 1, 'composition-exported', 'ffm_kg', 'FFM, as exported'),
  recorded('fm_exported', 'kg', 1, 'composition-exported', 'fm_kg', 'FM, as exported'),
  recorded('smm_exported', 'kg', 1, 'composition-exported', 'smm_kg', 'SMM, as exported'),
  recorded('tbw_exported', 'L', 1, 'composition-exported', 'tbw_l', 'TBW, as exported'),
  recorded('ecw_exported', 'L', 1, 'composition-exported', 'ecw_l', 'ECW, as exported'),
  recorded('phase_angle_exported', 'deg', 1, 'electrical', 'phase_angle_deg', 'phase angle, as exported'),
  define('z_h', 'Ohm/m', 1, 'electrical', perHeight(impedance), { notation: '√(R² + Xc²) / H' }),
  define(
    'ffm_without_weight',
    'kg',
    1,
    'composition',
    difference(fatFreeMass, product(constant(weightTerm?.coefficient ?? 0), weight)),
    { notation: 'FFM − 0.231·W', equation: FFM_KYLE_2001 },
  ),
];

const BY_ID = new Map<AnyMeasureId, Measure>(ALL.map((measure) => [measure.id, measure]));

/** The catalogue entry of a value. */
export const measureById = (id: AnyMeasureId): Measure => {
  const found = BY_ID.get(id);
  if (found === undefined) throw new Error(`the catalogue holds no ${id}`);
  return found;
};

/** The values that lists, files and the command line know, in order. */
export const MEASURES: readonly Measure[] = MEASURE_IDS.map(measureById);

/** Those and the values that only explain others. */
export const ALL_MEASURES: readonly Measure[] = [...MEASURES, ...SUPPORT_IDS.map(measureById)];
