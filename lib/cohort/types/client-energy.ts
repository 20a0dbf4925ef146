import type { IsoDate } from '../../core/iso-date';
import type { Equation } from '../../measures/equation';
import type { GuardCode } from '../../measures/guard';

/** Energy of the tissue that changed since baseline, in MJ and per day; only where fat or fat-free mass changed by more than error. */
export interface TissueEnergy {
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly days: number;
  readonly fmChange: number;
  readonly ffmChange: number;
  readonly megajoules: number;
}

/** Resting energy expenditure at the latest visit with a weight. An estimate for orientation, never a target. */
export interface ClientEnergy {
  readonly equation: Equation;
  readonly on: IsoDate;
  /** kcal/d; null where something stops it or an input is missing. */
  readonly resting: number | null;
  /** What stops it. */
  readonly stops: readonly GuardCode[];
  /** Where the visit lies outside the group that the equation was made for. */
  readonly outside: readonly GuardCode[];
  /** Physical activity level of the client's latest record. */
  readonly activity: { readonly level: number; readonly on: IsoDate } | null;
  readonly tissue: TissueEnergy | null;
}

/** The latest waist with what is known of the person, for the cut-offs that somebody chose. */
export interface ClientWaist {
  readonly on: IsoDate;
  readonly waistCm: number;
  readonly ratio: number | null;
  readonly sex: 'F' | 'M' | null;
  readonly ageYears: number | null;
  readonly bmi: number | null;
  /** Pregnancy, growth: no cut-off is applied. */
  readonly stops: readonly GuardCode[];
}
