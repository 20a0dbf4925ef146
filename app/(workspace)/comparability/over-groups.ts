import type { CoverageRow } from '../../../lib/cohort/types/comparability';

/** The states of a condition in the order in which they are read. */
export const STATES = ['met', 'byProcedure', 'notMet', 'unknown', 'notRecorded'] as const;

/** Every rule over all groups, in the order of the rows. */
export const overGroups = (rows: readonly CoverageRow[]): readonly CoverageRow[] => {
  const whole = new Map<string, CoverageRow>();
  for (const row of rows) {
    const sum = whole.get(row.rule);
    whole.set(
      row.rule,
      sum === undefined
        ? { ...row, group: null }
        : {
            ...sum,
            readings: sum.readings + row.readings,
            met: sum.met + row.met,
            byProcedure: sum.byProcedure + row.byProcedure,
            notMet: sum.notMet + row.notMet,
            unknown: sum.unknown + row.unknown,
            notRecorded: sum.notRecorded + row.notRecorded,
          },
    );
  }
  return [...whole.values()];
};
