import type { CutOff } from '../../measures/cut-offs/cut-off';
import type { MeasureId } from '../../measures/measure-id';
import type { Settings } from '../settings';
import type { TalkToRule } from '../settings-parts/contact-settings';
import type { ChangeRow } from '../types/change-row';
import type { TalkToReason, WeightLossReason } from '../types/contact-lists';
import type { CohortErrors, PrecisionRow } from '../types/precision-row';
import { seriesGroup, type ContactSeries } from './contact-series';
import { isShareAsked, leanShare } from './lean-share';
import { hasSlope, leanSlope } from './lean-slope';
import { thresholdsOf, type Thresholds } from './thresholds';
import { weightLoss } from './weight-loss';

/** Lean values whose equation holds the weight itself. */
export const WEIGHT_TERM: ReadonlySet<MeasureId> = new Set(['ffm', 'ffmi']);
/** The only lean value of which weight − value is itself a value of the error study. */
const SHARED: MeasureId = 'ffm';

/** What baseline → latest of the lean value says of a client. */
export interface LeanEvidence {
  readonly change: ChangeRow;
  /** The group of both visits, where it has an error of its own of any value. */
  readonly group: string | null;
  readonly excess: number;
  /** Comparable under the setting, no guard against it, and a threshold there. */
  readonly judged: boolean;
  readonly beyond: boolean;
  readonly confirmed: boolean;
  /** The part without weight is down more than its error, or the equation holds no weight. */
  readonly notWeightAlone: boolean;
  readonly weightChange: number | null;
}

/** Rules, errors and limits under which reasons are sought. */
export interface RuleBook {
  readonly isOn: (rule: TalkToRule) => boolean;
  readonly lean: Thresholds | undefined;
  readonly withoutWeight: Thresholds | 'needed' | 'not-needed';
  readonly weight: Thresholds | undefined;
  /** Fat mass, where the lean value is what fat mass leaves of the weight. */
  readonly rest: Thresholds | undefined;
  readonly shareLimitPercent: number | undefined;
  readonly cutOffs: readonly CutOff[];
}

/** The rules for visits of one group: null for several, or none. */
export type RuleBooks = (group: string | null) => RuleBook;

/** The rules of these settings with the errors of a level. */
export const ruleBook = (
  settings: Settings,
  measure: MeasureId,
  errors: CohortErrors,
  cutOffs: readonly CutOff[],
  group: string | null,
): RuleBook => {
  const of = (id: PrecisionRow['measure']): Thresholds | undefined =>
    thresholdsOf(errors, id, { alwaysT: settings.errorSource.alwaysT, group });
  const off = new Set(settings.contacts.rulesOff);
  return {
    isOn: (rule) => !off.has(rule),
    lean: of(measure),
    withoutWeight: WEIGHT_TERM.has(measure) ? (of('ffm_without_weight') ?? 'needed') : 'not-needed',
    weight: of('weight'),
    rest: measure === SHARED ? of('fm') : undefined,
    shareLimitPercent: settings.leanShareLimitPercent,
    cutOffs,
  };
};

/** Why one client is to be talked to, and which rules had anything to look at. */
export interface FoundReasons {
  readonly reasons: readonly TalkToReason[];
  readonly asked: WeightLossReason | null;
  readonly checked: readonly TalkToRule[];
}

const shareQuestion = (evidence: LeanEvidence, series: ContactSeries | undefined, book: RuleBook) => {
  const { lean, weight, rest, shareLimitPercent } = book;
  const { change, weightChange } = evidence;
  const weightFrom = series?.visits.find(({ date }) => date === change.from)?.weight ?? null;
  if (!evidence.judged || weightChange === null || weightFrom === null) return undefined;
  if (lean === undefined || weight === undefined || rest === undefined || shareLimitPercent === undefined) {
    return undefined;
  }
  const question = {
    leanFrom: change.valueFrom,
    leanChange: change.change,
    weightChange,
    weightFrom,
    kFrom: change.kFrom,
    kTo: change.kTo,
    limitPercent: shareLimitPercent,
    lean,
    weight,
    rest,
  };
  return isShareAsked(question) ? question : undefined;
};

const leanReasons = (
  evidence: LeanEvidence,
  series: ContactSeries | undefined,
  books: RuleBooks,
): Pick<FoundReasons, 'reasons' | 'checked'> => {
  const { change, excess, judged } = evidence;
  const book = books(evidence.group);
  const { lean, withoutWeight, isOn } = books(series === undefined ? null : seriesGroup(series));
  const reasons: TalkToReason[] = [];
  const checked: TalkToRule[] = [];
  if (judged && isOn('lean-change')) {
    checked.push('lean-change');
    if (evidence.beyond && change.lsc !== null) {
      const sight = evidence.confirmed ? 'confirmed' : 'first';
      reasons.push({ rule: 'lean-change', sight, excess, lsc: change.lsc });
    }
  }
  if (judged && isOn('lean-slope') && series !== undefined && lean !== undefined && hasSlope(series)) {
    checked.push('lean-slope');
    const found = leanSlope(series, { excess, lsc: change.lsc ?? Infinity, lean, withoutWeight });
    if (found !== undefined) reasons.push(found);
  }
  const question = isOn('lean-share') ? shareQuestion(evidence, series, book) : undefined;
  if (question !== undefined) {
    checked.push('lean-share');
    const found = evidence.notWeightAlone ? leanShare(question) : undefined;
    if (found !== undefined) reasons.push(found);
  }
  return { reasons, checked };
};

/** Every reason to talk to a client, the strongest rule first. */
export const talkToReasons = (
  evidence: LeanEvidence | undefined,
  series: { readonly lean: ContactSeries | undefined; readonly weight: ContactSeries | undefined },
  books: RuleBooks,
): FoundReasons => {
  const lean = evidence === undefined ? { reasons: [], checked: [] } : leanReasons(evidence, series.lean, books);
  const { weight } = series;
  const book = books(weight === undefined ? null : seriesGroup(weight));
  if (!book.isOn('weight-loss') || book.weight === undefined || weight === undefined || weight.lossIntended === true) {
    return { ...lean, asked: null };
  }
  const loss = weightLoss(weight, book.weight, book.cutOffs) ?? null;
  if (weight.lossIntended === null) return { ...lean, asked: loss };
  return {
    reasons: loss === null ? lean.reasons : [...lean.reasons, loss],
    checked: [...lean.checked, 'weight-loss'],
    asked: null,
  };
};
