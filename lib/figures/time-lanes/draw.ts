import { drawMessage, figureRoot } from '../figure-root';
import type { FigureTheme } from '../figure-theme';
import { drawLabel } from '../label';
import { svgNode, type SvgNode } from '../svg-node';
import { drawConditions } from './draw-conditions';
import { drawLane } from './draw-lane';
import { drawTimeAxis } from './draw-time-axis';
import { timeLanesLayout, type LaneLayout } from './layout';
import type { TimeLanesSpec } from './spec';

const drawBreaks = (layout: LaneLayout, theme: FigureTheme): SvgNode =>
  svgNode(
    'g',
    { class: 'breaks' },
    layout.breaks.flatMap(({ label, x, labelX, labelY }) => [
      svgNode('line', {
        x1: x,
        x2: x,
        y1: labelY + 5,
        y2: layout.axisY,
        stroke: theme.inkSecond,
        'stroke-dasharray': '1 3',
      }),
      drawLabel({ text: label, x: labelX, y: labelY, fill: theme.inkSecond, halo: theme.sheet }),
    ]),
  );

/** Draws the spec; its height follows from the number of lanes, breaks and conditions. */
export const drawTimeLanes = (spec: TimeLanesSpec, theme: FigureTheme): SvgNode => {
  const layout = timeLanesLayout(spec);
  const broken = spec.visits.flatMap((visit, index) => (visit.breakBefore === undefined ? [] : [index]));
  const root = (children: readonly (SvgNode | undefined)[]): SvgNode =>
    figureRoot('time-lanes', spec.width, layout.height, theme, children);
  if (spec.message !== undefined) return root([drawMessage(spec.message, spec.width / 2, layout.height / 2, theme)]);
  return root([
    ...spec.lanes.map((lane, index) => drawLane(lane, index, layout, broken, theme)),
    drawBreaks(layout, theme),
    drawTimeAxis(spec, layout, theme),
    drawConditions(spec, layout, theme),
  ]);
};
