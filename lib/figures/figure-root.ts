import type { FigureTheme } from './figure-theme';
import { drawLabel } from './label';
import { svgNode, type SvgNode } from './svg-node';

/** The outermost element of a figure. Its text is set in the theme's sans with tabular figures. */
export const figureRoot = (
  name: string,
  width: number,
  height: number,
  theme: FigureTheme,
  children: readonly (SvgNode | undefined)[],
): SvgNode =>
  svgNode(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: `figure figure-${name}`,
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
      'font-family': theme.sans,
      'font-variant': 'tabular-nums',
      fill: 'none',
    },
    children,
  );

/** What a figure says instead of marks where there is nothing to draw. */
export const drawMessage = (message: string, x: number, y: number, theme: FigureTheme): SvgNode =>
  drawLabel({ text: message, x, y, fill: theme.inkSecond, anchor: 'middle', halo: theme.sheet });
