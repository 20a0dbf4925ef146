import { drawGroupMark } from './draw-group-mark';
import type { FigureTheme } from './figure-theme';
import { groupStyle } from './group-style';
import { drawLabel, STRONG_SIZE } from './label';
import type { Pixel } from './path-data';
import type { LabelRequest, PlacedLabel } from './place-labels';
import type { PlotArea } from './plot-area';
import type { Captioned, ScatterGroup } from './scatter';
import { svgNode, type SvgNode } from './svg-node';

export const MARK_ROOM = 15;

/** Where a group is named: at its mean, or at the point nearest to the middle of its points. */
const groupAnchor = (group: ScatterGroup): { x: number; y: number } | undefined => {
  if (group.mean !== undefined) return group.mean;
  const sorted = [...group.points].sort((a, b) => a.x - b.x);
  return sorted[Math.floor(sorted.length / 2)];
};

export interface GroupLabelRequest extends LabelRequest {
  readonly group: Captioned<ScatterGroup>;
  /** Outline of the thing named, so that a leader ends at its edge. */
  readonly outline: readonly Pixel[];
}

/** One request per group that has anything to name; `outlineOf` gives the pixels of its confidence ellipse, if any. */
export const groupLabelRequests = <Group extends Captioned<ScatterGroup>>(
  groups: readonly Group[],
  area: PlotArea,
  outlineOf: (group: Group) => readonly Pixel[],
): GroupLabelRequest[] =>
  groups.flatMap((group) => {
    const anchor = groupAnchor(group);
    if (anchor === undefined) return [];
    const anchorX = area.px(anchor.x);
    const anchorY = area.py(anchor.y);
    const outline = outlineOf(group);
    const radius = outline.reduce((most, [x, y]) => Math.max(most, Math.hypot(x - anchorX, y - anchorY)), 4);
    const request = { text: group.caption, anchorX, anchorY, clearance: radius + 6, reach: 460 };
    return { ...request, size: STRONG_SIZE, weight: 'strong', before: MARK_ROOM, group, outline };
  });

const nearest = (outline: readonly Pixel[], x: number, y: number): Pixel | undefined =>
  outline.reduce<Pixel | undefined>(
    (best, pixel) =>
      best === undefined || Math.hypot(pixel[0] - x, pixel[1] - y) < Math.hypot(best[0] - x, best[1] - y)
        ? pixel
        : best,
    undefined,
  );

/** The group's name in its hue with its mark before it, and a leader line to the edge of what it names. */
export const drawGroupLabel = (
  label: PlacedLabel,
  group: Captioned<ScatterGroup>,
  outline: readonly Pixel[],
  theme: FigureTheme,
): SvgNode => {
  const style = groupStyle(group.shapeIndex, theme);
  const { leader } = label;
  const edge = leader === undefined ? undefined : nearest(outline, leader.x1, leader.y1);
  const middle = (label.box.top + label.box.bottom) / 2;
  return svgNode('g', { class: 'group-label' }, [
    leader === undefined
      ? undefined
      : svgNode('line', {
          x1: leader.x1,
          y1: leader.y1,
          x2: edge?.[0] ?? leader.x2,
          y2: edge?.[1] ?? leader.y2,
          stroke: style.colour,
        }),
    ...drawGroupMark(style, label.box.left + 5, middle, 4, { 'stroke-width': 1.5 }),
    drawLabel({ ...label, fill: style.colour, halo: theme.sheet }),
  ]);
};
