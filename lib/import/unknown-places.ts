import type { Mapping } from './mapping';

const OWN_REPORT = /^report_/i;

/** Places of the columns that are kept verbatim and not used; those that our own report of rows added are none of them. */
export const unknownPlaces = (mapping: Mapping): readonly number[] => {
  const used = new Set(mapping.columns.flatMap(({ from }) => from));
  return mapping.header.flatMap((name, place) => (used.has(place) || OWN_REPORT.test(name.trim()) ? [] : [place]));
};
