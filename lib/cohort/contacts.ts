import type { IsoDate } from '../core/iso-date';
import { daysBetween } from '../core/iso-date';
import type { Row } from '../engine/types';
import type { MeasureId } from '../measures/measure-id';
import { beyondThreshold } from '../stats/beyond-threshold';
import { changeRowFrom } from './change-row-from';
import type { CohortModel } from './model';
import type { Ask } from './question';
import { guardsIn } from './reasons';
import { masksFor, type PairMasks } from './rules-in-force';
import { contactCandidatesQuery, stripQuery } from './sql/contacts-sql';
import type { ChangeRow } from './types/change-row';
import type {
  AgainReason,
  ContactLists,
  ContactRow,
  MeasureAgainRow,
  StripPoint,
  TalkToRow,
} from './types/contact-lists';
import type { CohortFilter } from './types/filter';
import type { PrecisionRow } from './types/precision-row';

/** First sights closer to the threshold than this factor are measured again before anyone is called. */
const NEAR_THRESHOLD = 1.15;
const STRIP_LENGTH = 5;
/** Lean values whose equation holds the weight itself. */
const WEIGHT_TERM: ReadonlySet<MeasureId> = new Set(['ffm', 'ffmi']);
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
  readonly precision: readonly PrecisionRow[];
}

interface Candidate {
  readonly row: Row;
  readonly change: ChangeRow;
  readonly contact: ContactRow;
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
  return {
    row,
    change,
    contact,
    beyond: change.result === 'down' && fallsBeyond(excess, change.lsc) && notWeightAlone && expectable,
  };
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

const whyAgain = (candidate: Candidate, masks: PairMasks): AgainReason | undefined => {
  const { row, change, contact, beyond } = candidate;
  if (change.guard === 'stop' || change.guard === 'hold') return undefined;
  if (!change.admitted) {
    const broken = (number(row, 'broken') & (masks.no | masks.caution)) !== 0;
    if (!broken) return undefined;
    if (faultOf(row, masks) === 'baseline') return 'other-baseline';
    return change.comparable === 'no' ? 'cannot-compare' : 'caution';
  }
  if (change.result === 'down' && contact.fits === 'water') return 'fits-less-water';
  const near = change.lsc !== null && Math.abs(contact.excess) < NEAR_THRESHOLD * change.lsc;
  return beyond && near && !contact.seenAtTwoVisits ? 'near-threshold' : undefined;
};

const againRow = (candidate: Candidate, why: AgainReason): MeasureAgainRow => {
  const { row, change, contact } = candidate;
  const before = row['before_date'];
  const later = typeof before === 'string' && number(row, 'step_rank') <= 1 ? (before as IsoDate) : change.to;
  return {
    list: 'measure-again',
    clientKey: change.clientKey,
    client: change.client,
    program: change.program,
    latest: change.to,
    baseline: change.from,
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

/**
 * Talk to and Measure again by their first rule: active program, last visit at most six weeks before as-of, lean value
 * down more than error beyond what the program lets expect, not mostly the weight term. Who stands in Measure again is
 * not in Talk to. Confirmed before first sight, then by excess in units of its threshold.
 */
export const contactsOf = async (
  ask: Ask,
  filter: CohortFilter,
  context: Context,
  signal?: AbortSignal,
): Promise<ContactLists> => {
  const rows = await ask(contactCandidatesQuery(context.model), filter, { signal });
  const strips = stripsByClient(
    await ask(stripQuery(context.model), filter, { signal }),
    filter.comparable === 'strict' ? 1 : filter.comparable === 'caution' ? 2 : 3,
  );
  const graded = masksFor(context.model.masks, context.model.catalogue.measure(context.model.lean));
  const candidates = rows.map((row) => candidateFrom(row, context, strips));
  const again = candidates.flatMap((candidate) => {
    const why = whyAgain(candidate, graded);
    return why === undefined ? [] : [againRow(candidate, why)];
  });
  const listedAgain = new Set(again.map((row) => row.clientKey));
  const weight = (row: ContactRow): number => Math.abs(row.excess) / (row.change.lsc ?? 1);
  const talkTo = candidates
    .filter((candidate) => candidate.beyond && !listedAgain.has(candidate.change.clientKey))
    .map((candidate): TalkToRow => ({ ...candidate.contact, list: 'talk-to' }))
    .sort(
      (a, b) =>
        Number(b.seenAtTwoVisits) - Number(a.seenAtTwoVisits) ||
        weight(b) - weight(a) ||
        (a.client < b.client ? -1 : 1),
    );
  const checked = candidates.filter(
    ({ change }) => change.admitted && change.result !== null && change.result !== 'no-threshold',
  ).length;
  return {
    asOf: context.asOf,
    talkTo,
    measureAgain: [...again].sort(
      (a, b) => AGAIN_ORDER.indexOf(a.why) - AGAIN_ORDER.indexOf(b.why) || (a.client < b.client ? -1 : 1),
    ),
    checked,
    byErrorAlone: byErrorAlone(checked, context, filter.level),
  };
};
