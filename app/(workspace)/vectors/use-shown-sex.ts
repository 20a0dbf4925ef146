'use client';

import { parseAsStringLiteral, useQueryState } from 'nuqs';
import { useFilter } from '../../_state/use-filter';

const parseSex = parseAsStringLiteral(['F', 'M'] as const).withDefault('F');

/** Vectors are shown one sex at a time: the filter's where it names one, else the choice of this screen. */
export const useShownSex = (): {
  readonly sex: 'F' | 'M';
  readonly byFilter: boolean;
  readonly setSex: (sex: 'F' | 'M') => void;
} => {
  const { filter } = useFilter();
  const [chosen, setChosen] = useQueryState('shown', parseSex);
  return {
    sex: filter.sex ?? chosen,
    byFilter: filter.sex !== undefined,
    setSex: (sex) => void setChosen(sex),
  };
};
