import type { Box } from './box';
import { svgText, type SvgNode } from './svg-node';
import { textWidth, type TextWeight } from './text-width';

/** The two sizes of text inside a figure, pixels. */
export const TEXT_SIZE = 12;
export const STRONG_SIZE = 13;

/** Share of the size above and below the baseline that letters use. */
const ASCENT = 0.76;
const DESCENT = 0.24;

export interface Label {
  readonly text: string;
  readonly x: number;
  /** Baseline. */
  readonly y: number;
  readonly fill: string;
  readonly size?: number;
  readonly weight?: TextWeight;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Colour of a halo that keeps the text legible over lines. */
  readonly halo?: string;
}

/** The rectangle a label covers, from estimated widths. */
export const labelBox = (label: Omit<Label, 'fill'>): Box => {
  const size = label.size ?? TEXT_SIZE;
  const width = textWidth(label.text, size, label.weight);
  const shift = label.anchor === 'end' ? width : label.anchor === 'middle' ? width / 2 : 0;
  return {
    left: label.x - shift,
    right: label.x - shift + width,
    top: label.y - ASCENT * size,
    bottom: label.y + DESCENT * size,
  };
};

/** The baseline that centres a text of this size on `y`. */
export const centredBaseline = (y: number, size = TEXT_SIZE): number =>
  y + ((ASCENT - DESCENT) / 2) * size + 0.04 * size;

export const drawLabel = (label: Label): SvgNode =>
  svgText(label.text, {
    x: label.x,
    y: label.y,
    'font-size': label.size ?? TEXT_SIZE,
    'font-weight': label.weight === 'strong' ? 600 : undefined,
    'text-anchor': label.anchor === 'start' ? undefined : label.anchor,
    fill: label.fill,
    ...(label.halo === undefined
      ? {}
      : { stroke: label.halo, 'stroke-width': 3, 'stroke-linejoin': 'round', 'paint-order': 'stroke' }),
  });
