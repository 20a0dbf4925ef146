import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import type { Formatters } from '../../../lib/core/formatters';
import type { Messages } from '../../../lib/core/messages/en';
import type { PathPoint } from '../../../lib/figures/scatter';
import type { VectorGraphData } from '../../../lib/figures/vector-graph/spec';

type Words = Messages['clientVector'];

/** A client's vectors in order of date: hollow where not comparable with the baseline, joined where the two may be. */
const vectorPath = (detail: ClientDetail, words: Words, f: Formatters): readonly PathPoint[] => {
  const visits = new Map(detail.visits.map((visit) => [visit.visit, visit]));
  return detail.vector.vectors.flatMap((vector) => {
    const visit = visits.get(vector.visit);
    if (visit === undefined) return [];
    const date = f.dateShort(visit.date);
    return [
      {
        key: `vector-${vector.visit}`,
        x: vector.rh,
        y: vector.xch,
        label: words.pointLabel({ date, rh: vector.rh, xch: vector.xch, phase: vector.phaseAngle }),
        dateLabel: date,
        comparable: !vector.stopped && visit.comparableWithBaseline !== 'no',
        joined: vector.joined,
      },
    ];
  });
};

/** The graph of one client: the path, and the own error around the baseline. */
export const vectorPathFigure = (detail: ClientDetail, level: number, words: Words, f: Formatters): VectorGraphData => {
  const { ellipse } = detail.vector;
  return {
    groups: [],
    path: vectorPath(detail, words, f),
    ...(ellipse === null ? {} : { referenceLabel: words.ellipse, references: [{ level: level / 100, ...ellipse }] }),
  };
};
