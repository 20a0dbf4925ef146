'use client';

import type { MeasureId } from '../../lib/measures/measure-id';
import type { TableFact } from '../../lib/workspace/table-file';
import { useFormatters, useMessages } from './language-provider';
import { useValueNames } from './use-value-names';
import { useSession } from './workspace-provider';

/** What the file of a table has to say of the values in it: their names with their marks, and the equation behind them. */
export const useValueFacts = (...ids: readonly MeasureId[]): readonly TableFact[] => {
  const words = useMessages().table.facts;
  const formatters = useFormatters();
  const { cohort } = useSession();
  const nameOf = useValueNames();
  const equations = ids.flatMap((id) => cohort.catalogue.measure(id).equation?.name ?? []);
  return [
    { title: words.value, value: formatters.list(ids.map(nameOf)) },
    ...(equations.length === 0 ? [] : [{ title: words.equation, value: formatters.list([...new Set(equations)]) }]),
  ];
};
