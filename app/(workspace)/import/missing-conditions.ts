import type { ComparabilityRule } from '../../../lib/measures/comparability-rule';
import { DEFAULT_RULES } from '../../../lib/measures/default-rules';
import type { PlannedFile } from '../../../lib/import/plan';

const columnOf = (rule: ComparabilityRule): string | undefined =>
  'column' in rule.test ? rule.test.column : undefined;

export interface MissingCondition {
  readonly rule: ComparabilityRule;
  readonly column: string;
}

/**
 * Conditions that a written procedure can stand for and that every file leaves out (no column, or empty in every row):
 * what the import asks about once.
 */
export const missingConditions = (files: readonly PlannedFile[]): MissingCondition[] => {
  if (files.length === 0) return [];
  return DEFAULT_RULES.flatMap((rule) => {
    const column = columnOf(rule);
    if (!rule.procedure || column === undefined) return [];
    return files.every((file) => file.missingConditions.includes(column)) ? [{ rule, column }] : [];
  });
};
