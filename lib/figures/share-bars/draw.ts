import { scaleLinear } from 'd3';
import type { Box } from '../box';
import { columnWidth } from '../column-width';
import { drawBottomAxis } from '../draw-axes';
import { drawMessage, figureRoot } from '../figure-root';
import type { FigureTheme } from '../figure-theme';
import { centredBaseline, drawLabel, STRONG_SIZE, TEXT_SIZE } from '../label';
import { focusable } from '../mark';
import { svgNode, type SvgNode } from '../svg-node';
import { textWidth } from '../text-width';
import { fitText } from '../wrap-text';
import { fillPart } from './fill-part';
import type { ShareBar, ShareBarsSpec, ShareSegment } from './spec';

const ROW = 26;
/** Name above the bar, where there is no room beside it. */
const ROW_STACKED = 42;
const STACKED_BELOW = 480;
const BAR = 16;
const BOTTOM = 44;
const EDGE = 16;
const KEY_ROW = 22;
const SWATCH = { width: 26, height: 12 } as const;
const KEY_GAP = 18;
/** Room left and right of a text inside a part. */
const INSIDE = 5;
/** Ground beside a text in a part with a filling. */
const PLATE = 3;

const drawKey = (
  spec: ShareBarsSpec,
  theme: FigureTheme,
): { readonly nodes: readonly SvgNode[]; readonly height: number } => {
  let x = 1;
  let row = 0;
  const nodes = spec.parts.map((part) => {
    const text = `${part.sign} ${part.label}`;
    const own = SWATCH.width + 6 + textWidth(text, TEXT_SIZE);
    if (x > 1 && x + own > spec.width) {
      x = 1;
      row += 1;
    }
    const middle = row * KEY_ROW + KEY_ROW / 2;
    const box = {
      left: x,
      right: x + SWATCH.width,
      top: middle - SWATCH.height / 2,
      bottom: middle + SWATCH.height / 2,
    };
    x += own + KEY_GAP;
    return svgNode('g', { class: 'key' }, [
      ...fillPart(part.fill, box, theme, 'mark'),
      drawLabel({ text, x: box.right + 6, y: centredBaseline(middle), fill: theme.ink }),
    ]);
  });
  return { nodes, height: (row + 1) * KEY_ROW + 6 };
};

const drawSegment = (segment: ShareSegment, box: Box, theme: FigureTheme): readonly (SvgNode | undefined)[] => {
  const room = box.right - box.left - 2 * INSIDE;
  const text = segment.texts.find((one) => textWidth(one, TEXT_SIZE) <= room);
  const filled = fillPart(segment.part.fill, box, theme);
  if (text === undefined) return filled;
  const solid = segment.part.fill === 'solid';
  const middle = (box.left + box.right) / 2;
  const half = textWidth(text, TEXT_SIZE) / 2 + PLATE;
  return [
    ...filled,
    // A plain ground under the text: no filling runs through letters.
    solid
      ? undefined
      : svgNode('rect', {
          x: middle - half,
          y: box.top + 1,
          width: 2 * half,
          height: box.bottom - box.top - 2,
          fill: theme.sheet,
        }),
    drawLabel({
      text,
      x: middle,
      y: centredBaseline((box.top + box.bottom) / 2),
      anchor: 'middle',
      fill: solid ? theme.sheet : theme.ink,
    }),
  ];
};

/** Draws the spec: a key, then a bar a row, its parts told apart by filling and sign. */
export const drawShareBars = (spec: ShareBarsSpec, theme: FigureTheme): SvgNode => {
  const stacked = spec.width < STACKED_BELOW;
  const row = stacked ? ROW_STACKED : ROW;
  const key = drawKey(spec, theme);
  const bottom = key.height + Math.max(spec.bars.length, 1) * row;
  const height = bottom + BOTTOM;
  const root = (children: readonly (SvgNode | undefined)[]): SvgNode =>
    figureRoot('share-bars', spec.width, height, theme, children);
  if (spec.message !== undefined) return root([drawMessage(spec.message, spec.width / 2, height / 2, theme)]);
  const names = columnWidth(
    spec.bars.map((bar) => bar.label),
    STRONG_SIZE,
    'regular',
    spec.width * 0.36,
  );
  const left = stacked ? EDGE : names + 20;
  const right = spec.width - EDGE;
  const scale = scaleLinear().domain(spec.axis.domain).range([left, right]);
  const drawRow = (bar: ShareBar, index: number): SvgNode => {
    const top = key.height + index * row;
    const barTop = stacked ? top + row - BAR - 4 : top + (row - BAR) / 2;
    const box = { top: barTop, bottom: barTop + BAR };
    return focusable(bar.key, bar.focusLabel, [
      drawLabel({
        text: fitText(bar.label, (stacked ? right : names) + 1, STRONG_SIZE),
        x: stacked ? left : 0,
        y: stacked ? box.top - 6 : centredBaseline((box.top + box.bottom) / 2, STRONG_SIZE),
        size: STRONG_SIZE,
        fill: theme.ink,
      }),
      ...bar.segments.flatMap((segment) =>
        drawSegment(segment, { ...box, left: scale(segment.from), right: scale(segment.to) }, theme),
      ),
    ]);
  };
  const area = { box: { left, right, top: key.height, bottom }, px: scale };
  return root([...key.nodes, ...spec.bars.map(drawRow), drawBottomAxis(spec.axis, area, theme)]);
};
