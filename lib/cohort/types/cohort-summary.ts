import type { IsoDate } from '../../core/iso-date';
import type { RuleId } from '../../measures/comparability-rule';
import type { ComparableSetting } from './filter';

/** How completely conditions stand beside the readings of the data. Counts are readings. */
export interface ConditionCoverage {
  readonly rule: RuleId;
  readonly recorded: number;
  readonly byProcedure: number;
  readonly unknown: number;
  readonly notRecorded: number;
}

export interface CohortSummary {
  readonly asOf: IsoDate;
  readonly firstVisit: IsoDate;
  readonly clients: number;
  readonly visits: number;
  readonly readings: number;
  /** Visits since the Monday of as-of's week, and those of them without a broken rule or a stop. */
  readonly visitsSinceMonday: number;
  readonly usableSinceMonday: number;
  readonly programs: readonly { readonly name: string; readonly clients: number }[];
  readonly sites: readonly string[];
  readonly coverage: readonly ConditionCoverage[];
  /** Whether any condition column holds anything anywhere, or a procedure was declared. */
  readonly conditionsKnown: boolean;
  readonly hasImpedance: boolean;
  /** Whether any visit holds a height and a weight, so that its body mass index is known. */
  readonly knowsBmi: boolean;
  /** Baseline→latest pairs of the lean value that each setting holds. */
  readonly pairsBySetting: Readonly<Record<ComparableSetting, number>>;
  /** Visits of which a declared procedure stands for a condition, and how many of the strict pairs rest on that. */
  readonly byProcedure: { readonly visits: number; readonly pairs: number };
  /** The strictest setting that holds pairs. */
  readonly openingSetting: ComparableSetting;
  readonly posture: 'standing' | 'lying' | 'mixed' | 'unknown';
}

export interface ClientListRow {
  readonly clientKey: number;
  readonly client: string;
  readonly familyName: string | null;
  readonly givenName: string | null;
  readonly sex: 'F' | 'M' | null;
  readonly age: number | null;
  readonly program: string;
  readonly site: string | null;
  readonly visits: number;
  readonly latest: IsoDate;
}

/** One client's latest indices, kg/m². */
export interface IndexPoint {
  readonly clientKey: number;
  readonly client: string;
  readonly program: string;
  readonly sex: 'F' | 'M';
  readonly date: IsoDate;
  readonly ffmi: number;
  readonly fmi: number;
  readonly held: boolean;
}
