import type { TalkToRule } from '../settings-parts/contact-settings';
import type { ContactLists, RuleCount, TalkToRow } from '../types/contact-lists';
import type { ContactContext } from './contact-context';
import { SLOPE_LEVEL } from './lean-slope';
import type { FoundReasons } from './talk-to-reasons';

/** How many unchanged people error alone would list by the first rule, with the range that the error's own uncertainty leaves. */
export const byErrorAlone = (checked: number, context: ContactContext, level: number): ContactLists['byErrorAlone'] => {
  const lean = context.precision.find((entry) => entry.measure === context.model.lean);
  if (lean === undefined || lean.changedPer100 === null || lean.tier > 2) return null;
  const [low, high] = lean.changedPer100;
  return { about: (checked * (1 - level / 100)) / 2, from: (checked * low) / 200, to: (checked * high) / 200 };
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
