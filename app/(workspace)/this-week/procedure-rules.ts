import type { RuleId } from '../../../lib/measures/comparability-rule';
import { DEFAULT_RULES } from '../../../lib/measures/default-rules';

export type ProcedureRule = RuleId;

/** The conditions that a written procedure can stand for. */
export const procedureRules: readonly ProcedureRule[] = DEFAULT_RULES.filter((rule) => rule.procedure).map(
  ({ id }) => id,
);
