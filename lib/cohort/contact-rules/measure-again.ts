import type { IsoDate } from '../../core/iso-date';
import type { Row } from '../../engine/types';
import type { PairMasks } from '../rules-in-force';
import type { AgainReason, MeasureAgainRow } from '../types/contact-lists';
import { numberIn } from './contact-context';
import type { Candidate } from './lean-candidate';
import type { FoundReasons } from './talk-to-reasons';

/** The strongest first. */
export const AGAIN_ORDER: readonly AgainReason[] = [
  'cannot-compare',
  'fits-less-water',
  'near-threshold',
  'other-baseline',
  'caution',
];

interface Faults {
  readonly from: number;
  readonly to: number;
  /** Of both visits, and of the labels that differ between them. */
  readonly pair: number;
}

/** What is broken, or unknown though the site records it, as bits of the graded rules. */
const faultsOf = (kind: 'broken' | 'unknown', row: Row, { no, caution }: PairMasks): Faults => {
  const graded = no | caution;
  const [from, to, pair] = [numberIn(row, `${kind}_from`), numberIn(row, `${kind}_to`), numberIn(row, kind)];
  return { from: from & graded, to: to & graded, pair: pair & graded };
};

/** Which visit is at fault. A label that differs is the latest visit's, unless the one before it agrees. */
const faultIn = (row: Row, { from, to, pair }: Faults): 'latest' | 'baseline' | undefined => {
  if (to !== 0) return 'latest';
  if (pair === 0) return undefined;
  const agreesWithBefore =
    row['step_rank'] !== null &&
    numberIn(row, 'step_rank') <= 1 &&
    numberIn(row, 'step_from_no') > numberIn(row, 'from_no');
  return (pair & ~from) !== 0 && !agreesWithBefore ? 'latest' : 'baseline';
};

/**
 * Why the latest visit does not answer, where it does not. A condition that the latest visit did not meet counts under
 * every setting of pairs: nobody is called after a meal because a wider setting let the pair in.
 */
export const whyAgain = (
  candidate: Candidate,
  masks: PairMasks,
  nearFactor: number,
  found: FoundReasons,
): AgainReason | undefined => {
  const { row, change, contact, evidence } = candidate;
  if (change.guard === 'stop' || change.guard === 'hold') return undefined;
  const broken = faultIn(row, faultsOf('broken', row, masks));
  const fault =
    broken === 'latest' || change.admitted ? broken : (faultIn(row, faultsOf('unknown', row, masks)) ?? broken);
  if (fault === 'latest') return change.comparable === 'no' ? 'cannot-compare' : 'caution';
  if (!change.admitted) return fault === undefined ? undefined : 'other-baseline';
  if (change.result === 'down' && contact.fits === 'water') return 'fits-less-water';
  const near = change.lsc !== null && Math.abs(contact.excess) < nearFactor * change.lsc;
  const alone = found.reasons.every(({ rule }) => rule === 'lean-change');
  return evidence.beyond && near && alone && !contact.seenAtTwoVisits ? 'near-threshold' : undefined;
};

/** A row of Measure again. */
export const againRow = (candidate: Candidate, why: AgainReason): MeasureAgainRow => {
  const { row, change, contact } = candidate;
  const start = row['program_start'];
  const before = row['before_date'];
  const later = typeof before === 'string' && numberIn(row, 'step_rank') <= 1 ? (before as IsoDate) : change.to;
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

/** By why, the strongest first, then by client. */
export const byWhy = (a: MeasureAgainRow, b: MeasureAgainRow): number =>
  AGAIN_ORDER.indexOf(a.why) - AGAIN_ORDER.indexOf(b.why) || (a.client < b.client ? -1 : 1);
