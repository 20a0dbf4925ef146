import type { TalkToRule } from '../settings-parts/contact-settings';
import { precisionFor } from '../group-precision';
import type { ChangeRow } from '../types/change-row';
import type { ContactLists, RuleCount, TalkToRow } from '../types/contact-lists';
import type { ContactContext } from './contact-context';
import { SLOPE_LEVEL } from './lean-slope';
import type { FoundReasons } from './talk-to-reasons';

/**
 * How many unchanged people error alone would list by the first rule, with the range that the error's own uncertainty leaves.
 *
 * @param checked the changes that were judged: each counts with the range of the error that judged it.
 */
export const byErrorAlone = (
  checked: readonly Pick<ChangeRow, 'errorGroup'>[],
  context: ContactContext,
  level: number,
): ContactLists['byErrorAlone'] => {
  const { errors, model } = context;
  const judging = [null, ...new Set(checked.flatMap(({ errorGroup }) => errorGroup ?? []))].map((group) => ({
    row: precisionFor(errors, model.lean, group),
    n: checked.filter(({ errorGroup }) => errorGroup === group).length,
  }));
  let [from, to] = [0, 0];
  for (const { row, n } of judging) {
    if (row === undefined || row.changedPer100 === null || row.tier > 2) return null;
    from += (n * row.changedPer100[0]) / 200;
    to += (n * row.changedPer100[1]) / 200;
  }
  return { about: (checked.length * (1 - level / 100)) / 2, from, to };
};

/** What one rule looked at and listed. */
export const countOf = (
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
