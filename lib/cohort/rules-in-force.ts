import type { ComparabilityRule, RuleGrade, RuleId } from '../measures/comparability-rule';
import { DEFAULT_RULES } from '../measures/default-rules';
import type { Measure } from '../measures/measure';
import { isExported } from './is-exported';
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

/** The rules of each grade as bit masks, for one kind of value. */
export interface PairMasks {
  /** Rules that make a pair incomparable. */
  readonly no: number;
  readonly caution: number;
  /** Rules that are only said beside a pair. */
  readonly note: number;
}

export interface GradeMasks {
  /** For values computed from the reading. */
  readonly computed: PairMasks;
  /** For values that the device computed: its software matters too. */
  readonly exported: PairMasks;
}

/** The rules of each grade as bit masks. */
export const gradeMasks = (rules: readonly ComparabilityRule[]): GradeMasks => {
  const masksOf = (kept: readonly ComparabilityRule[]): PairMasks => {
    const mask = (grade: RuleGrade): number =>
      kept.reduce((bits, rule) => (rule.grade === grade ? bits | ruleBit(rule.id) : bits), 0);
    return { no: mask('no'), caution: mask('caution'), note: mask('note') };
  };
  return { computed: masksOf(rules.filter((rule) => rule.onlyExported !== true)), exported: masksOf(rules) };
};

/** The masks that grade a value. */
export const masksFor = (masks: GradeMasks, measure: Measure): PairMasks =>
  isExported(measure) ? masks.exported : masks.computed;
