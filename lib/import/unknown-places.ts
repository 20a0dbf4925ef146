import type { Mapping } from './mapping';
import { isReportColumn } from './report-columns';

/** Places of the columns that are kept verbatim and not used; those that our own report of rows added are none of them. */
export const unknownPlaces = (mapping: Mapping): readonly number[] => {
  const used = new Set(mapping.columns.flatMap(({ from }) => from));
  return mapping.header.flatMap((name, place) => (used.has(place) || isReportColumn(name) ? [] : [place]));
};
