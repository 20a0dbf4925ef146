import type { Catalogue } from '../../measures/catalogue';
import type { ComparabilityRule } from '../../measures/comparability-rule';
import type { Equation } from '../../measures/equation';
import type { Guards } from '../../measures/guard';
import type { AnyMeasureId, MeasureId } from '../../measures/measure-id';
import type { Settings } from '../settings';
import type { ChangeRow } from './change-row';
import type { ClientDetail } from './client-detail';
import type { ClientListRow, CohortSummary, IndexPoint } from './cohort-summary';
import type { CoverageBy, CoverageRow, SettingRow } from './comparability';
import type { ContactLists } from './contact-lists';
import type { CrossCheck } from './cross-check';
import type { ErrorStudy } from './error-study';
import type { DueLists } from './due-lists';
import type { CohortFilter, Level, Purpose } from './filter';
import type { EquationComparison, EquationFit, ExportAgreement, MeasuredWay } from './methods';
import type { PrecisionRow } from './precision-row';
import type { ProgramRow } from './program-row';
import type { ReviewCounts, ReviewRow } from './reviews';
import type { VectorAnalysis } from './vector-analysis';
import type { VectorChangeRow, VectorError } from './vector-change';

/** What screens, files and the command line ask of one data version. Every answer comes from the same pipeline. */
export interface Cohort {
  /** The values that are followed, with the equations in force. */
  readonly catalogue: Catalogue;
  /** The values that are followed, in the order in which lists show them. */
  readonly listed: readonly MeasureId[];
  /** The clinic's lean value: the contact lists', and the one that screens open with. */
  readonly lean: MeasureId;
  /** What stops, holds or only notes a value under the settings. */
  readonly guards: (id: AnyMeasureId) => Guards;
  /** The rule table in force. */
  readonly rules: readonly ComparabilityRule[];
  readonly summary: CohortSummary;
  /** Everyone's error of each value. */
  precision(level: Level): readonly PrecisionRow[];
  /** Whose error judges a pair. */
  readonly errorFrom: Settings['errorStudy']['errorFrom'];
  /** The errors that judge pairs of single groups, where the clinic takes the error by groups and a group has enough. */
  groupPrecision(level: Level): readonly PrecisionRow[];
  /** What the error study says of the filter's value: one answer for all people, whatever else the filter says. */
  errorStudy(filter: CohortFilter, signal?: AbortSignal): Promise<ErrorStudy>;
  /** Every two devices that people were measured on for a cross-check: what a conversion changes, and the filter's value. */
  crossChecks(filter: CohortFilter, signal?: AbortSignal): Promise<readonly CrossCheck[]>;
  changes(filter: CohortFilter, purpose: Purpose, signal?: AbortSignal): Promise<readonly ChangeRow[]>;
  programs(filter: CohortFilter, purpose: Purpose, signal?: AbortSignal): Promise<readonly ProgramRow[]>;
  /** For each enrolment and planned review: due, seen and on which day, seen early, not yet, or ended before. */
  reviews(filter: CohortFilter, signal?: AbortSignal): Promise<readonly ReviewRow[]>;
  reviewCounts(filter: CohortFilter, signal?: AbortSignal): Promise<readonly ReviewCounts[]>;
  /** The error of the vector; null without an own study of ten or more degrees of freedom. */
  readonly vectorError: VectorError | null;
  /** Changes of the vector, held against the error of both its values together. */
  vectorChanges(filter: CohortFilter, purpose: Purpose, signal?: AbortSignal): Promise<readonly VectorChangeRow[]>;
  /** The filter's own setting aside: what each of the three makes of the value's pairs. */
  comparedSettings(filter: CohortFilter, purpose: Purpose, signal?: AbortSignal): Promise<readonly SettingRow[]>;
  /** How completely conditions stand beside the readings. */
  coverage(by: CoverageBy, filter: CohortFilter, signal?: AbortSignal): Promise<readonly CoverageRow[]>;
  vectors(filter: CohortFilter, signal?: AbortSignal): Promise<VectorAnalysis>;
  indices(filter: CohortFilter, signal?: AbortSignal): Promise<readonly IndexPoint[]>;
  /** For each equation in force: the share of visits inside the group it was made for. */
  equationFits(filter: CohortFilter, signal?: AbortSignal): Promise<readonly EquationFit[]>;
  /** How the visits with a resistance were measured. */
  measuredWays(filter: CohortFilter, signal?: AbortSignal): Promise<readonly MeasuredWay[]>;
  /** Exported against computed values. */
  agreements(filter: CohortFilter, signal?: AbortSignal): Promise<readonly ExportAgreement[]>;
  /** Other equations of a quantity against one of them, on the loaded people. */
  compareEquations(
    equations: { readonly against: Equation; readonly others: readonly Equation[] },
    filter: CohortFilter,
    signal?: AbortSignal,
  ): Promise<EquationComparison>;
  contacts(filter: CohortFilter, signal?: AbortSignal): Promise<ContactLists>;
  /** Who is due this week or next or overdue, and who was not seen for long. */
  due(filter: CohortFilter, signal?: AbortSignal): Promise<DueLists>;
  clients(filter: CohortFilter, signal?: AbortSignal): Promise<readonly ClientListRow[]>;
  /** Undefined where no client has the key. */
  client(clientKey: number, filter: CohortFilter, signal?: AbortSignal): Promise<ClientDetail | undefined>;
}
