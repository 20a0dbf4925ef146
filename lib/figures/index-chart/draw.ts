import { range } from 'd3';
import type { Box } from '../box';
import { clipLine } from '../clip-line';
import { drawBottomAxis, drawLeftAxis } from '../draw-axes';
import { drawGroupMark } from '../draw-group-mark';
import { drawNote } from '../draw-note';
import { drawPath, drawScatter, scatterObstacles } from '../draw-scatter';
import type { DataPoint } from '../ellipse';
import { drawMessage, figureRoot } from '../figure-root';
import type { FigureTheme } from '../figure-theme';
import { drawGroupLabel, groupLabelRequests } from '../group-labels';
import { groupStyle } from '../group-style';
import { drawLegend } from '../legend';
import { polylinePath, type Pixel } from '../path-data';
import { pathLabelRequests } from '../path-labels';
import { placeLabels, placeOnLine, type PlacedLabel } from '../place-labels';
import { plotArea, type PlotArea } from '../plot-area';
import { svgNode, type SvgNode } from '../svg-node';
import { fatMassIndexAt, type IndexChartSpec } from './spec';

const MARGIN = { left: 52, right: 20, top: 34, bottom: 44 };

interface DrawnLine {
  readonly label: string;
  readonly kind: 'bmi' | 'fat';
  readonly from: Pixel;
  readonly to: Pixel;
}

const drawnLines = (spec: IndexChartSpec, area: PlotArea): DrawnLine[] => {
  const line = (
    kind: DrawnLine['kind'],
    label: string,
    ends: readonly [DataPoint, DataPoint] | undefined,
  ): DrawnLine[] => (ends === undefined ? [] : [{ kind, label, from: area.pixel(ends[0]), to: area.pixel(ends[1]) }]);
  return [
    ...spec.bodyMassIndexLines.flatMap(({ value, label }) =>
      line('bmi', label, clipLine(-1, value, spec.x.domain, spec.y.domain)),
    ),
    ...spec.fatFractionLines.flatMap(({ value, label }) =>
      line('fat', label, clipLine(fatMassIndexAt(value, 1), 0, spec.x.domain, spec.y.domain)),
    ),
  ];
};

/** Spots along a line for its label: near its ends first, the middle last. */
const spots = ({ kind, from, to }: DrawnLine): Pixel[] => {
  const shares = range(0.03, 0.98, 0.02);
  return (kind === 'fat' ? shares.reverse() : shares).map((share): Pixel => [
    from[0] + (to[0] - from[0]) * share,
    from[1] + (to[1] - from[1]) * share,
  ]);
};

const lineLabels = (lines: readonly DrawnLine[], frame: Box, boxes: readonly Box[]): PlacedLabel[] => {
  const placed: PlacedLabel[] = [];
  for (const line of lines) {
    const label = placeOnLine(line.label, spots(line), { frame, boxes }, placed);
    if (label !== undefined) placed.push(label);
  }
  return placed;
};

const drawLine = (line: DrawnLine, theme: FigureTheme): SvgNode =>
  svgNode('path', {
    class: `equal-${line.kind}`,
    d: polylinePath([line.from, line.to]),
    stroke: theme.inkSecond,
    'stroke-opacity': line.kind === 'fat' ? 0.6 : 0.4,
    'stroke-dasharray': line.kind === 'fat' ? '1 4' : undefined,
    'stroke-linecap': 'round',
  });

const drawMeans = (spec: IndexChartSpec, area: PlotArea, theme: FigureTheme): SvgNode =>
  svgNode(
    'g',
    { class: 'means' },
    spec.groups.flatMap((group) => {
      if (group.mean === undefined) return [];
      const style = groupStyle(group.shapeIndex, theme);
      const mark = { class: 'mean', fill: theme.sheet, 'stroke-width': 2.4 };
      return drawGroupMark(style, area.px(group.mean.x), area.py(group.mean.y), 6.5, mark).filter(
        (node) => node !== undefined,
      );
    }),
  );

/** Draws the spec; lines are named on themselves, groups beside their mean. */
export const drawIndexChart = (spec: IndexChartSpec, theme: FigureTheme): SvgNode => {
  const box = {
    left: MARGIN.left,
    top: MARGIN.top,
    right: spec.width - MARGIN.right,
    bottom: spec.height - MARGIN.bottom,
  };
  const area = plotArea(spec.x, spec.y, box);
  const frame = { left: box.left + 4, top: box.top, right: box.right, bottom: box.bottom - 4 };
  const means = spec.groups.flatMap((group) => group.mean ?? []);
  const boxes = [
    ...scatterObstacles(spec.groups, spec.path, area),
    ...means.map(({ x, y }) => ({
      left: area.px(x) - 8,
      right: area.px(x) + 8,
      top: area.py(y) - 8,
      bottom: area.py(y) + 8,
    })),
  ];
  const lines = drawnLines(spec, area);
  const onLines = lineLabels(lines, frame, boxes);
  const names = placeLabels(
    groupLabelRequests(spec.groups, area, () => []),
    { frame, boxes },
    onLines,
  );
  const dates = placeLabels(pathLabelRequests(spec.path, area), { frame, boxes }, [...onLines, ...names.placed]).placed;
  const legend = drawLegend(
    spec.groups.filter((group) => !names.placed.some((label) => label.request.group === group)),
    box.left,
    spec.height,
    box.right - box.left,
    [],
    theme,
  );
  return figureRoot('index-chart', spec.width, spec.height + legend.height, theme, [
    ...lines.map((line) => drawLine(line, theme)),
    drawBottomAxis(spec.x, area, theme),
    drawLeftAxis(spec.y, area, theme, 14),
    drawScatter(spec.groups, area, theme),
    drawMeans(spec, area, theme),
    drawPath(spec.path, area, theme),
    ...onLines.map((label) => drawNote(label, theme.inkSecond, theme)),
    ...dates.map((label) => drawNote(label, theme.ink, theme)),
    ...names.placed.map((label) => drawGroupLabel(label, label.request.group, [], theme)),
    ...legend.nodes,
    spec.message === undefined
      ? undefined
      : drawMessage(spec.message, (box.left + box.right) / 2, (box.top + box.bottom) / 2, theme),
  ]);
};
