import type { Row } from '../engine/types';
import type { CohortModel } from './model';
import { RANK_LIMIT, type Ask } from './question';
import { comparedSettingsQuery } from './sql/compared-settings-sql';
import type { SettingRow } from './types/comparability';
import type { CohortFilter, ComparableSetting, Purpose } from './types/filter';

const SETTINGS: readonly ComparableSetting[] = ['strict', 'caution', 'all'];

/** The three settings of comparability side by side: how many pairs each holds, and what their changes are. */
export const comparedSettingsOf = async (
  ask: Ask,
  model: CohortModel,
  filter: CohortFilter,
  purpose: Purpose,
  signal?: AbortSignal,
): Promise<readonly SettingRow[]> => {
  const rows = await ask(comparedSettingsQuery(filter.measure, model), filter, { purpose, signal });
  const sum = (name: string, of: readonly Row[]): number => of.reduce((total, row) => total + Number(row[name]), 0);
  return SETTINGS.map((setting) => {
    const taking = rows.filter((row) => Number(row['pair_rank']) <= RANK_LIMIT[setting]);
    const left = rows.filter((row) => !taking.includes(row));
    return {
      setting,
      measure: filter.measure,
      purpose,
      nPairs: sum('n_pairs', rows),
      nComparable: sum('n_unguarded', taking),
      up: sum('n_up', taking),
      down: sum('n_down', taking),
      within: sum('n_within', taking),
      cannotCompare: sum('n_unguarded', left),
      noThreshold: sum('n_no_threshold', taking),
      held: sum('n_held', rows),
      stopped: sum('n_stopped', rows),
    };
  });
};
