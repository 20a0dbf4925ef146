'use client';

import { useQueryStates } from 'nuqs';
import { useCallback, useMemo } from 'react';
import type { CohortFilter } from '../../lib/cohort/types/filter';
import { filterParams } from './filter-params';
import { useSession } from './workspace-provider';

/** What a change of the filter may name; null means: back to the default or to all. */
export type FilterPatch = {
  readonly [Name in keyof typeof filterParams]?: ReturnType<(typeof filterParams)[Name]['parseServerSide']> | null;
};

const wholeAge = (age: number | null): number | undefined => (age !== null && age >= 0 && age <= 120 ? age : undefined);

const known = (name: string | null, names: readonly string[]): string | undefined =>
  name !== null && names.includes(name) ? name : undefined;

/**
 * The filter in the address. Without a name in the address stands the clinic's own default; a name the clinic does not
 * have counts as none.
 */
export const useFilter = () => {
  const { settings, cohort } = useSession();
  const [params, setParams] = useQueryStates(filterParams, { history: 'push', scroll: false });
  const { summary, lean } = cohort;

  const filter = useMemo((): CohortFilter => {
    const program = known(
      params.program,
      summary.programs.map(({ name }) => name),
    );
    const site = known(params.site, summary.sites);
    const ageFrom = wholeAge(params.from);
    const ageTo = wholeAge(params.to);
    return {
      measure: params.value !== null && cohort.catalogue.follows(params.value) ? params.value : lean,
      level: params.level ?? settings.level,
      comparable: params.pairs ?? settings.comparable ?? summary.openingSetting,
      ...(program === undefined ? {} : { program }),
      ...(site === undefined ? {} : { site }),
      ...(params.sex === null ? {} : { sex: params.sex }),
      ...(ageFrom === undefined ? {} : { ageFrom }),
      ...(ageTo === undefined ? {} : { ageTo }),
    };
  }, [params, settings, summary, cohort, lean]);

  const set = useCallback((patch: FilterPatch) => void setParams(patch), [setParams]);
  const showAllPeople = useCallback(
    () => void setParams({ program: null, site: null, sex: null, from: null, to: null }),
    [setParams],
  );
  const narrowed =
    filter.program !== undefined ||
    filter.site !== undefined ||
    filter.sex !== undefined ||
    filter.ageFrom !== undefined ||
    filter.ageTo !== undefined;
  return { filter, set, showAllPeople, narrowed };
};
