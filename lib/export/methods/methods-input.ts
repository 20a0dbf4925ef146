import type { ComparableSetting, Level } from '../../cohort/types/filter';
import type { CohortSummary } from '../../cohort/types/cohort-summary';
import type { EquationFit, ExportAgreement } from '../../cohort/types/methods';
import type { PrecisionRow } from '../../cohort/types/precision-row';
import type { Settings } from '../../cohort/settings';
import type { Catalogue } from '../../measures/catalogue';
import type { Equation } from '../../measures/equation';
import type { MeasureId } from '../../measures/measure-id';

/** What is recorded in one column of the visits, and at how many of them. */
export interface Recorded<T> {
  readonly value: T;
  readonly visits: number;
}

/** The instrument as the data record it. Counts are visits with impedance; those missing in a list hold nothing there. */
export interface RecordedInstrument {
  readonly visits: number;
  readonly devices: readonly Recorded<string>[];
  readonly electrodePaths: readonly Recorded<string>[];
  readonly postures: readonly Recorded<'lying' | 'standing'>[];
  readonly frequenciesKhz: readonly Recorded<number>[];
}

/** Everything that a methods paragraph speaks of, as plain data of one data version. */
export interface MethodsInput {
  readonly softwareVersion: string;
  readonly dataVersion: string;
  readonly catalogue: Catalogue;
  readonly settings: Settings;
  readonly summary: CohortSummary;
  /** Null where it was not asked for: then nothing is said of it. */
  readonly instrument: RecordedInstrument | null;
  /** The values that the report shows; those that are not followed are left out. */
  readonly reported: readonly MeasureId[];
  /** The level at which `precision` was computed. */
  readonly level: Level;
  readonly comparable: ComparableSetting;
  readonly precision: readonly PrecisionRow[];
  readonly fits: readonly EquationFit[];
  /** The equation of the resting energy, where the report shows it. */
  readonly restingEnergy: Equation | null;
  /** Whether the report shows mean changes of programs, and vectors with their tests. */
  readonly meanChanges: boolean;
  readonly vectors: boolean;
  /** Exported against computed values, where the report shows them. */
  readonly agreements: readonly ExportAgreement[];
}
