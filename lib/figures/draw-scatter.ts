import { range } from 'd3';
import { squareAround, type Box } from './box';
import { drawGroupMark } from './draw-group-mark';
import type { FigureTheme } from './figure-theme';
import { groupStyle } from './group-style';
import { drawMark, focusable, markReach } from './mark';
import type { PlotArea } from './plot-area';
import type { PathPoint, ScatterGroup } from './scatter';
import { svgNode, type SvgNode } from './svg-node';

const PATH_RADIUS = 4;

/** Smaller marks the more there are, so that a cloud stays a cloud. */
export const scatterRadius = (groups: readonly ScatterGroup[]): number => {
  const count = groups.reduce((sum, group) => sum + group.points.length, 0);
  return count > 1500 ? 2 : count > 400 ? 2.5 : 3.2;
};

/** The points of every group as outline marks, behind everything else. */
export const drawScatter = (groups: readonly ScatterGroup[], area: PlotArea, theme: FigureTheme): SvgNode => {
  const radius = scatterRadius(groups);
  return svgNode(
    'g',
    { class: 'points', 'stroke-width': 1.1 },
    groups.map((group) => {
      const style = groupStyle(group.shapeIndex, theme);
      return svgNode(
        'g',
        { class: 'group', stroke: style.colour, 'stroke-opacity': 0.8 },
        [...group.points]
          .sort((a, b) => a.x - b.x || a.y - b.y)
          .map((point) =>
            focusable(
              point.key,
              point.label,
              drawGroupMark(style, area.px(point.x), area.py(point.y), radius, { class: 'mark', stroke: undefined }),
            ),
          ),
      );
    }),
  );
};

/** One client's visits: lines where the two may be compared, filled where comparable with the baseline. */
export const drawPath = (path: readonly PathPoint[], area: PlotArea, theme: FigureTheme): SvgNode | undefined => {
  if (path.length === 0) return undefined;
  const lines = path.slice(1).flatMap((point, index) => {
    const before = path[index];
    if (before === undefined || !point.joined) return [];
    return svgNode('line', {
      x1: area.px(before.x),
      y1: area.py(before.y),
      x2: area.px(point.x),
      y2: area.py(point.y),
      stroke: theme.ink,
      'stroke-width': 1.4,
    });
  });
  const marks = path.map((point) =>
    focusable(point.key, point.label, [
      drawMark('circle', area.px(point.x), area.py(point.y), PATH_RADIUS, {
        class: 'mark',
        fill: point.comparable ? theme.ink : theme.sheet,
        stroke: theme.ink,
        'stroke-width': 1.4,
      }),
    ]),
  );
  return svgNode('g', { class: 'path' }, [...lines, ...marks]);
};

/** Squares along the joined parts of a path. */
const pathObstacles = (path: readonly PathPoint[], area: PlotArea): Box[] =>
  path.slice(1).flatMap((point, index) => {
    const before = path[index];
    if (before === undefined || !point.joined) return [];
    const [x1, y1] = area.pixel([before.x, before.y]);
    const [x2, y2] = area.pixel([point.x, point.y]);
    const steps = Math.ceil(Math.hypot(x2 - x1, y2 - y1) / 4);
    return range(1, steps).map((step) =>
      squareAround(x1 + ((x2 - x1) * step) / steps, y1 + ((y2 - y1) * step) / steps, 2),
    );
  });

/** Squares that hold the marks, for labels to keep away from. */
export const scatterObstacles = (
  groups: readonly ScatterGroup[],
  path: readonly PathPoint[],
  area: PlotArea,
): Box[] => {
  const reach = markReach(scatterRadius(groups));
  return [
    ...groups.flatMap((group) => group.points.map((point) => squareAround(area.px(point.x), area.py(point.y), reach))),
    ...pathObstacles(path, area),
    ...path.map((point) => squareAround(area.px(point.x), area.py(point.y), PATH_RADIUS + 1)),
  ];
};
