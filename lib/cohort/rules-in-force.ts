import type { ComparabilityRule, RuleId } from '../measures/comparability-rule';
import { DEFAULT_RULES } from '../measures/default-rules';
import type { Settings } from './settings';

/** The rule table with the clinic's own grades and limits laid over the defaults. */
export const rulesInForce = (settings: Settings): readonly ComparabilityRule[] =>
  DEFAULT_RULES.map((rule) => {
    const own = settings.rules.find((candidate) => candidate.id === rule.id);
    if (own === undefined) return rule;
    const test = own.limit !== undefined && 'limit' in rule.test ? { ...rule.test, limit: own.limit } : rule.test;
    return { ...rule, test, grade: own.grade ?? rule.grade };
  });

/** The bit of a rule in the masks: its place in the default table, which never changes with the settings. */
export const ruleBit = (id: RuleId): number => 1 << DEFAULT_RULES.findIndex((rule) => rule.id === id);

export interface GradeMasks {
  /** Rules that make a pair incomparable, for values computed from the reading. */
  readonly no: number;
  /** The same for values that the device computed. */
  readonly noExported: number;
  readonly caution: number;
}

/** The rules of each grade as bit masks. */
export const gradeMasks = (rules: readonly ComparabilityRule[]): GradeMasks => {
  const mask = (keep: (rule: ComparabilityRule) => boolean): number =>
    rules.filter(keep).reduce((bits, rule) => bits | ruleBit(rule.id), 0);
  return {
    no: mask((rule) => rule.grade === 'no' && rule.onlyExported !== true),
    noExported: mask((rule) => rule.grade === 'no'),
    caution: mask((rule) => rule.grade === 'caution'),
  };
};
