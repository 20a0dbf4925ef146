'use client';

import { useMemo } from 'react';
import type { Measure } from '../../lib/measures/measure';
import type { AnyMeasureId } from '../../lib/measures/measure-id';
import { useValueNames } from './use-value-names';
import { useSession } from './workspace-provider';

/** A followed value under the name that it carries on screen. */
export const useNamedMeasure = (id: AnyMeasureId): Measure => {
  const { cohort } = useSession();
  const nameOf = useValueNames();
  return useMemo(() => ({ ...cohort.catalogue.measure(id), name: nameOf(id) }), [cohort, nameOf, id]);
};
