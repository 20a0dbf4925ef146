import type { IsoDate } from '../../core/iso-date';
import type { Equation, Quantity } from '../../measures/equation';
import type { GuardCode } from '../../measures/guard';
import type { MeasureId } from '../../measures/measure-id';
import type { LimitsOfAgreement } from '../../stats/limits-of-agreement';

/** How many visits with a computed value meet what the equation was made for. Counts are visits under the filter. */
export interface EquationFit {
  readonly quantity: Quantity;
  readonly equation: Equation;
  readonly visits: number;
  readonly inside: number;
  /** Visits outside, by what they miss; a visit can miss several. */
  readonly outside: readonly { readonly code: GuardCode; readonly visits: number }[];
}

/** One person's value got in two ways at one visit. */
export interface AgreementPoint {
  readonly clientKey: number;
  readonly client: string;
  readonly date: IsoDate;
  readonly computed: number;
  readonly exported: number;
}

/**
 * A value as computed here against the same as the device exported it: exported minus computed, one visit per client.
 * Visits at which a guard stops either value take no part; those outside the equation's group do.
 */
export interface ExportAgreement {
  readonly computed: MeasureId;
  readonly exported: MeasureId;
  readonly points: readonly AgreementPoint[];
  /** Undefined for fewer than three people. */
  readonly agreement: LimitsOfAgreement | undefined;
}

/** One equation against the one in force: its value minus the other's, one visit per client at which no guard stops either. */
export interface EquationDifference {
  readonly equation: Equation;
  readonly n: number;
  /** People outside the group of either equation; they are counted in n. */
  readonly outside: number;
  readonly mean: number;
  readonly sd: number | null;
  readonly quantiles: Readonly<Record<'p5' | 'p25' | 'p50' | 'p75' | 'p95', number>>;
  readonly differences: readonly number[];
}

/** Several equations of one quantity on the loaded people. Energy in kcal/d. */
export interface EquationComparison {
  readonly quantity: Quantity;
  readonly against: Equation;
  readonly differences: readonly EquationDifference[];
}

/** One way of measuring as the readings name it; null where a visit does not say. */
export interface MeasuredWay {
  readonly device: string | null;
  readonly electrodePath: string | null;
  readonly posture: 'lying' | 'standing' | null;
  readonly frequencyKhz: number | null;
  /** Visits with a resistance. */
  readonly visits: number;
}
