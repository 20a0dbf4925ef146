import type { FigureTheme } from '../figure-theme';
import { centredBaseline, drawLabel } from '../label';
import { svgNode, type SvgNode } from '../svg-node';
import { fitText } from '../wrap-text';
import type { ConditionMark } from './data';
import { GRID_ROW, type LaneLayout } from './layout';
import type { TimeLanesSpec } from './spec';

/** Drawn and not set as type: a face without these signs would leave boxes. */
const drawSign = (mark: ConditionMark, x: number, y: number, room: number, theme: FigureTheme): SvgNode => {
  const tick = (left: number): SvgNode =>
    svgNode('path', {
      d: `M${left.toFixed(2)},${(y + 0.5).toFixed(2)}l2.6,3l4.6,-7`,
      stroke: theme.ink,
      'stroke-width': 1.5,
      'stroke-linecap': 'round',
      'stroke-linejoin': 'round',
    });
  const word = (text: string, strong: boolean): SvgNode =>
    drawLabel({
      text: fitText(text, room, 12, strong ? 'strong' : 'regular'),
      x,
      y: centredBaseline(y),
      anchor: 'middle',
      weight: strong ? 'strong' : 'regular',
      fill: strong ? theme.ink : theme.inkSecond,
    });
  if (typeof mark === 'object') return svgNode('g', { class: 'condition' }, [word(mark.text, false)]);
  switch (mark) {
    case 'met':
      return svgNode('g', { class: 'condition met' }, [tick(x - 3.6)]);
    case 'met-by-procedure':
      return svgNode('g', { class: 'condition met-by-procedure' }, [
        tick(x - 6.4),
        drawLabel({ text: 'p', x: x + 1, y: y + 5, size: 9.5, fill: theme.ink }),
      ]);
    case 'not-met':
      return svgNode('g', { class: 'condition not-met' }, [
        svgNode('path', {
          d: `M${(x - 3.4).toFixed(2)},${(y - 3.4).toFixed(2)}l6.8,6.8m0,-6.8l-6.8,6.8`,
          stroke: theme.ink,
          'stroke-width': 1.8,
          'stroke-linecap': 'round',
        }),
      ]);
    case 'unknown':
      return svgNode('g', { class: 'condition unknown' }, [word('?', false)]);
  }
};

/** Rows of conditions, one column per visit, tied to the time axis where a column had to move aside. */
export const drawConditions = (spec: TimeLanesSpec, layout: LaneLayout, theme: FigureTheme): SvgNode | undefined => {
  if (spec.conditions.length === 0) return undefined;
  const gaps = layout.columnX.slice(1).map((x, index) => x - (layout.columnX[index] ?? x));
  const room = Math.max(8, Math.min(48, ...gaps) - 3);
  return svgNode('g', { class: 'conditions' }, [
    ...spec.conditions.flatMap((row, index) => {
      const y = layout.gridTop + (index + 0.5) * GRID_ROW;
      return [
        svgNode('line', {
          x1: 0,
          x2: layout.right,
          y1: y - GRID_ROW / 2,
          y2: y - GRID_ROW / 2,
          stroke: theme.hair,
          'stroke-width': 0.7,
        }),
        drawLabel({
          text: fitText(row.label, layout.left - 12, 12),
          x: 0,
          y: centredBaseline(y),
          fill: theme.inkSecond,
        }),
        ...row.marks.flatMap((mark, visit) =>
          mark === undefined ? [] : [drawSign(mark, layout.columnX[visit] ?? 0, y, room, theme)],
        ),
      ];
    }),
  ]);
};
