import type { Ucum } from '../core/units';
import type { Equation, Verification } from './equation';
import type { Expression } from './expression';
import type { InputId } from './input-id';
import type { AnyMeasureId } from './measure-id';

/**
 * What a guard looks at: weight, BMI and waist; the electrical values; composition computed here; composition and phase angle
 * as the device exported them.
 */
export type MeasureGroup = 'weight' | 'bmi' | 'waist' | 'electrical' | 'composition' | 'composition-exported';

/** A value that Driftline follows, as data. */
export interface Measure {
  readonly id: AnyMeasureId;
  readonly name: string;
  readonly unit: Ucum;
  /** Decimals on screen. */
  readonly decimals: number;
  readonly group: MeasureGroup;
  readonly formula: Expression;
  /** The formula in the field's notation. */
  readonly notation: string;
  readonly inputs: readonly InputId[];
  /** The regression behind it, where there is one. */
  readonly equation?: Equation;
  /** For FM and indices: how the regression's parts enter, see change-terms. */
  readonly parts?: MeasureParts;
  /** The export's column whose recorded decimals bound the error from below, for values that are recorded as such. */
  readonly recordedAs?: InputId;
  readonly source: string;
  readonly verification: Verification;
}

/**
 * How a value is made from its regression E: value = (weightCoefficient · W + sign · E) / H^heightPower
 * (FFM: 0, +1, 0; FM = W − FFM: 1, −1, 0; FFMI: 0, +1, 2; FMI: 1, −1, 2; H in metres).
 */
export interface MeasureParts {
  readonly sign: 1 | -1;
  readonly weightCoefficient: 0 | 1;
  readonly perHeightSquared: boolean;
}
