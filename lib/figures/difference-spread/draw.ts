import { scaleLinear } from 'd3';
import { columnWidth } from '../column-width';
import { drawBottomAxis } from '../draw-axes';
import { drawMessage, figureRoot } from '../figure-root';
import type { FigureTheme } from '../figure-theme';
import { centredBaseline, drawLabel, STRONG_SIZE, TEXT_SIZE } from '../label';
import { drawMark, focusable } from '../mark';
import { polylinePath } from '../path-data';
import { svgNode, type SvgNode } from '../svg-node';
import { fitText } from '../wrap-text';
import type { DifferenceSpreadSpec, SpreadRow } from './spec';

const ROW = 40;
const TOP = 4;
const BOTTOM = 44;

/** Draws the spec: a stroke per person, the range from 5 to 95 %, the middle half, the median; the numbers beside it. */
export const drawDifferenceSpread = (spec: DifferenceSpreadSpec, theme: FigureTheme): SvgNode => {
  const height = TOP + Math.max(spec.rows.length, 2) * ROW + BOTTOM;
  const root = (children: readonly (SvgNode | undefined)[]): SvgNode =>
    figureRoot('difference-spread', spec.width, height, theme, children);
  if (spec.message !== undefined) return root([drawMessage(spec.message, spec.width / 2, height / 2, theme)]);
  const names = columnWidth(
    spec.rows.map(({ label }) => label),
    STRONG_SIZE,
    'strong',
    spec.width * 0.26,
  );
  const counts = columnWidth(
    spec.rows.map(({ nText }) => nText),
    TEXT_SIZE,
    'regular',
    spec.width * 0.26,
  );
  const numbers = columnWidth(
    spec.rows.map(({ text }) => text),
    TEXT_SIZE,
    'regular',
    spec.width * 0.26,
  );
  const side = Math.max(names, Math.min(counts, spec.width * 0.26));
  const left = side + 20;
  const right = spec.width - numbers - 20;
  const scale = scaleLinear().domain(spec.axis.domain).range([left, right]);
  const bottom = TOP + spec.rows.length * ROW;
  const drawRow = (row: SpreadRow, index: number): SvgNode => {
    const top = TOP + index * ROW;
    const y = top + ROW / 2;
    const { p5, p25, p50, p75, p95 } = row.quantiles;
    const span = (className: string, from: number, to: number, width: number): SvgNode =>
      svgNode('line', {
        class: className,
        x1: scale(from),
        x2: scale(to),
        y1: y,
        y2: y,
        stroke: theme.ink,
        'stroke-width': width,
      });
    return focusable(row.key, row.focusLabel, [
      svgNode('path', {
        class: 'people',
        d: row.differences
          .map((difference) =>
            polylinePath([
              [scale(difference), y - 11],
              [scale(difference), y + 11],
            ]),
          )
          .join(''),
        stroke: theme.inkSecond,
        'stroke-opacity': 0.22,
      }),
      span('range', p5, p95, 1.4),
      span('middle', p25, p75, 5),
      drawMark('circle', scale(p50), y, 5, { class: 'mark', fill: theme.sheet, stroke: theme.ink, 'stroke-width': 2 }),
      drawLabel({
        text: fitText(row.label, side + 1, STRONG_SIZE, 'strong'),
        x: 0,
        y: centredBaseline(y - 8, STRONG_SIZE),
        size: STRONG_SIZE,
        weight: 'strong',
        fill: theme.ink,
      }),
      drawLabel({
        text: fitText(row.nText, side + 1, TEXT_SIZE),
        x: 0,
        y: centredBaseline(y + 9),
        fill: theme.inkSecond,
      }),
      drawLabel({
        text: fitText(row.text, numbers + 1, TEXT_SIZE),
        x: spec.width,
        y: centredBaseline(y),
        anchor: 'end',
        fill: theme.ink,
      }),
    ]);
  };
  return root([
    svgNode('line', { class: 'zero', x1: scale(0), x2: scale(0), y1: TOP, y2: bottom, stroke: theme.inkSecond }),
    ...spec.rows.slice(1).map((_, index) => {
      const y = TOP + (index + 1) * ROW;
      return svgNode('line', { x1: 0, x2: spec.width, y1: y, y2: y, stroke: theme.hair });
    }),
    ...spec.rows.map(drawRow),
    drawBottomAxis(spec.axis, { box: { left, right, top: TOP, bottom }, px: scale }, theme),
  ]);
};
