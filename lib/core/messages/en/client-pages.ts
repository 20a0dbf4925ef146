import type { Formatters } from '../../formatters';

/** The two pages that are printed of one client: one for the file, one for the client. */
export const clientPages = (f: Formatters) => ({
  set: f.locale,
});
