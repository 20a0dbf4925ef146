import { range } from 'd3';
import type { MarkShape } from './group-style';
import { polygonPath, polylinePath, type Pixel } from './path-data';
import { svgNode, type SvgNode } from './svg-node';

const around = (x: number, y: number, radii: readonly number[], corners: number): Pixel[] =>
  range(corners).map((corner) => {
    const angle = -Math.PI / 2 + (2 * Math.PI * corner) / corners;
    const radius = radii[corner % radii.length] ?? 0;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });

const crossPath = (x: number, y: number, r: number): string =>
  polylinePath([
    [x - r, y - r],
    [x + r, y + r],
  ]) +
  polylinePath([
    [x - r, y + r],
    [x + r, y - r],
  ]);

/** Path data of an outline shape of about equal area; `radius` is that of the circle. Undefined for the circle itself. */
const shapePath = (shape: Exclude<MarkShape, 'circle'>, x: number, y: number, radius: number): string => {
  switch (shape) {
    case 'square': {
      const half = radius * 0.9;
      return polygonPath([
        [x - half, y - half],
        [x + half, y - half],
        [x + half, y + half],
        [x - half, y + half],
      ]);
    }
    case 'triangle':
      return polygonPath(around(x, y + radius * 0.15, [radius * 1.25], 3));
    case 'diamond':
      return polygonPath(around(x, y, [radius * 1.25], 4));
    case 'cross':
      return crossPath(x, y, radius * 0.85);
    case 'star':
      return polygonPath(around(x, y, [radius * 1.4, radius * 0.6], 10));
  }
};

/** Half the side of the square that holds any mark of this radius. */
export const markReach = (radius: number): number => radius * 1.4 + 0.75;

/** A mark in outline; `paint` are presentation attributes. */
export const drawMark = (
  shape: MarkShape,
  x: number,
  y: number,
  radius: number,
  paint: Readonly<Record<string, string | number | undefined>>,
): SvgNode =>
  shape === 'circle'
    ? svgNode('circle', { cx: x, cy: y, r: radius, ...paint })
    : svgNode('path', { d: shapePath(shape, x, y, radius), 'stroke-linejoin': 'round', ...paint });

/** A node that can hold the focus: the app moves along `data-key`, a screen reader says `aria-label`. */
export const focusable = (key: string, label: string, children: readonly (SvgNode | undefined)[]): SvgNode =>
  svgNode('g', { class: 'point', 'data-key': key, role: 'img', 'aria-label': label }, children);
