import type { IndexPoint } from '../../../lib/cohort/types/cohort-summary';
import type { indices } from '../../../lib/core/messages/en/indices';

type Words = ReturnType<typeof indices>;

/** How many people the chart shows, and how many of them only in grey. */
export const indexFinding = (points: readonly IndexPoint[], words: Words): string => {
  const held = points.filter((point) => point.held).length;
  if (points.length === 0) return words.none;
  if (held === points.length) return words.onlyHeld({ held });
  return words.finding({ judged: points.length - held, held });
};
