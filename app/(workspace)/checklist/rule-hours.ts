import type { Settings } from '../../../lib/cohort/settings';
import type { RuleId } from '../../../lib/measures/comparability-rule';
import { DEFAULT_RULES } from '../../../lib/measures/default-rules';

/** The hours of a rule: the clinic's own, else the default table's. */
export const ruleHours = (settings: Settings, id: RuleId): number => {
  const own = settings.rules.find((rule) => rule.id === id)?.limit;
  const test = DEFAULT_RULES.find((rule) => rule.id === id)?.test;
  return own ?? (test?.kind === 'below' ? test.limit : 0);
};
