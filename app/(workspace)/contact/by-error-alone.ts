import type { Formatters } from '../../../lib/core/formatters';
import type { ContactLists } from '../../../lib/cohort/types/contact-lists';

/** Expected numbers of people by error alone, whole where they are large enough to be whole. */
export const byErrorAlone = (
  lists: ContactLists,
  formatters: Formatters,
): { about: string; from: string; to: string } | undefined => {
  if (lists.byErrorAlone === null) return undefined;
  const count = (n: number): string => formatters.number(n, n > 0 && n < 0.95 ? 1 : 0);
  const { about, from, to } = lists.byErrorAlone;
  return { about: count(about), from: count(from), to: count(to) };
};
