import type { IsoDate } from '../../core/iso-date';
import type { RuleId } from '../../measures/comparability-rule';
import type { GuardCode } from '../../measures/guard';
import type { AnyMeasureId, MeasureId } from '../../measures/measure-id';
import type { ChangeConfidence } from './change-confidence';
import type { ClientWeightIntention } from '../weight-intention';
import type { ChangeRow } from './change-row';
import type { ClientEnergy, ClientWaist } from './client-energy';
import type { ClientVectorPath } from './vector-change';

/** A condition of one visit. `not-recorded`: nobody recorded it at this site in this month. */
export type ConditionState = 'met' | 'by-procedure' | 'not-met' | 'unknown' | 'not-recorded';

export interface ClientVisit {
  readonly visit: number;
  readonly date: IsoDate;
  readonly purpose: string;
  readonly site: string | null;
  readonly device: string | null;
  readonly position: string | null;
  readonly posture: string | null;
  readonly readings: number;
  readonly values: Readonly<Partial<Record<AnyMeasureId, number>>>;
  readonly conditions: Readonly<Partial<Record<RuleId, ConditionState>>>;
  readonly guards: readonly GuardCode[];
  /** By value with an equation: where the visit lies outside the group that the equation was made for. */
  readonly outsideEquation: Readonly<Partial<Record<AnyMeasureId, readonly GuardCode[]>>>;
  /** Grade of the pair baseline → this visit; undefined for the baseline itself. */
  readonly comparableWithBaseline?: 'comparable' | 'by-procedure' | 'caution' | 'no';
}

export interface ClientEnrolment {
  readonly program: string;
  readonly start: IsoDate | null;
  readonly end: IsoDate | null;
  readonly endReason: string | null;
  readonly baseline: IsoDate | null;
  readonly lateBaseline: boolean;
  /** A person chose the baseline; by date alone it would be `baselineByDate`. */
  readonly baselineChosen: boolean;
  readonly baselineByDate: IsoDate | null;
  /** What is intended for the weight: the client's own column, else the program; null = nobody said. */
  readonly weightIntended: ClientWeightIntention | null;
}

/** Everything the page of one client shows. */
export interface ClientDetail {
  readonly clientKey: number;
  readonly client: string;
  readonly familyName: string | null;
  readonly givenName: string | null;
  readonly sexForEquations: 'F' | 'M' | null;
  /** The sexes recorded in the client's rows, most frequent first. */
  readonly sexesRecorded: readonly string[];
  readonly ageAtLatest: number | null;
  readonly seriesHeightCm: number | null;
  readonly enrolments: readonly ClientEnrolment[];
  readonly visits: readonly ClientVisit[];
  /** Every pair of the chosen value, and baseline→latest of every value. */
  readonly pairs: readonly ChangeRow[];
  readonly latestChanges: readonly ChangeRow[];
  /** The fat-free mass index from visit to visit: which places of the index path may be joined. */
  readonly indexSteps: readonly ChangeRow[];
  readonly missing: readonly { readonly measure: MeasureId; readonly needs: readonly string[] }[];
  readonly vector: ClientVectorPath;
  /** Of the chosen value's change from baseline; null where it is not judged. */
  readonly confidence: ChangeConfidence | null;
  /** Null without an equation in force or a weight. */
  readonly energy: ClientEnergy | null;
  readonly waist: ClientWaist | null;
}
