import { scaleLinear } from 'd3';
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
import type { ControlChartSpec } from './spec';

const MARGIN = { left: 62, top: 34, bottom: 40, gap: 12 };
const LABEL_GAP = 16;

/** Draws the spec: the band between the limits, the centre, readings joined in time (filled outside the limits), steps. */
export const drawControlChart = (spec: ControlChartSpec, theme: FigureTheme): SvgNode => {
  const names = columnWidth(
    spec.lines.map(({ text }) => text),
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
  const at = (id: string): number | undefined => spec.lines.find((line) => line.id === id)?.value;
  const [upper, lower] = [at('upper'), at('lower')];
  const heights = dodge(
    spec.lines.map(({ value }) => py(value)),
    LABEL_GAP,
    box.top,
    box.bottom,
  );
  const shown = thinLabels(spec.dayTicks.map(({ day, label }) => ({ text: label, x: px(day) })));
  return figureRoot('control-chart', spec.width, spec.height, theme, [
    upper === undefined || lower === undefined
      ? undefined
      : svgNode('rect', {
          class: 'band',
          x: box.left,
          y: py(upper),
          width: box.right - box.left,
          height: py(lower) - py(upper),
          fill: theme.band,
        }),
    ...spec.lines.map(({ id, value }) =>
      svgNode('line', {
        class: id,
        x1: box.left,
        x2: box.right,
        y1: py(value),
        y2: py(value),
        stroke: theme.inkSecond,
        'stroke-width': id === 'centre' ? 1.6 : 1,
        'stroke-dasharray': id === 'centre' ? undefined : '6 4',
      }),
    ),
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
    svgNode('path', {
      class: 'course',
      d: polylinePath(spec.points.map(({ x, y }) => [px(x), py(y)])),
      fill: 'none',
      stroke: theme.inkSecond,
      'stroke-width': 0.8,
    }),
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
    ...spec.lines.map(({ text }, index) =>
      drawLabel({ text, x: box.right + MARGIN.gap, y: centredBaseline(heights[index] ?? box.top), fill: theme.ink }),
    ),
    spec.message === undefined
      ? undefined
      : drawMessage(spec.message, (box.left + box.right) / 2, (box.top + box.bottom) / 2, theme),
  ]);
};
