import { group, scaleLinear } from 'd3';
import { columnWidth } from '../column-width';
import { dodge } from '../dodge';
import { drawLeftAxis } from '../draw-axes';
import { drawMessage, figureRoot } from '../figure-root';
import type { FigureTheme } from '../figure-theme';
import { centredBaseline, drawLabel, TEXT_SIZE } from '../label';
import { drawMark, focusable } from '../mark';
import { polylinePath } from '../path-data';
import { svgNode, type SvgNode } from '../svg-node';
import { thinLabels } from '../thin-labels';
import type { ControlBand, ControlChartSpec, ControlLine } from './spec';

const MARGIN = { left: 62, top: 34, bottom: 40, gap: 12 };
const LABEL_GAP = 16;

type Place = (value: number) => number;

const drawBand = ({ days, lines }: ControlBand, px: Place, py: Place, theme: FigureTheme): SvgNode[] => {
  const at = (id: ControlLine['id']): number => py(lines.find((line) => line.id === id)?.value ?? Number.NaN);
  const [x1, x2] = [px(days[0]), px(days[1])];
  return [
    svgNode('rect', {
      class: 'band',
      x: x1,
      y: at('upper'),
      width: x2 - x1,
      height: at('lower') - at('upper'),
      fill: theme.band,
    }),
    ...lines.map(({ id, value }) =>
      svgNode('line', {
        class: id,
        x1,
        x2,
        y1: py(value),
        y2: py(value),
        stroke: theme.inkSecond,
        'stroke-width': id === 'centre' ? 1.6 : 1,
        'stroke-dasharray': id === 'centre' ? undefined : '6 4',
      }),
    ),
  ];
};

/** Draws the spec: from step to step the band between the limits, the centre, readings joined in time (filled outside the limits) and the steps that divide them. */
export const drawControlChart = (spec: ControlChartSpec, theme: FigureTheme): SvgNode => {
  const latest = spec.bands.at(-1);
  const lines = latest?.lines ?? [];
  const names = columnWidth(
    lines.map(({ text }) => text),
    TEXT_SIZE,
    'regular',
    spec.width * 0.3,
  );
  const box = {
    left: MARGIN.left,
    top: MARGIN.top,
    right: spec.width - names - MARGIN.gap - 2,
    bottom: spec.height - MARGIN.bottom,
  };
  const px = scaleLinear().domain(spec.days).range([box.left, box.right]);
  const py = scaleLinear().domain(spec.y.domain).range([box.bottom, box.top]);
  const heights = dodge(
    lines.map(({ value }) => py(value)),
    LABEL_GAP,
    box.top,
    box.bottom,
  );
  const shown = thinLabels(spec.dayTicks.map(({ day, label }) => ({ text: label, x: px(day) })));
  return figureRoot('control-chart', spec.width, spec.height, theme, [
    ...spec.bands.flatMap((band) => drawBand(band, px, py, theme)),
    ...spec.steps.flatMap(({ day, label }) => [
      svgNode('line', {
        class: 'step',
        x1: px(day),
        x2: px(day),
        y1: box.top,
        y2: box.bottom,
        stroke: theme.ink,
        'stroke-dasharray': '2 3',
      }),
      drawLabel({
        text: label,
        x: px(day),
        y: box.top - 6,
        anchor: px(day) > (box.left + box.right) / 2 ? 'end' : 'start',
        fill: theme.ink,
      }),
    ]),
    svgNode('g', { class: 'axis axis-x' }, [
      svgNode('line', { x1: box.left, x2: box.right, y1: box.bottom, y2: box.bottom, stroke: theme.inkSecond }),
      ...spec.dayTicks.flatMap(({ day, label }, index) => [
        svgNode('line', { x1: px(day), x2: px(day), y1: box.bottom, y2: box.bottom + 4, stroke: theme.inkSecond }),
        ...(shown[index] === true
          ? [drawLabel({ text: label, x: px(day), y: box.bottom + 18, anchor: 'middle', fill: theme.inkSecond })]
          : []),
      ]),
    ]),
    drawLeftAxis(spec.y, { box, py }, theme, 14),
    ...[...group(spec.points, ({ segment }) => segment).values()].map((joined) =>
      svgNode('path', {
        class: 'course',
        d: polylinePath(joined.map(({ x, y }) => [px(x), py(y)])),
        fill: 'none',
        stroke: theme.inkSecond,
        'stroke-width': 0.8,
      }),
    ),
    ...spec.points.map((point) =>
      focusable(point.key, point.focusLabel, [
        drawMark('circle', px(point.x), py(point.y), point.outside ? 4.4 : 3, {
          class: point.outside ? 'mark mark-outside' : 'mark',
          stroke: theme.ink,
          'stroke-width': 1.1,
          ...(point.outside ? { fill: theme.ink } : {}),
        }),
      ]),
    ),
    ...lines.map(({ text }, index) =>
      drawLabel({ text, x: box.right + MARGIN.gap, y: centredBaseline(heights[index] ?? box.top), fill: theme.ink }),
    ),
    spec.message === undefined
      ? undefined
      : drawMessage(spec.message, (box.left + box.right) / 2, (box.top + box.bottom) / 2, theme),
  ]);
};
