import type { FigureTheme } from './figure-theme';
import { drawLabel, labelBox, centredBaseline } from './label';
import type { LinearAxis } from './linear-axis';
import type { PlotArea } from './plot-area';
import { svgNode, type SvgNode } from './svg-node';

const TICK = 5;

/** Ticks whose labels keep a gap; the axis itself may be short. */
const spaced = (axis: LinearAxis, position: (value: number) => number): LinearAxis['ticks'] => {
  let last = -Infinity;
  return axis.ticks.filter((tick) => {
    const box = labelBox({ text: tick.label, x: position(tick.value), y: 0, anchor: 'middle' });
    if (box.left < last + 6) return false;
    last = box.right;
    return true;
  });
};

/** A value axis under the plot: line, ticks, labels, and the title at its right end. */
export const drawBottomAxis = (axis: LinearAxis, area: Pick<PlotArea, 'box' | 'px'>, theme: FigureTheme): SvgNode => {
  const { left, right, bottom } = area.box;
  return svgNode('g', { class: 'axis axis-x' }, [
    svgNode('line', { x1: left, y1: bottom, x2: right, y2: bottom, stroke: theme.inkSecond }),
    ...spaced(axis, area.px).flatMap((tick) => {
      const x = area.px(tick.value);
      return [
        svgNode('line', { x1: x, y1: bottom, x2: x, y2: bottom + TICK, stroke: theme.inkSecond }),
        drawLabel({ text: tick.label, x, y: bottom + 18, anchor: 'middle', fill: theme.inkSecond }),
      ];
    }),
    drawLabel({ text: axis.title, x: right, y: bottom + 36, anchor: 'end', fill: theme.ink }),
  ]);
};

/** A value axis left of the plot; its title stands upright above it, so nobody tilts the head. */
export const drawLeftAxis = (
  axis: LinearAxis,
  area: Pick<PlotArea, 'box' | 'py'>,
  theme: FigureTheme,
  titleY: number,
): SvgNode => {
  const { left, top, bottom } = area.box;
  return svgNode('g', { class: 'axis axis-y' }, [
    svgNode('line', { x1: left, y1: top, x2: left, y2: bottom, stroke: theme.inkSecond }),
    ...axis.ticks.flatMap((tick) => {
      const y = area.py(tick.value);
      return [
        svgNode('line', { x1: left - TICK, y1: y, x2: left, y2: y, stroke: theme.inkSecond }),
        drawLabel({ text: tick.label, x: left - 9, y: centredBaseline(y), anchor: 'end', fill: theme.inkSecond }),
      ];
    }),
    drawLabel({ text: axis.title, x: 8, y: titleY, fill: theme.ink }),
  ]);
};
