import { squareAround, type Box } from '../box';
import { scatterObstacles } from '../draw-scatter';
import { groupLabelRequests, type GroupLabelRequest } from '../group-labels';
import { TEXT_SIZE } from '../label';
import type { Pixel } from '../path-data';
import { pathLabelRequests } from '../path-labels';
import { placeLabels, placeOnLine, type LabelRequest, type PlacedLabel } from '../place-labels';
import type { PlotArea } from '../plot-area';
import type { VectorGraphSpec } from './spec';

export interface VectorLabels {
  /** Levels of the reference ellipses and whose reference it is. */
  readonly references: readonly PlacedLabel[];
  readonly names: readonly (PlacedLabel & { readonly request: GroupLabelRequest })[];
  readonly dates: readonly PlacedLabel[];
  /** What found no free spot and is written beneath the plot. */
  readonly beneath: { readonly groups: VectorGraphSpec['groups']; readonly notes: readonly string[] };
}

const extentOf = (pixels: readonly Pixel[]): Box => ({
  left: Math.min(...pixels.map(([x]) => x)),
  right: Math.max(...pixels.map(([x]) => x)),
  top: Math.min(...pixels.map(([, y]) => y)),
  bottom: Math.max(...pixels.map(([, y]) => y)),
});

/** The pixel of an outline farthest in a direction. */
const farthest = (outline: readonly Pixel[], dx: number, dy: number): Pixel =>
  outline.reduce((best, pixel) => (pixel[0] * dx + pixel[1] * dy > best[0] * dx + best[1] * dy ? pixel : best));

const noteAt = (text: string, [anchorX, anchorY]: Pixel, reach: number): LabelRequest => ({
  text,
  anchorX,
  anchorY,
  clearance: 10,
  reach,
  size: TEXT_SIZE,
  weight: 'regular',
});

/** Outlines of a program's confidence ellipse in pixels; empty where none is drawn. */
export const confidenceOutline = (group: VectorGraphSpec['groups'][number], area: PlotArea): Pixel[] =>
  group.confidence === undefined ? [] : area.ellipse(group.confidence);

/**
 * Finds a place for every label: levels on their own ellipse, names beside their group, then dates of a path, then whose
 * reference it is. Names keep off the reference ellipses where they can.
 */
export const placeVectorLabels = (spec: VectorGraphSpec, area: PlotArea): VectorLabels => {
  const { box } = area;
  const frame = { left: box.left + 4, top: box.top + 2, right: box.right - 2, bottom: box.bottom - 4 };
  const outlineOf = (group: VectorGraphSpec['groups'][number]): Pixel[] => confidenceOutline(group, area);
  const marks = [
    ...scatterObstacles(spec.groups, spec.path, area),
    ...spec.groups.map(outlineOf).flatMap((outline) => (outline.length > 0 ? [extentOf(outline)] : [])),
  ];
  const outlines = spec.references.map((reference) => area.ellipse(reference));
  const loose = { frame, boxes: marks };
  const strict = { frame, boxes: [...marks, ...outlines.flat().map(([x, y]) => squareAround(x, y, 3))] };

  const levels: PlacedLabel[] = [];
  spec.references.forEach((reference, index) => {
    const outline = outlines[index];
    if (outline === undefined) return;
    const fromTop = [...outline].sort((a, b) => a[1] - a[0] * 0.4 - (b[1] - b[0] * 0.4));
    const onLine = placeOnLine(reference.label, fromTop, loose, levels);
    const aside = [noteAt(reference.label, farthest(outline, 1, 0.6), 260)];
    const label = onLine ?? placeLabels(aside, strict, levels).placed[0];
    if (label !== undefined) levels.push(label);
  });

  const requests = groupLabelRequests(spec.groups, area, outlineOf);
  const clear = placeLabels(requests, strict, levels);
  const crowded = placeLabels(clear.unplaced, loose, [...levels, ...clear.placed]);
  const names = [...clear.placed, ...crowded.placed];
  const dates = placeLabels(pathLabelRequests(spec.path, area), loose, [...levels, ...names]).placed;
  const widest = outlines[0];
  const whose =
    widest === undefined || spec.referenceLabel === ''
      ? []
      : [noteAt(spec.referenceLabel, farthest(widest, -1, 1), 260)];
  const reference = placeLabels(whose, strict, [...levels, ...names, ...dates]);
  return {
    references: [...levels, ...reference.placed],
    names,
    dates,
    beneath: {
      groups: spec.groups.filter((group) => !names.some((label) => label.request.group === group)),
      notes: reference.unplaced.map(() => spec.referenceNote),
    },
  };
};
