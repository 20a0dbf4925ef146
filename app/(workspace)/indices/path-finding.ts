import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import type { Formatters } from '../../../lib/core/formatters';
import type { indices } from '../../../lib/core/messages/en/indices';
import type { PathPoint } from '../../../lib/figures/scatter';

type Words = ReturnType<typeof indices>;

/** One client's first and last place on the chart, as a sentence. */
export const pathFinding = (client: ClientDetail, path: readonly PathPoint[], words: Words, f: Formatters): string => {
  const first = path[0];
  const last = path.at(-1);
  if (first === undefined || last === undefined) return words.pathMissing;
  return words.pathFinding({
    client: client.client,
    from: first.dateLabel,
    to: last.dateLabel,
    ffmi: f.signed(last.x - first.x, 1),
    fmi: f.signed(last.y - first.y, 1),
  });
};
