import type { GroupStyle } from './group-style';
import { drawMark } from './mark';
import { svgNode, type SvgNode } from './svg-node';

const drawSign = (
  sign: GroupStyle['sign'],
  x: number,
  y: number,
  radius: number,
  colour: string,
): SvgNode | undefined => {
  const half = radius * 0.8;
  switch (sign) {
    case 'none':
      return undefined;
    case 'dot':
      return svgNode('circle', { cx: x, cy: y, r: Math.max(0.9, radius * 0.3), fill: colour });
    case 'bar':
      return svgNode('line', { x1: x - half, x2: x + half, y1: y, y2: y, stroke: colour });
    case 'post':
      return svgNode('line', { x1: x, x2: x, y1: y - half, y2: y + half, stroke: colour });
  }
};

/** A group's mark: its outline shape in its hue, from the seventh group on with a sign inside. */
export const drawGroupMark = (
  style: GroupStyle,
  x: number,
  y: number,
  radius: number,
  paint: Readonly<Record<string, string | number | undefined>>,
): (SvgNode | undefined)[] => [
  drawMark(style.shape, x, y, radius, { stroke: style.colour, 'stroke-dasharray': style.markDash, ...paint }),
  drawSign(style.sign, x, y, radius, style.colour),
];
