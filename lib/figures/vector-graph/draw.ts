import type { Box } from '../box';
import { clipLine } from '../clip-line';
import { drawBottomAxis, drawLeftAxis } from '../draw-axes';
import { drawPath, drawScatter, scatterObstacles } from '../draw-scatter';
import { drawMessage, figureRoot } from '../figure-root';
import type { FigureTheme } from '../figure-theme';
import { drawGroupLabel, groupLabelRequests } from '../group-labels';
import { groupStyle } from '../group-style';
import { drawLabel, labelBox, TEXT_SIZE } from '../label';
import { drawLegend } from '../legend';
import { drawNote } from '../draw-note';
import { polygonPath, type Pixel } from '../path-data';
import { pathLabelRequests } from '../path-labels';
import { placeLabels, placeOnLine, type LabelRequest, type PlacedLabel } from '../place-labels';
import { plotArea, type PlotArea } from '../plot-area';
import { svgNode, type SvgNode } from '../svg-node';
import type { VectorGraphSpec } from './spec';

const MARGIN = { left: 52, right: 40, top: 46, bottom: 44 };

const extentOf = (pixels: readonly Pixel[]): Box => ({
  left: Math.min(...pixels.map(([x]) => x)),
  right: Math.max(...pixels.map(([x]) => x)),
  top: Math.min(...pixels.map(([, y]) => y)),
  bottom: Math.max(...pixels.map(([, y]) => y)),
});

const drawReferences = (spec: VectorGraphSpec, area: PlotArea, theme: FigureTheme): SvgNode =>
  svgNode(
    'g',
    { class: 'references' },
    spec.references.map((reference) =>
      svgNode('path', {
        class: 'reference',
        d: polygonPath(area.ellipse(reference)),
        fill: theme.band,
        'fill-opacity': 0.5,
        stroke: theme.inkSecond,
        'stroke-opacity': 0.55,
      }),
    ),
  );

/** Rays whose labels do not meet at the edge, each with its label just outside the plot. */
const drawRays = (spec: VectorGraphSpec, area: PlotArea, theme: FigureTheme): SvgNode => {
  let last = { left: -Infinity, right: -Infinity, top: -Infinity, bottom: -Infinity };
  const nodes = spec.rays.flatMap((ray) => {
    const line = clipLine(Math.tan((ray.degrees * Math.PI) / 180), 0, spec.x.domain, spec.y.domain);
    if (line === undefined) return [];
    const [x1, y1] = area.pixel(line[0]);
    const [x2, y2] = area.pixel(line[1]);
    const atTop = y2 <= area.box.top + 0.5;
    const label = atTop
      ? ({ text: ray.label, x: x2, y: area.box.top - 6, anchor: 'middle' } as const)
      : ({ text: ray.label, x: area.box.right + 6, y: y2 + 4, anchor: 'start' } as const);
    const box = labelBox(label);
    const clear =
      box.right + 6 < last.left || box.left - 6 > last.right || box.bottom + 2 < last.top || box.top - 2 > last.bottom;
    if (!clear) return [];
    last = box;
    return [
      svgNode('line', {
        class: 'ray',
        x1,
        y1,
        x2,
        y2,
        stroke: theme.inkSecond,
        'stroke-opacity': 0.6,
        'stroke-dasharray': '1 4',
        'stroke-linecap': 'round',
      }),
      drawLabel({ ...label, fill: theme.inkSecond }),
    ];
  });
  return svgNode('g', { class: 'rays' }, nodes);
};

const drawConfidence = (spec: VectorGraphSpec, area: PlotArea, theme: FigureTheme): SvgNode =>
  svgNode(
    'g',
    { class: 'means' },
    spec.groups.flatMap((group) => {
      const { colour, dash } = groupStyle(group.shapeIndex, theme);
      const ellipse =
        group.confidence &&
        svgNode('path', {
          class: 'confidence',
          d: polygonPath(area.ellipse(group.confidence)),
          fill: colour,
          'fill-opacity': 0.16,
          stroke: colour,
          'stroke-width': 2,
          'stroke-dasharray': dash,
        });
      const mean =
        group.mean &&
        svgNode('circle', { class: 'mean', cx: area.px(group.mean.x), cy: area.py(group.mean.y), r: 2, fill: colour });
      return [ellipse, mean].filter((node) => node !== undefined);
    }),
  );

const levelLabels = (spec: VectorGraphSpec, area: PlotArea, boxes: readonly Box[], frame: Box): PlacedLabel[] => {
  const placed: PlacedLabel[] = [];
  for (const reference of spec.references) {
    const outline = [...area.ellipse(reference)].sort((a, b) => a[1] - a[0] * 0.4 - (b[1] - b[0] * 0.4));
    const label = placeOnLine(reference.label, outline, { frame, boxes }, placed);
    if (label !== undefined) placed.push(label);
  }
  return placed;
};

const referenceRequest = (spec: VectorGraphSpec, area: PlotArea): LabelRequest[] => {
  const widest = spec.references[0];
  if (widest === undefined || spec.referenceLabel === '') return [];
  const [anchorX, anchorY] = area
    .ellipse(widest)
    .reduce((best, pixel) => (pixel[0] - pixel[1] < best[0] - best[1] ? pixel : best));
  return [
    { text: spec.referenceLabel, anchorX, anchorY, clearance: 10, reach: 260, size: TEXT_SIZE, weight: 'regular' },
  ];
};

/** Draws the spec; names stand beside what they name, those without a free spot in rows beneath. */
export const drawVectorGraph = (spec: VectorGraphSpec, theme: FigureTheme): SvgNode => {
  const box = {
    left: MARGIN.left,
    top: MARGIN.top,
    right: spec.width - MARGIN.right,
    bottom: spec.height - MARGIN.bottom,
  };
  const area = plotArea(spec.x, spec.y, box);
  const frame = { left: box.left + 4, top: box.top + 2, right: box.right - 2, bottom: box.bottom - 4 };
  const outlineOf = (group: VectorGraphSpec['groups'][number]): Pixel[] =>
    group.confidence === undefined ? [] : area.ellipse(group.confidence);
  const boxes = [
    ...scatterObstacles(spec.groups, spec.path, area),
    ...spec.groups
      .map(outlineOf)
      .filter((outline) => outline.length > 0)
      .map(extentOf),
  ];
  const levels = levelLabels(spec, area, boxes, frame);
  const names = placeLabels(groupLabelRequests(spec.groups, area, outlineOf), { frame, boxes }, levels);
  const named = [...levels, ...names.placed];
  const dates = placeLabels(pathLabelRequests(spec.path, area), { frame, boxes }, named).placed;
  const reference = placeLabels(referenceRequest(spec, area), { frame, boxes }, [...named, ...dates]);
  const legend = drawLegend(
    spec.groups.filter((group) => !names.placed.some((label) => label.request.group === group)),
    box.left,
    spec.height,
    box.right - box.left,
    reference.unplaced.map((request) => request.text),
    theme,
  );
  return figureRoot('vector-graph', spec.width, spec.height + legend.height, theme, [
    drawReferences(spec, area, theme),
    drawRays(spec, area, theme),
    drawBottomAxis(spec.x, area, theme),
    drawLeftAxis(spec.y, area, theme, 14),
    drawScatter(spec.groups, area, theme),
    drawConfidence(spec, area, theme),
    drawPath(spec.path, area, theme),
    ...[...levels, ...reference.placed].map((label) => drawNote(label, theme.inkSecond, theme)),
    ...dates.map((label) => drawNote(label, theme.ink, theme)),
    ...names.placed.map((label) => drawGroupLabel(label, label.request.group, label.request.outline, theme)),
    ...legend.nodes,
    spec.message === undefined
      ? undefined
      : drawMessage(spec.message, (box.left + box.right) / 2, (box.top + box.bottom) / 2, theme),
  ]);
};
