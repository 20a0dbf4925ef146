import { scaleLinear } from 'd3';
import { columnWidth } from '../column-width';
import { drawBottomAxis } from '../draw-axes';
import { drawGroupMark } from '../draw-group-mark';
import { drawMessage, figureRoot } from '../figure-root';
import type { FigureTheme } from '../figure-theme';
import { groupStyle } from '../group-style';
import { centredBaseline, drawLabel, STRONG_SIZE, TEXT_SIZE } from '../label';
import { focusable } from '../mark';
import { svgNode, type SvgNode } from '../svg-node';
import { fitText, wrapText } from '../wrap-text';
import type { ProgramInterval, ProgramIntervalsSpec } from './spec';

const TOP = 4;
const BOTTOM = 44;

interface Columns {
  readonly left: number;
  readonly right: number;
  readonly scale: (value: number) => number;
}

const drawInterval = (
  program: ProgramInterval,
  y: number,
  columns: Columns,
  theme: FigureTheme,
  none: string,
): (SvgNode | undefined)[] => {
  const style = groupStyle(program.shapeIndex, theme);
  const { estimate } = program;
  if (estimate === undefined)
    return [
      drawLabel({
        text: fitText(none, columns.right - columns.left, TEXT_SIZE),
        x: (columns.left + columns.right) / 2,
        y: centredBaseline(y),
        anchor: 'middle',
        fill: theme.inkSecond,
        halo: theme.sheet,
      }),
    ];
  const low = columns.scale(estimate.low);
  const high = columns.scale(estimate.high);
  return [
    svgNode('line', {
      class: 'interval',
      x1: low,
      x2: high,
      y1: y,
      y2: y,
      stroke: style.colour,
      'stroke-width': 2,
      'stroke-dasharray': style.dash,
    }),
    ...[low, high].map((x) =>
      svgNode('line', { x1: x, x2: x, y1: y - 4, y2: y + 4, stroke: style.colour, 'stroke-width': 2 }),
    ),
    ...drawGroupMark(style, columns.scale(estimate.mean), y, 5, {
      class: 'mark',
      fill: theme.sheet,
      'stroke-width': 2,
    }),
  ];
};

const drawName = (program: ProgramInterval, y: number, width: number, theme: FigureTheme): SvgNode[] => {
  const lines = wrapText(program.label, width, STRONG_SIZE, 'strong');
  const shown =
    lines.length > 2 ? [lines[0] ?? '', fitText(lines.slice(1).join(' '), width, STRONG_SIZE, 'strong')] : lines;
  return shown.map((text, index) =>
    drawLabel({
      text,
      x: 0,
      y: centredBaseline(y + (index - (shown.length - 1) / 2) * 16, STRONG_SIZE),
      size: STRONG_SIZE,
      weight: 'strong',
      fill: theme.ink,
    }),
  );
};

/** Draws the spec: name, interval over the band, mean as a number, n. */
export const drawProgramIntervals = (spec: ProgramIntervalsSpec, theme: FigureTheme): SvgNode => {
  const height = TOP + Math.max(spec.programs.length, 2) * spec.rowHeight + BOTTOM;
  const root = (children: readonly (SvgNode | undefined)[]): SvgNode =>
    figureRoot('program-intervals', spec.width, height, theme, children);
  if (spec.message !== undefined) return root([drawMessage(spec.message, spec.width / 2, height / 2, theme)]);
  const names = columnWidth(
    spec.programs.map((program) => program.label),
    STRONG_SIZE,
    'strong',
    spec.width * 0.26,
  );
  const counts = columnWidth(
    spec.programs.map((program) => program.nText),
    TEXT_SIZE,
    'regular',
    spec.width * 0.22,
  );
  const means = columnWidth(
    spec.programs.map((program) => program.meanText),
    STRONG_SIZE,
    'strong',
    90,
  );
  const left = names + 24;
  const meanX = spec.width - counts - 20;
  const right = meanX - means - 20;
  const scale = scaleLinear().domain(spec.axis.domain).range([left, right]);
  const bottom = TOP + spec.programs.length * spec.rowHeight;
  const box = { left, right, top: TOP, bottom };
  const drawRow = (program: ProgramInterval, index: number): SvgNode => {
    const top = TOP + index * spec.rowHeight;
    const y = top + spec.rowHeight / 2;
    const error = program.leastSignificantChange;
    return focusable(program.key, program.focusLabel, [
      error === undefined
        ? undefined
        : svgNode('rect', {
            class: 'band',
            x: scale(-error),
            y: top + 3,
            width: scale(error) - scale(-error),
            height: spec.rowHeight - 6,
            fill: theme.band,
          }),
      svgNode('line', {
        class: 'zero',
        x1: scale(0),
        x2: scale(0),
        y1: top,
        y2: top + spec.rowHeight,
        stroke: theme.inkSecond,
      }),
      ...drawName(program, y, names + 1, theme),
      ...drawInterval(program, y, { left, right, scale }, theme, spec.noEstimate),
      drawLabel({
        text: program.meanText,
        x: meanX,
        y: centredBaseline(y, STRONG_SIZE),
        size: STRONG_SIZE,
        weight: 'strong',
        anchor: 'end',
        fill: theme.ink,
      }),
      drawLabel({
        text: fitText(program.nText, counts + 1, TEXT_SIZE),
        x: spec.width,
        y: centredBaseline(y),
        anchor: 'end',
        fill: theme.inkSecond,
      }),
    ]);
  };
  return root([
    ...spec.programs.slice(1).map((_, index) => {
      const y = TOP + (index + 1) * spec.rowHeight;
      return svgNode('line', { x1: 0, x2: spec.width, y1: y, y2: y, stroke: theme.hair });
    }),
    ...spec.programs.map(drawRow),
    drawBottomAxis(spec.axis, { box, px: scale }, theme),
  ]);
};
