import type { FigureTheme } from '../figure-theme';
import { centredBaseline, drawLabel, STRONG_SIZE, TEXT_SIZE } from '../label';
import { focusable } from '../mark';
import { svgNode, type SvgNode } from '../svg-node';
import { drawValuePoint } from '../value-point';
import { fitText } from '../wrap-text';
import type { LaneLayout } from './layout';
import type { Lane } from './spec';

const APART = 15;

/** First value in secondary ink and last in ink, moved apart where they would touch. */
const drawEndValues = (lane: Lane, index: number, layout: LaneLayout, theme: FigureTheme): SvgNode[] => {
  const x = layout.right + 10;
  const { first, last } = lane;
  if (first === undefined) return [];
  const firstY = layout.laneY(index, first.value);
  if (last === undefined)
    return [drawLabel({ text: first.text, x, y: centredBaseline(firstY), fill: theme.ink, weight: 'strong' })];
  const lastY = layout.laneY(index, last.value);
  const push = Math.max(0, (APART - Math.abs(firstY - lastY)) / 2) * (lastY >= firstY ? 1 : -1);
  return [
    ...(first.text === last.text && Math.abs(firstY - lastY) < 1
      ? []
      : [drawLabel({ text: first.text, x, y: centredBaseline(firstY - push), fill: theme.inkSecond })]),
    drawLabel({
      text: last.text,
      x,
      y: centredBaseline(first.text === last.text && Math.abs(firstY - lastY) < 1 ? lastY : lastY + push),
      fill: theme.ink,
      weight: 'strong',
    }),
  ];
};

/** The band, the baseline's hairline, the line through comparable values, the points and their ends. */
export const drawLane = (
  lane: Lane,
  index: number,
  layout: LaneLayout,
  breaks: readonly number[],
  theme: FigureTheme,
): SvgNode => {
  const { left, right, laneY } = layout;
  const middle = layout.laneTop(index) + 36;
  const xOf = (visitIndex: number): number => layout.visitX[visitIndex] ?? left;
  const segments = lane.points.slice(1).flatMap((point, at) => {
    const before = lane.points[at];
    const broken =
      before === undefined || breaks.some((visit) => visit > before.visitIndex && visit <= point.visitIndex);
    if (broken) return [];
    return svgNode('line', {
      x1: xOf(before.visitIndex),
      y1: laneY(index, before.value),
      x2: xOf(point.visitIndex),
      y2: laneY(index, point.value),
      stroke: theme.ink,
      'stroke-width': 1.2,
    });
  });
  const radius = lane.points.length > 24 ? 3.2 : 4.2;
  return svgNode('g', { class: 'lane' }, [
    lane.band &&
      svgNode('rect', {
        class: 'band',
        x: left,
        y: laneY(index, lane.band.high.value),
        width: right - left,
        height: laneY(index, lane.band.low.value) - laneY(index, lane.band.high.value),
        fill: theme.band,
      }),
    lane.baseline &&
      svgNode('line', {
        class: 'baseline',
        x1: left,
        x2: right,
        y1: laneY(index, lane.baseline.value),
        y2: laneY(index, lane.baseline.value),
        stroke: theme.inkSecond,
        'stroke-width': 0.6,
      }),
    drawLabel({
      text: fitText(lane.title, left - 14, STRONG_SIZE, 'strong'),
      x: 0,
      y: middle,
      size: STRONG_SIZE,
      weight: 'strong',
      fill: theme.ink,
    }),
    drawLabel({ text: lane.unitLabel, x: 0, y: middle + 16, size: TEXT_SIZE, fill: theme.inkSecond }),
    ...segments,
    ...lane.points.map((point) =>
      focusable(point.key, point.label, [
        drawValuePoint(point.state, xOf(point.visitIndex), laneY(index, point.value), radius, theme),
      ]),
    ),
    ...drawEndValues(lane, index, layout, theme),
  ]);
};
