import type { ChangeRow, Reason } from '../../../lib/cohort/types/change-row';
import { GUARD_CODES, type Guards } from '../../../lib/measures/guard';

const guards: readonly Reason[] = GUARD_CODES;

/** Broken rules and unknown conditions: why two visits cannot be compared, or only with a caution. */
export const ruleReasons = (reasons: readonly Reason[]): readonly Reason[] =>
  reasons.filter((reason) => !guards.includes(reason));

const explaining: readonly Reason[] = ['mostly_weight_term', 'fits_less_water', 'fits_cell_mass'];

/** The reasons to be said beside a change: what it fits is said only where it is more than error. */
export const saidReasons = (row: ChangeRow): readonly Reason[] =>
  row.result === 'up' || row.result === 'down'
    ? row.reasons
    : row.reasons.filter((reason) => !explaining.includes(reason));

/** What stops or holds the value, in contrast to what is only said beside it. */
export const stoppingReasons = (reasons: readonly Reason[], { stop, hold }: Guards): readonly Reason[] => {
  const stopping: readonly Reason[] = [...stop, ...hold];
  return reasons.filter((reason) => stopping.includes(reason));
};
