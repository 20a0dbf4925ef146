import type { ComparabilityRule, RuleGrade, RuleId } from './comparability-rule';
import { DEFAULT_RULES } from './default-rules';

/** What a clinic changed of a rule. */
interface OwnRule {
  readonly id: RuleId;
  readonly grade?: RuleGrade;
  readonly limit?: number;
}

/** The limit of a rule, in hours (recorded heights: cm); undefined where it has none. */
export const limitOf = ({ test }: Pick<ComparabilityRule, 'test'>): number | undefined =>
  'limit' in test ? test.limit : undefined;

/** What of a rule table differs from the defaults: all that the settings keep of it. */
export const ownRules = (rules: readonly ComparabilityRule[]): OwnRule[] =>
  DEFAULT_RULES.flatMap((before): OwnRule[] => {
    const rule = rules.find(({ id }) => id === before.id);
    if (rule === undefined) return [];
    const limit = limitOf(rule);
    const own = {
      ...(rule.grade === before.grade ? {} : { grade: rule.grade }),
      ...(limit === undefined || limit === limitOf(before) ? {} : { limit }),
    };
    return Object.keys(own).length === 0 ? [] : [{ id: rule.id, ...own }];
  });
