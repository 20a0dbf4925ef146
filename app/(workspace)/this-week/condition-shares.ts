import type { ConditionCoverage } from '../../../lib/cohort/types/cohort-summary';

export interface ConditionShares {
  readonly recorded: number;
  readonly byProcedure: number;
  readonly unknown: number;
  readonly notRecorded: number;
}

/** Shares (0–1) over all conditions of all readings; undefined where there is nothing to share. */
export const conditionShares = (coverage: readonly ConditionCoverage[]): ConditionShares | undefined => {
  const sum = (pick: (row: ConditionCoverage) => number): number =>
    coverage.reduce((total, row) => total + pick(row), 0);
  const recorded = sum((row) => row.recorded);
  const byProcedure = sum((row) => row.byProcedure);
  const unknown = sum((row) => row.unknown);
  const notRecorded = sum((row) => row.notRecorded);
  const all = recorded + byProcedure + unknown + notRecorded;
  if (all === 0) return undefined;
  return {
    recorded: recorded / all,
    byProcedure: byProcedure / all,
    unknown: unknown / all,
    notRecorded: notRecorded / all,
  };
};
