import type { RuleId } from '../measures/comparability-rule';
import { DEFAULT_RULES } from '../measures/default-rules';
import { GUARD_CODES, guardBit, type GuardCode } from '../measures/guard';
import { ruleBit, type PairMasks } from './rules-in-force';
import type { Reason } from './types/change-row';

/** The guards in a mask, in catalogue order. */
export const guardsIn = (mask: number): readonly GuardCode[] =>
  GUARD_CODES.filter((code) => (mask & guardBit(code)) !== 0);

/** Why a pair is graded and guarded as it is: broken rules first, then unknown conditions, then guards. */
export const reasonsOf = (
  pair: { readonly broken: number; readonly unknown: number; readonly guards: number },
  masks: PairMasks,
): readonly Reason[] => {
  const graded = masks.no | masks.caution;
  const has = (mask: number, bit: number): boolean => (mask & graded & bit) !== 0;
  const broken = DEFAULT_RULES.filter((rule) => has(pair.broken, ruleBit(rule.id))).map((rule) => rule.id);
  const unknown = DEFAULT_RULES.filter(
    (rule) => has(pair.unknown, ruleBit(rule.id)) && !has(pair.broken, ruleBit(rule.id)),
  ).map((rule): Reason => `unknown_${rule.id}`);
  return [...broken, ...unknown, ...guardsIn(pair.guards)];
};

/** Rules that two visits break and that the clinic only notes: they grade nothing. */
export const notedRules = (broken: number, masks: PairMasks): readonly RuleId[] =>
  DEFAULT_RULES.filter((rule) => (broken & masks.note & ruleBit(rule.id)) !== 0).map((rule) => rule.id);
