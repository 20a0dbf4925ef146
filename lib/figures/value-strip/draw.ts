import { scaleLinear } from 'd3';
import { figureRoot } from '../figure-root';
import type { FigureTheme } from '../figure-theme';
import { focusable } from '../mark';
import { polylinePath, type Pixel } from '../path-data';
import { svgNode, type SvgNode } from '../svg-node';
import { drawValuePoint } from '../value-point';
import type { ValueStripSpec } from './spec';

const EDGE = 6;

/** Draws the spec: evenly spaced in order of date, the last value larger. */
export const drawValueStrip = (spec: ValueStripSpec, theme: FigureTheme): SvgNode => {
  const { width, height, points } = spec;
  const y = scaleLinear()
    .domain(spec.domain)
    .range([height - EDGE, EDGE]);
  const step = points.length > 1 ? (width - 2 * EDGE) / (points.length - 1) : 0;
  const x = (index: number): number => (points.length > 1 ? EDGE + index * step : width / 2);
  const line = points.map((point, index): Pixel => [x(index), y(point.value)]);
  return figureRoot('value-strip', width, height, theme, [
    spec.band &&
      svgNode('rect', {
        class: 'band',
        x: 0,
        y: y(spec.band.high),
        width,
        height: y(spec.band.low) - y(spec.band.high),
        fill: theme.band,
      }),
    spec.baseline === undefined
      ? undefined
      : svgNode('line', {
          class: 'baseline',
          x1: 0,
          x2: width,
          y1: y(spec.baseline),
          y2: y(spec.baseline),
          stroke: theme.inkSecond,
          'stroke-width': 0.6,
        }),
    line.length > 1
      ? svgNode('path', { d: polylinePath(line), stroke: theme.inkSecond, 'stroke-width': 1 })
      : undefined,
    ...points.map((point, index) =>
      focusable(point.key, point.label, [
        drawValuePoint(point.state, x(index), y(point.value), index === points.length - 1 ? 4.2 : 2.6, theme),
      ]),
    ),
  ]);
};
