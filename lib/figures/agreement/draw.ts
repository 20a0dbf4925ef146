import { columnWidth } from '../column-width';
import { dodge } from '../dodge';
import { drawBottomAxis, drawLeftAxis } from '../draw-axes';
import { drawMessage, figureRoot } from '../figure-root';
import type { FigureTheme } from '../figure-theme';
import { centredBaseline, drawLabel, TEXT_SIZE } from '../label';
import { drawMark, focusable } from '../mark';
import { plotArea } from '../plot-area';
import { svgNode, type SvgNode } from '../svg-node';
import type { AgreementSpec } from './spec';

const MARGIN = { left: 58, top: 34, bottom: 44, gap: 12 };
const LABEL_GAP = 16;

/** Draws the spec: the band between the limits, bias, zero, a hollow mark per person; the lines are named at their end. */
export const drawAgreement = (spec: AgreementSpec, theme: FigureTheme): SvgNode => {
  const names = columnWidth(
    spec.lines.map(({ text }) => text),
    TEXT_SIZE,
    'regular',
    spec.width * 0.34,
  );
  const box = {
    left: MARGIN.left,
    top: MARGIN.top,
    right: spec.width - names - MARGIN.gap - 2,
    bottom: spec.height - MARGIN.bottom,
  };
  const area = plotArea(spec.x, spec.y, box);
  const at = (id: string): number | undefined => spec.lines.find((line) => line.id === id)?.value;
  const [upper, lower] = [at('upper'), at('lower')];
  const across = (className: string, value: number, dash: string | undefined, width: number): SvgNode =>
    svgNode('line', {
      class: className,
      x1: box.left,
      x2: box.right,
      y1: area.py(value),
      y2: area.py(value),
      stroke: theme.inkSecond,
      'stroke-width': width,
      'stroke-dasharray': dash,
    });
  const heights = dodge(
    spec.lines.map(({ value }) => area.py(value)),
    LABEL_GAP,
    box.top,
    box.bottom,
  );
  const points = [...spec.points].sort((a, b) => a.x - b.x || a.y - b.y);
  return figureRoot('agreement', spec.width, spec.height, theme, [
    upper === undefined || lower === undefined
      ? undefined
      : svgNode('rect', {
          class: 'band',
          x: box.left,
          y: area.py(upper),
          width: box.right - box.left,
          height: area.py(lower) - area.py(upper),
          fill: theme.band,
        }),
    across('zero', 0, '1 4', 1),
    ...spec.lines.map(({ id, value }) => across(id, value, id === 'bias' ? undefined : '6 4', id === 'bias' ? 1.6 : 1)),
    drawBottomAxis(spec.x, area, theme),
    drawLeftAxis(spec.y, area, theme, 14),
    ...points.map((point) =>
      focusable(point.key, point.focusLabel, [
        drawMark('circle', area.px(point.x), area.py(point.y), points.length > 400 ? 2.5 : 3.2, {
          class: 'mark',
          stroke: theme.ink,
          'stroke-width': 1.1,
          'stroke-opacity': 0.8,
        }),
      ]),
    ),
    ...spec.lines.map(({ text }, index) =>
      drawLabel({
        text,
        x: box.right + MARGIN.gap,
        y: centredBaseline(heights[index] ?? box.top),
        fill: theme.ink,
      }),
    ),
    spec.message === undefined
      ? undefined
      : drawMessage(spec.message, (box.left + box.right) / 2, (box.top + box.bottom) / 2, theme),
  ]);
};
