import type { Procedure } from '../../../lib/cohort/settings';
import type { RuleId } from '../../../lib/measures/comparability-rule';
import { DEFAULT_RULES } from '../../../lib/measures/default-rules';

const COLUMN_OF_RULE: ReadonlyMap<RuleId, string> = new Map(
  DEFAULT_RULES.flatMap((rule) =>
    rule.procedure && 'column' in rule.test ? [[rule.id, rule.test.column] as const] : [],
  ),
);

/** Every condition that a written procedure can stand for. */
export const PROCEDURE_CONDITIONS: readonly RuleId[] = [...COLUMN_OF_RULE.keys()];

/** The conditions whose columns are missing: what a written procedure could stand for. */
export const conditionsOf = (columns: readonly string[]): readonly RuleId[] =>
  PROCEDURE_CONDITIONS.filter((id) => columns.includes(COLUMN_OF_RULE.get(id) ?? ''));

/** What a form leaves open, by the message's name; undefined where it can be declared. */
export type ProcedureFault = 'needsCondition' | 'needsInitials' | 'wrongPeriod';

export const procedureFault = (procedure: Procedure): ProcedureFault | undefined => {
  if (procedure.conditions.length === 0) return 'needsCondition';
  if (procedure.initials === '') return 'needsInitials';
  return procedure.from !== null && procedure.to !== null && procedure.to < procedure.from ? 'wrongPeriod' : undefined;
};
