import type { IndexPoint } from '../../../lib/cohort/types/cohort-summary';
import type { Formatters } from '../../../lib/core/formatters';
import type { indices } from '../../../lib/core/messages/en/indices';
import type { IndexChartData } from '../../../lib/figures/index-chart/spec';
import { MUTED_GROUP } from '../../../lib/figures/group-style';
import type { PathPoint, ScatterGroup, ScatterPoint } from '../../../lib/figures/scatter';

type Words = ReturnType<typeof indices>;

/** FFMI against FMI by program; people whose value is held in a group of their own; one client's path where asked for. */
export const indicesFigure = (
  points: readonly IndexPoint[],
  programNames: readonly string[],
  path: readonly PathPoint[],
  words: Words,
  f: Formatters,
): IndexChartData => {
  const placed = (point: IndexPoint): ScatterPoint => ({
    key: String(point.clientKey),
    x: point.ffmi,
    y: point.fmi,
    label: words.pointLabel({
      client: point.client,
      program: point.program,
      date: f.dateShort(point.date),
      ffmi: point.ffmi,
      fmi: point.fmi,
      held: point.held,
    }),
  });
  const group = (id: string, label: string, shapeIndex: number, own: readonly IndexPoint[]): ScatterGroup => ({
    id,
    label,
    shapeIndex,
    n: own.length,
    points: own.map(placed),
  });
  const held = points.filter((point) => point.held);
  const free = points.filter((point) => !point.held);
  const programs = [...new Set(free.map((point) => point.program))];
  programs.sort((a, b) => programNames.indexOf(a) - programNames.indexOf(b));
  return {
    groups: [
      ...(held.length === 0 ? [] : [group('held', words.held, MUTED_GROUP, held)]),
      ...programs.map((program) =>
        group(
          `program-${program}`,
          program,
          Math.max(0, programNames.indexOf(program)),
          free.filter((point) => point.program === program),
        ),
      ),
    ],
    ...(path.length === 0 ? {} : { path }),
  };
};
