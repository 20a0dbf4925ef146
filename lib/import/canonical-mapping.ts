import { COLUMN_BY_NAME } from './columns';
import type { Mapping } from './mapping';

/** The mapping of a visit export with canonical headings (in any case): every cell stays as it is written. */
export const canonicalMapping = (header: readonly string[], headerLine: number | null = null): Mapping => {
  const names = header.map((name) => name.trim().toLowerCase());
  return {
    version: 1,
    role: 'visits',
    header: header.map((name) => name.trim()),
    headerLine,
    columns: names.flatMap((to, place) =>
      COLUMN_BY_NAME.has(to) && names.indexOf(to) === place ? [{ to, from: [place] }] : [],
    ),
    constants: [],
  };
};
