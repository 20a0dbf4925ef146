import type { FigureTheme } from '../figure-theme';
import { drawLabel } from '../label';
import { polylinePath } from '../path-data';
import { svgNode, type SvgNode } from '../svg-node';
import { thinLabels } from '../thin-labels';
import type { LaneLayout } from './layout';
import type { TimeLanesSpec } from './spec';

/** A tick per visit, dates thinned until none touches, the year under the first date shown of each year. */
export const drawTimeAxis = (spec: TimeLanesSpec, layout: LaneLayout, theme: FigureTheme): SvgNode => {
  const { axisY, left, right, visitX, columnX } = layout;
  const shown = thinLabels(spec.visits.map((visit, index) => ({ text: visit.dayMonth, x: visitX[index] ?? left })));
  let year = '';
  const dates = spec.visits.flatMap((visit, index) => {
    if (shown[index] !== true) return [];
    const x = visitX[index] ?? left;
    const words = [drawLabel({ text: visit.dayMonth, x, y: axisY + 18, anchor: 'middle', fill: theme.inkSecond })];
    if (visit.year !== year)
      words.push(drawLabel({ text: visit.year, x, y: axisY + 33, anchor: 'middle', fill: theme.inkSecond }));
    year = visit.year;
    return words;
  });
  return svgNode('g', { class: 'axis axis-time' }, [
    svgNode('line', { x1: left, x2: right, y1: axisY, y2: axisY, stroke: theme.inkSecond }),
    ...visitX.map((x, index) =>
      svgNode('line', {
        x1: x,
        x2: x,
        y1: axisY,
        y2: axisY + (shown[index] === true ? 6 : 3),
        stroke: theme.inkSecond,
      }),
    ),
    ...dates,
    ...(spec.conditions.length === 0
      ? []
      : visitX.map((x, index) =>
          svgNode('path', {
            class: 'tie',
            d: polylinePath([
              [x, axisY + 38],
              [columnX[index] ?? x, layout.gridTop - 3],
            ]),
            stroke: theme.inkSecond,
            'stroke-opacity': 0.45,
            'stroke-width': 0.7,
          }),
        )),
  ]);
};
