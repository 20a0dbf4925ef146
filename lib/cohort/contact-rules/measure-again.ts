import type { IsoDate } from '../../core/iso-date';
import type { Row } from '../../engine/types';
import type { PairMasks } from '../rules-in-force';
import type { AgainReason, MeasureAgainRow } from '../types/contact-lists';
import { numberIn } from './contact-context';
import type { Candidate } from './lean-candidate';
import type { FoundReasons } from './talk-to-reasons';

const AGAIN_ORDER: readonly AgainReason[] = [
  'cannot-compare',
  'fits-less-water',
  'near-threshold',
  'other-baseline',
  'caution',
];

/** Which visit a broken rule belongs to. A label that differs is the latest visit's, unless the one before it agrees. */
const faultOf = (row: Row, masks: PairMasks): 'latest' | 'baseline' => {
  const graded = masks.no | masks.caution;
  const from = numberIn(row, 'broken_from') & graded;
  const to = numberIn(row, 'broken_to') & graded;
  const together = numberIn(row, 'broken') & graded & ~(from | to);
  if (to !== 0) return 'latest';
  const agreesWithBefore =
    row['step_rank'] !== null &&
    numberIn(row, 'step_rank') <= 1 &&
    numberIn(row, 'step_from_no') > numberIn(row, 'from_no');
  return together !== 0 && !agreesWithBefore ? 'latest' : 'baseline';
};

/** Why the latest visit does not answer, where it does not. */
export const whyAgain = (
  candidate: Candidate,
  masks: PairMasks,
  nearFactor: number,
  found: FoundReasons,
): AgainReason | undefined => {
  const { row, change, contact, evidence } = candidate;
  if (change.guard === 'stop' || change.guard === 'hold') return undefined;
  if (!change.admitted) {
    const broken = (numberIn(row, 'broken') & (masks.no | masks.caution)) !== 0;
    if (!broken) return undefined;
    if (faultOf(row, masks) === 'baseline') return 'other-baseline';
    return change.comparable === 'no' ? 'cannot-compare' : 'caution';
  }
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
