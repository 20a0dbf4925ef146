import { limitOf } from '../../../lib/measures/own-rules';
import type { ComparabilityRule, RuleGrade, RuleId } from '../../../lib/measures/comparability-rule';
import { DEFAULT_RULES } from '../../../lib/measures/default-rules';

/** A rule while somebody edits it: its limit is what stands in the field. */
export interface RuleDraft {
  readonly id: RuleId;
  readonly grade: RuleGrade;
  /** Undefined for a rule without a limit. */
  readonly limit: string | undefined;
}

export const draftOf = (rule: ComparabilityRule): RuleDraft => {
  const limit = limitOf(rule);
  return { id: rule.id, grade: rule.grade, limit: limit === undefined ? undefined : String(limit) };
};

export const DEFAULT_DRAFTS: readonly RuleDraft[] = DEFAULT_RULES.map(draftOf);

/** The number of a field, with a point or a comma; undefined where it is none above 0. */
export const numberIn = (text: string): number | undefined => {
  const value = Number(text.trim().replace(',', '.'));
  return text.trim() !== '' && Number.isFinite(value) && value > 0 ? value : undefined;
};

export const sameDraft = (a: RuleDraft, b: RuleDraft | undefined): boolean =>
  b !== undefined &&
  a.grade === b.grade &&
  (a.limit === b.limit || (a.limit !== undefined && b.limit !== undefined && numberIn(a.limit) === numberIn(b.limit)));

/** The rules as they were edited, or the first whose limit is no number. */
export const rulesFrom = (
  drafts: readonly RuleDraft[],
): { readonly rules: readonly ComparabilityRule[] } | { readonly wrong: RuleId } => {
  const rules: ComparabilityRule[] = [];
  for (const rule of DEFAULT_RULES) {
    const draft = drafts.find(({ id }) => id === rule.id) ?? draftOf(rule);
    const limit = draft.limit === undefined ? undefined : numberIn(draft.limit);
    if (draft.limit !== undefined && limit === undefined) return { wrong: rule.id };
    const test = limit !== undefined && 'limit' in rule.test ? { ...rule.test, limit } : rule.test;
    rules.push({ ...rule, test, grade: draft.grade });
  }
  return { rules };
};
