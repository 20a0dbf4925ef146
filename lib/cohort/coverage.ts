import type { Row } from '../engine/types';
import type { ComparabilityRule } from '../measures/comparability-rule';
import type { CohortModel } from './model';
import type { Ask } from './question';
import { coverageQuery } from './sql/coverage-sql';
import type { CoverageBy, CoverageRow } from './types/comparability';
import type { CohortFilter } from './types/filter';

/** Rules whose condition or label a reading can leave empty. */
const isRecordable = ({ test }: ComparabilityRule): boolean =>
  test.kind === 'below' || test.kind === 'is' || (test.kind === 'differs' && test.unknownMatters);

const monthOf = (yearAndMonth: number): string =>
  `${String(Math.floor(yearAndMonth / 100))}-${String(yearAndMonth % 100).padStart(2, '0')}`;

const groupOf = (row: Row, by: CoverageBy): string | null => {
  const group = row['group_name'];
  if (group === null || group === undefined) return null;
  return by === 'month' ? monthOf(Number(group)) : String(group);
};

/**
 * How completely conditions and labels stand beside the readings, by site, operator or month in order of their names: the
 * record's completeness, which ranks nobody. One row per group and rule, in the order of the rule table.
 */
export const coverageOf = async (
  ask: Ask,
  model: CohortModel,
  by: CoverageBy,
  filter: CohortFilter,
  signal?: AbortSignal,
): Promise<readonly CoverageRow[]> => {
  const rules = model.rules.filter(isRecordable);
  const rows = await ask(coverageQuery(rules, by), filter, { signal });
  return rows.flatMap((row) =>
    rules.map(({ id }) => ({
      group: groupOf(row, by),
      rule: id,
      readings: Number(row['readings']),
      met: Number(row[`met_${id}`]),
      notMet: Number(row[`not_met_${id}`]),
      byProcedure: Number(row[`by_procedure_${id}`]),
      unknown: Number(row[`unknown_${id}`]),
      notRecorded: Number(row[`not_recorded_${id}`]),
    })),
  );
};
