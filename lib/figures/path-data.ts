import { roundPixel } from './svg-node';

export type Pixel = readonly [x: number, y: number];

const write = ([x, y]: Pixel): string => `${roundPixel(x)},${roundPixel(y)}`;

/** SVG path data through points in pixels. */
export const polylinePath = (points: readonly Pixel[]): string =>
  points.length === 0 ? '' : `M${points.map(write).join('L')}`;

/** The same, closed. */
export const polygonPath = (points: readonly Pixel[]): string =>
  points.length === 0 ? '' : `${polylinePath(points)}Z`;
