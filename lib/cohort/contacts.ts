import type { IsoDate } from '../core/iso-date';
import { daysBetween } from '../core/iso-date';
import type { Row } from '../engine/types';
import { beyondThreshold } from '../stats/beyond-threshold';
import { changeRowFrom } from './change-row-from';
import { changesOf } from './changes';
import { contactSeriesFrom, type ContactSeries } from './contact-rules/contact-series';
import { SLOPE_LEVEL } from './contact-rules/lean-slope';
import { statusFindings, type StatusValue } from './contact-rules/status-findings';
import {
  ruleBook,
  talkToReasons,
  WEIGHT_TERM,
  type FoundReasons,
  type LeanEvidence,
} from './contact-rules/talk-to-reasons';
import { cutOffsInForce } from './cut-offs-in-force';
import type { CohortModel } from './model';
import type { Ask } from './question';
import { guardsIn } from './reasons';
import { masksFor, type PairMasks } from './rules-in-force';
import type { Settings } from './settings';
import { TALK_TO_RULES, type TalkToRule } from './settings-parts/contact-settings';
import { contactSeriesQuery } from './sql/contact-series-sql';
import { contactCandidatesQuery, stripQuery } from './sql/contacts-sql';
import type { ChangeRow } from './types/change-row';
import type {
  AgainReason,
  ContactLists,
  ContactRow,
  MeasureAgainRow,
  RuleCount,
  StripPoint,
  TalkToRow,
} from './types/contact-lists';
import type { CohortFilter } from './types/filter';
import type { PrecisionRow } from './types/precision-row';

const STRIP_LENGTH = 5;
const AGAIN_ORDER: readonly AgainReason[] = [
  'cannot-compare',
  'fits-less-water',
  'near-threshold',
  'other-baseline',
  'caution',
];

interface Context {
  readonly asOf: IsoDate;
  readonly model: CohortModel;
  readonly settings: Settings;
  readonly precision: readonly PrecisionRow[];
}

interface Candidate {
  readonly row: Row;
  readonly change: ChangeRow;
  readonly contact: ContactRow;
  readonly evidence: LeanEvidence;
  readonly beyond: boolean;
}

const number = (row: Row, name: string): number => Number(row[name] ?? 0);

/** f·√V(k₁,k₂) of a value at this level; null where it has no threshold. */
const lscFor = (precision: readonly PrecisionRow[], measure: string, k1: number, k2: number): number | null => {
  const found = precision.find((entry) => entry.measure === measure);
  if (found === undefined || found.factor === null || found.twoBetween === null || found.within === null) return null;
  if (found.perHeight === true) return null;
  return found.factor * Math.sqrt(found.twoBetween + found.within * (1 / k1 + 1 / k2));
};

const stripsByClient = (rows: readonly Row[], rankLimit: number): ReadonlyMap<number, readonly StripPoint[]> => {
  const strips = new Map<number, StripPoint[]>();
  for (const row of rows) {
    const key = number(row, 'client_key');
    const strip = strips.get(key) ?? [];
    strip.push({
      date: String(row['visit_date']) as IsoDate,
      value: number(row, 'value'),
      comparable: number(row, 'grade_rank') <= rankLimit,
    });
    strips.set(key, strip);
  }
  return strips;
};

const fallsBeyond = (excess: number, lsc: number | null): boolean =>
  lsc !== null && beyondThreshold(0, excess, lsc) === 'down';

/** Whether the visit before, within two weeks, is alone beyond the same threshold against the same baseline. */
const confirmed = (row: Row, change: ChangeRow, context: Context): boolean => {
  if (number(row, 'before_confirms') === 0 || row['before_value'] === null) return false;
  if (number(row, 'before_per_kg') !== 0 && row['before_weight_change'] === null) return false;
  if (row['step_rank'] === null || number(row, 'step_rank') > number(row, 'rank_limit')) return false;
  const excess =
    number(row, 'before_value') -
    change.valueFrom -
    number(row, 'before_per_kg') * number(row, 'before_weight_change') -
    number(row, 'before_over_time');
  return fallsBeyond(excess, lscFor(context.precision, context.model.lean, change.kFrom, number(row, 'before_k')));
};

const part = (row: Row, name: string, lsc: number | null): { change: number; lsc: number | null } | null =>
  row[name] === null || row[name] === undefined ? null : { change: number(row, name), lsc };

const candidateFrom = (row: Row, context: Context, strips: ReadonlyMap<number, readonly StripPoint[]>): Candidate => {
  const change = changeRowFrom(row, context.model.catalogue.measure(context.model.lean), context.model.masks);
  const expected = number(row, 'per_kg') * number(row, 'weight_change') + number(row, 'over_time');
  const excess = change.change - expected;
  const lsc = (measure: string): number | null => lscFor(context.precision, measure, change.kFrom, change.kTo);
  const patterns = guardsIn(number(row, 'guard_mask'));
  const start = row['program_start'];
  const contact: ContactRow = {
    clientKey: change.clientKey,
    client: change.client,
    program: change.program,
    weekOfProgram: typeof start === 'string' ? Math.floor(daysBetween(start as IsoDate, context.asOf) / 7) : null,
    change,
    expected,
    excess,
    withoutWeight: part(row, 'bare_change', lsc('ffm_without_weight')),
    phaseAngle: part(row, 'phase_change', lsc('phase_angle')),
    seenAtTwoVisits: confirmed(row, change, context),
    fits: patterns.includes('fits_less_water')
      ? 'water'
      : patterns.includes('fits_cell_mass')
        ? 'cell-mass'
        : 'cannot-tell',
    strip: (strips.get(change.clientKey) ?? []).filter((point) => point.date <= change.to).slice(-STRIP_LENGTH),
  };
  const notWeightAlone =
    !WEIGHT_TERM.has(context.model.lean) ||
    row['without_weight_direction'] === null ||
    number(row, 'without_weight_direction') === -1;
  // Without a weight at both ends nothing can be expected of a program that expects by weight: nobody is listed by it.
  const expectable = number(row, 'per_kg') === 0 || row['weight_change'] !== null;
  const beyond = change.result === 'down' && fallsBeyond(excess, change.lsc) && notWeightAlone && expectable;
  const evidence: LeanEvidence = {
    change,
    excess,
    judged: change.admitted && change.result !== null && change.result !== 'no-threshold' && expectable,
    beyond,
    confirmed: contact.seenAtTwoVisits,
    notWeightAlone,
    weightChange: row['weight_change'] === null ? null : number(row, 'weight_change'),
  };
  return { row, change, contact, evidence, beyond };
};

/** Which visit a broken rule belongs to. A label that differs is the latest visit's, unless the one before it agrees. */
const faultOf = (row: Row, masks: PairMasks): 'latest' | 'baseline' => {
  const graded = masks.no | masks.caution;
  const from = number(row, 'broken_from') & graded;
  const to = number(row, 'broken_to') & graded;
  const together = number(row, 'broken') & graded & ~(from | to);
  if (to !== 0) return 'latest';
  const agreesWithBefore =
    row['step_rank'] !== null && number(row, 'step_rank') <= 1 && number(row, 'step_from_no') > number(row, 'from_no');
  return together !== 0 && !agreesWithBefore ? 'latest' : 'baseline';
};

const whyAgain = (
  candidate: Candidate,
  masks: PairMasks,
  nearFactor: number,
  found: FoundReasons,
): AgainReason | undefined => {
  const { row, change, contact, beyond } = candidate;
  if (change.guard === 'stop' || change.guard === 'hold') return undefined;
  if (!change.admitted) {
    const broken = (number(row, 'broken') & (masks.no | masks.caution)) !== 0;
    if (!broken) return undefined;
    if (faultOf(row, masks) === 'baseline') return 'other-baseline';
    return change.comparable === 'no' ? 'cannot-compare' : 'caution';
  }
  if (change.result === 'down' && contact.fits === 'water') return 'fits-less-water';
  const near = change.lsc !== null && Math.abs(contact.excess) < nearFactor * change.lsc;
  const alone = found.reasons.every(({ rule }) => rule === 'lean-change');
  return beyond && near && alone && !contact.seenAtTwoVisits ? 'near-threshold' : undefined;
};

const againRow = (candidate: Candidate, why: AgainReason): MeasureAgainRow => {
  const { row, change, contact } = candidate;
  const start = row['program_start'];
  const before = row['before_date'];
  const later = typeof before === 'string' && number(row, 'step_rank') <= 1 ? (before as IsoDate) : change.to;
  return {
    list: 'measure-again',
    clientKey: change.clientKey,
    client: change.client,
    program: change.program,
    latest: change.to,
    baseline: change.from,
    programStart: typeof start === 'string' ? (start as IsoDate) : null,
    why,
    reasons: change.reasons,
    change,
    strip: contact.strip,
    otherBaseline: why === 'other-baseline' ? later : null,
  };
};

const byErrorAlone = (checked: number, context: Context, level: number): ContactLists['byErrorAlone'] => {
  const lean = context.precision.find((entry) => entry.measure === context.model.lean);
  if (lean === undefined || lean.changedPer100 === null || lean.tier > 2) return null;
  const [low, high] = lean.changedPer100;
  return { about: (checked * (1 - level / 100)) / 2, from: (checked * low) / 200, to: (checked * high) / 200 };
};

/** Whether a program means people to lose weight; null: nobody said. */
const lossMeantBy = ({ programs }: Settings, program: string): boolean | null => {
  const intended = programs.find(({ name }) => name === program)?.intended.weight ?? null;
  return intended === null ? null : intended === 'loss';
};

/** The levels in force that published cut-offs are about. */
const statusValues = ({ catalogue }: CohortModel): readonly StatusValue[] =>
  (['ffmi', 'asmi'] as const).flatMap((quantity) => {
    const equation = catalogue.follows(quantity) ? catalogue.measure(quantity).equation : undefined;
    return equation === undefined ? [] : [{ quantity, equation }];
  });

const seriesOf = async (
  ask: Ask,
  filter: CohortFilter,
  { model, settings }: Context,
  signal?: AbortSignal,
): Promise<{
  readonly lean: ReadonlyMap<number, ContactSeries>;
  readonly weight: ReadonlyMap<number, ContactSeries>;
}> => {
  const meant = (program: string): boolean | null => lossMeantBy(settings, program);
  const of = async (id: 'weight' | CohortModel['lean']) =>
    contactSeriesFrom(await ask(contactSeriesQuery(model.catalogue.measure(id), model), filter, { signal }), meant);
  return { lean: await of(model.lean), weight: await of('weight') };
};

const strengthOf = (row: TalkToRow): number => {
  const [first] = row.reasons;
  if (first?.rule !== 'lean-change') return 2;
  return first.sight === 'confirmed' ? 0 : 1;
};

const byStrength = (a: TalkToRow, b: TalkToRow): number => {
  const size = (row: ContactRow): number => Math.abs(row.excess) / (row.change.lsc ?? 1);
  return strengthOf(a) - strengthOf(b) || size(b) - size(a) || (a.client < b.client ? -1 : 1);
};

/** A row that only the weight stands for: the lean value cannot be read at this client. */
const weightRow = (series: ContactSeries, change: ChangeRow, asOf: IsoDate): ContactRow => ({
  clientKey: series.clientKey,
  client: series.client,
  program: series.program,
  weekOfProgram: series.programStart === null ? null : Math.floor(daysBetween(series.programStart, asOf) / 7),
  change,
  expected: 0,
  excess: change.change,
  withoutWeight: null,
  phaseAngle: null,
  seenAtTwoVisits: false,
  fits: 'cannot-tell',
  strip: series.visits.map(({ date, value, usable }) => ({ date, value, comparable: usable })).slice(-STRIP_LENGTH),
});

const countOf = (
  rule: TalkToRule,
  found: readonly FoundReasons[],
  talkTo: readonly TalkToRow[],
  level: number,
): RuleCount => {
  const checked = found.filter((one) => one.checked.includes(rule)).length;
  const oneWay = rule === 'lean-change' ? (1 - level / 100) / 2 : rule === 'lean-slope' ? (1 - SLOPE_LEVEL) / 2 : null;
  return {
    rule,
    checked,
    listed: talkTo.filter(({ reasons }) => reasons.some((reason) => reason.rule === rule)).length,
    byErrorAlone: oneWay === null ? null : checked * oneWay,
  };
};

/**
 * Talk to and Measure again: clients of an open program, last visit at most six weeks before as-of. Talk to holds who
 * gives a rule a reason, one row a client; who stands in Measure again is not in Talk to, unless only the baseline is at
 * fault and the comparable visits after it give a reason. Confirmed before first sight, then by excess in units of its
 * threshold; rows of other rules follow.
 */
export const contactsOf = async (
  ask: Ask,
  filter: CohortFilter,
  context: Context,
  signal?: AbortSignal,
): Promise<ContactLists> => {
  const { model, settings, precision, asOf } = context;
  const rows = await ask(contactCandidatesQuery(model), filter, { signal });
  const strips = stripsByClient(
    await ask(stripQuery(model), filter, { signal }),
    filter.comparable === 'strict' ? 1 : filter.comparable === 'caution' ? 2 : 3,
  );
  const series = await seriesOf(ask, filter, context, signal);
  const cutOffs = cutOffsInForce(settings);
  const book = ruleBook(settings, model.lean, precision, cutOffs);
  const candidates = new Map(
    rows.map((row) => {
      const candidate = candidateFrom(row, context, strips);
      return [candidate.change.clientKey, candidate];
    }),
  );
  const keys = [...new Set([...candidates.keys(), ...series.weight.keys()])];
  const found = new Map(
    keys.map((key) => [
      key,
      talkToReasons(
        candidates.get(key)?.evidence,
        { lean: series.lean.get(key), weight: series.weight.get(key) },
        book,
      ),
    ]),
  );
  const graded = masksFor(model.masks, model.catalogue.measure(model.lean));
  const again = [...candidates.values()].flatMap((candidate) => {
    const reasons = found.get(candidate.change.clientKey) ?? { reasons: [], asked: null, checked: [] };
    const why = whyAgain(candidate, graded, settings.contacts.nearFactor, reasons);
    return why === undefined || (why === 'other-baseline' && reasons.reasons.length > 0)
      ? []
      : [againRow(candidate, why)];
  });
  const listedAgain = new Set(again.map((row) => row.clientKey));
  const listed = keys.filter((key) => !listedAgain.has(key) && (found.get(key)?.reasons.length ?? 0) > 0);
  const isLean = (key: number): boolean => found.get(key)?.reasons.some(({ rule }) => rule !== 'weight-loss') === true;
  const weights = listed.every(isLean)
    ? []
    : await changesOf(ask, model, filter, {
        purpose: 'baseline-latest',
        measure: model.catalogue.measure('weight'),
        signal,
      });
  const talkTo = listed
    .flatMap((key): TalkToRow[] => {
      const { reasons, asked } = found.get(key) ?? { reasons: [], asked: null };
      const weight = series.weight.get(key);
      const change = weights.findLast((row) => row.clientKey === key && row.program === weight?.program);
      const contact = isLean(key)
        ? candidates.get(key)?.contact
        : weight !== undefined && change !== undefined
          ? weightRow(weight, change, asOf)
          : undefined;
      return contact === undefined ? [] : [{ ...contact, list: 'talk-to', reasons, asked }];
    })
    .sort(byStrength);
  const checked = [...candidates.values()].filter(
    ({ change }) => change.admitted && change.result !== null && change.result !== 'no-threshold',
  ).length;
  const rowKeys = new Set(talkTo.map(({ clientKey }) => clientKey));
  return {
    asOf,
    talkTo,
    measureAgain: [...again].sort(
      (a, b) => AGAIN_ORDER.indexOf(a.why) - AGAIN_ORDER.indexOf(b.why) || (a.client < b.client ? -1 : 1),
    ),
    checked,
    byErrorAlone: byErrorAlone(checked, context, filter.level),
    rules: TALK_TO_RULES.filter(book.isOn).map((rule) => countOf(rule, [...found.values()], talkTo, filter.level)),
    weightQuestions: [...series.weight.values()].flatMap((one) => {
      const loss = found.get(one.clientKey)?.asked ?? null;
      if (loss === null || rowKeys.has(one.clientKey)) return [];
      return [{ clientKey: one.clientKey, client: one.client, program: one.program, loss }];
    }),
    status: [...series.lean.values()].flatMap((one) => statusFindings(one, statusValues(model), cutOffs)),
  };
};
