import { scaleLinear } from 'd3';
import type { Box } from './box';
import type { DataPoint, Ellipse } from './ellipse';
import { sampleEllipse } from './ellipse';
import type { LinearAxis } from './linear-axis';
import type { Pixel } from './path-data';

/** Two axes on a rectangle of pixels. */
export interface PlotArea {
  readonly box: Box;
  readonly px: (value: number) => number;
  readonly py: (value: number) => number;
  readonly pixel: (point: DataPoint) => Pixel;
  /** Boundary of an ellipse, sampled in the data and then scaled. */
  readonly ellipse: (ellipse: Ellipse) => Pixel[];
}

export const plotArea = (x: LinearAxis, y: LinearAxis, box: Box): PlotArea => {
  const px = scaleLinear().domain(x.domain).range([box.left, box.right]);
  const py = scaleLinear().domain(y.domain).range([box.bottom, box.top]);
  const pixel = ([dx, dy]: DataPoint): Pixel => [px(dx), py(dy)];
  return { box, px, py, pixel, ellipse: (ellipse) => sampleEllipse(ellipse).map(pixel) };
};
