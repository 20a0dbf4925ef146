import { drawGroupLabel, MARK_ROOM } from './group-labels';
import { drawLabel, labelBox, STRONG_SIZE, TEXT_SIZE } from './label';
import type { FigureTheme } from './figure-theme';
import type { Captioned, ScatterGroup } from './scatter';
import type { SvgNode } from './svg-node';
import { textWidth } from './text-width';
import { wrapText } from './wrap-text';

const ROW = 20;
const GAP = 20;

/** Rows under the plot for names and notes that found no free spot beside what they name. */
export const drawLegend = (
  groups: readonly Captioned<ScatterGroup>[],
  left: number,
  top: number,
  width: number,
  notes: readonly string[],
  theme: FigureTheme,
): { readonly nodes: readonly SvgNode[]; readonly height: number } => {
  let x = left;
  let row = 0;
  const nodes = groups.map((group) => {
    const own = MARK_ROOM + textWidth(group.caption, STRONG_SIZE, 'strong');
    if (x > left && x + own > left + width) {
      x = left;
      row += 1;
    }
    const at = {
      text: group.caption,
      x: x + MARK_ROOM,
      y: top + row * ROW + STRONG_SIZE,
      size: STRONG_SIZE,
      weight: 'strong',
    } as const;
    const box = labelBox(at);
    x += own + GAP;
    return drawGroupLabel({ ...at, box: { ...box, left: box.left - MARK_ROOM } }, group, [], theme);
  });
  const used = groups.length === 0 ? 0 : (row + 1) * ROW;
  const lines = notes.flatMap((note) => wrapText(note, width, TEXT_SIZE));
  const written = lines.map((text, index) =>
    drawLabel({ text, x: left, y: top + used + index * ROW + TEXT_SIZE, fill: theme.inkSecond }),
  );
  return { nodes: [...nodes, ...written], height: used + lines.length * ROW };
};
