import type { Engine, Row } from '../engine/types';
import { purposeNumber } from './purpose-number';
import type { ComparableSetting, CohortFilter, Purpose } from './types/filter';

/** The highest rank of a pair that takes part under a setting. */
export const RANK_LIMIT: Readonly<Record<ComparableSetting, number>> = { strict: 1, caution: 2, all: 3 };

const COLUMNS = [
  'purpose',
  'level',
  'rank_limit',
  'program',
  'site',
  'sex',
  'age_from',
  'age_to',
  'client_key',
  'review_week',
];

/** Runs queries one filter at a time. */
export type Ask = (
  sql: string,
  filter: CohortFilter,
  options?: { readonly purpose?: Purpose; readonly clientKey?: number; readonly signal?: AbortSignal | undefined },
) => Promise<readonly Row[]>;

/** A query under a filter: the values are put into the table `filter`, then the text runs, nothing in between. */
export const createAsk =
  (engine: Engine, serial: <T>(task: () => Promise<T>) => Promise<T>): Ask =>
  (sql, filter, options = {}) =>
    serial(async () => {
      options.signal?.throwIfAborted();
      await engine.run('DELETE FROM filter');
      await engine.insert('filter', COLUMNS, [
        [
          purposeNumber(options.purpose ?? 'baseline-latest', filter.reviewVisit),
          filter.level,
          RANK_LIMIT[filter.comparable],
          filter.program ?? null,
          filter.site ?? null,
          filter.sex ?? null,
          filter.ageFrom ?? null,
          filter.ageTo ?? null,
          options.clientKey ?? null,
          filter.reviewWeek ?? null,
        ],
      ]);
      return engine.query(sql, options.signal);
    });
