import type { Ucum } from '../core/units';
import type { MeasureGroup } from './measure';
import type { AnyMeasureId } from './measure-id';

/** What is true of a value whichever equation is in force. */
export interface MeasureFacts {
  readonly unit: Ucum;
  /** Decimals on screen. */
  readonly decimals: number;
  readonly group: MeasureGroup;
}

const facts = (unit: Ucum, decimals: number, group: MeasureGroup): MeasureFacts => ({ unit, decimals, group });

/** Unit, decimals and group of every value. */
export const MEASURE_FACTS: Readonly<Record<AnyMeasureId, MeasureFacts>> = {
  weight: facts('kg', 1, 'weight'),
  bmi: facts('kg/m2', 1, 'bmi'),
  waist: facts('cm', 1, 'waist'),
  waist_height: facts('1', 3, 'waist'),
  r: facts('Ohm', 1, 'electrical'),
  xc: facts('Ohm', 1, 'electrical'),
  z: facts('Ohm', 1, 'electrical'),
  phase_angle: facts('deg', 2, 'electrical'),
  r_h: facts('Ohm/m', 1, 'electrical'),
  xc_h: facts('Ohm/m', 1, 'electrical'),
  h2_r: facts('cm2/Ohm', 1, 'electrical'),
  r_specific: facts('Ohm.cm', 1, 'electrical'),
  xc_specific: facts('Ohm.cm', 1, 'electrical'),
  ffm: facts('kg', 1, 'composition'),
  fm: facts('kg', 1, 'composition'),
  fat_percent: facts('%', 1, 'composition'),
  ffmi: facts('kg/m2', 1, 'composition'),
  fmi: facts('kg/m2', 1, 'composition'),
  smm: facts('kg', 1, 'composition'),
  smi: facts('kg/m2', 1, 'composition'),
  asm: facts('kg', 1, 'composition'),
  asmi: facts('kg/m2', 2, 'composition'),
  asm_bmi: facts('m2', 3, 'composition'),
  tbw: facts('L', 1, 'composition'),
  ecw: facts('L', 1, 'composition'),
  ffm_exported: facts('kg', 1, 'composition-exported'),
  fm_exported: facts('kg', 1, 'composition-exported'),
  smm_exported: facts('kg', 1, 'composition-exported'),
  tbw_exported: facts('L', 1, 'composition-exported'),
  ecw_exported: facts('L', 1, 'composition-exported'),
  phase_angle_exported: facts('deg', 1, 'electrical'),
  z_h: facts('Ohm/m', 1, 'electrical'),
  ffm_without_weight: facts('kg', 1, 'composition'),
};
