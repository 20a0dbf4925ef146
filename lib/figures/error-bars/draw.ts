import { scaleLinear } from 'd3';
import { columnWidth } from '../column-width';
import { drawBottomAxis } from '../draw-axes';
import { drawMessage, figureRoot } from '../figure-root';
import type { FigureTheme } from '../figure-theme';
import { centredBaseline, drawLabel, STRONG_SIZE, TEXT_SIZE } from '../label';
import { drawMark, focusable } from '../mark';
import { svgNode, type SvgNode } from '../svg-node';
import { fitText } from '../wrap-text';
import type { ErrorBar, ErrorBarsSpec } from './spec';

const ROW = 30;
/** Name and numbers above the line, where there is no room beside it. */
const ROW_STACKED = 46;
const STACKED_BELOW = 480;
const TOP = 4;
const BOTTOM = 44;
const STACKED_EDGE = 8;

/** Draws the spec: name, a dot with its range, the numbers; in a narrow figure name and numbers above their line. */
export const drawErrorBars = (spec: ErrorBarsSpec, theme: FigureTheme): SvgNode => {
  const stacked = spec.width < STACKED_BELOW;
  const row = stacked ? ROW_STACKED : ROW;
  const height = TOP + Math.max(spec.bars.length, 1) * row + BOTTOM;
  const root = (children: readonly (SvgNode | undefined)[]): SvgNode =>
    figureRoot('error-bars', spec.width, height, theme, children);
  if (spec.message !== undefined) return root([drawMessage(spec.message, spec.width / 2, height / 2, theme)]);
  const names = columnWidth(
    spec.bars.map((bar) => bar.label),
    STRONG_SIZE,
    'regular',
    spec.width * 0.3,
  );
  const numbers = columnWidth(
    spec.bars.map((bar) => bar.text),
    TEXT_SIZE,
    'regular',
    spec.width * 0.36,
  );
  const left = stacked ? STACKED_EDGE : names + 20;
  const right = spec.width - (stacked ? STACKED_EDGE : numbers + 20);
  const scale = scaleLinear().domain(spec.axis.domain).range([left, right]);
  const bottom = TOP + spec.bars.length * row;
  const box = { left, right, top: TOP, bottom };
  const drawRow = (bar: ErrorBar, index: number): SvgNode => {
    const top = TOP + index * row;
    const y = top + row * (stacked ? 0.7 : 0.5);
    const words = stacked ? top + row * 0.28 : y;
    const room = stacked ? spec.width - numbers - 12 : names;
    return focusable(bar.key, bar.focusLabel, [
      svgNode('line', { x1: left, x2: right, y1: y, y2: y, stroke: theme.hair }),
      drawLabel({
        text: fitText(bar.label, room + 1, STRONG_SIZE),
        x: 0,
        y: centredBaseline(words, STRONG_SIZE),
        size: STRONG_SIZE,
        fill: theme.ink,
      }),
      svgNode('line', {
        class: 'interval',
        x1: scale(bar.at.low),
        x2: scale(bar.at.high),
        y1: y,
        y2: y,
        stroke: theme.ink,
        'stroke-width': 2,
      }),
      drawMark('circle', scale(bar.at.estimate), y, 4.2, { class: 'mark', fill: theme.ink }),
      drawLabel({
        text: fitText(bar.text, numbers + 1, TEXT_SIZE),
        x: spec.width,
        y: centredBaseline(words),
        anchor: 'end',
        fill: theme.ink,
      }),
    ]);
  };
  return root([...spec.bars.map(drawRow), drawBottomAxis(spec.axis, { box, px: scale }, theme)]);
};
