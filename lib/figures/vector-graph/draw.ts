import { clipLine } from '../clip-line';
import { drawBottomAxis, drawLeftAxis } from '../draw-axes';
import { drawPath, drawScatter } from '../draw-scatter';
import { drawMessage, figureRoot } from '../figure-root';
import type { FigureTheme } from '../figure-theme';
import { drawGroupLabel } from '../group-labels';
import { groupStyle } from '../group-style';
import { drawLabel, labelBox } from '../label';
import { drawLegend } from '../legend';
import { drawNote } from '../draw-note';
import { polygonPath } from '../path-data';
import { plotArea, type PlotArea } from '../plot-area';
import { svgNode, type SvgNode } from '../svg-node';
import { placeVectorLabels } from './place-vector-labels';
import type { VectorGraphSpec } from './spec';

const MARGIN = { left: 52, right: 40, top: 46, bottom: 44 };

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

/** Draws the spec; names stand beside what they name, those without a free spot in rows beneath. */
export const drawVectorGraph = (spec: VectorGraphSpec, theme: FigureTheme): SvgNode => {
  const box = {
    left: MARGIN.left,
    top: MARGIN.top,
    right: spec.width - MARGIN.right,
    bottom: spec.height - MARGIN.bottom,
  };
  const area = plotArea(spec.x, spec.y, box);
  const labels = placeVectorLabels(spec, area);
  const { groups, notes } = labels.beneath;
  const legend = drawLegend(groups, box.left, spec.height, box.right - box.left, notes, theme);
  return figureRoot('vector-graph', spec.width, spec.height + legend.height, theme, [
    drawReferences(spec, area, theme),
    drawRays(spec, area, theme),
    drawBottomAxis(spec.x, area, theme),
    drawLeftAxis(spec.y, area, theme, 14),
    drawScatter(spec.groups, area, theme),
    drawConfidence(spec, area, theme),
    drawPath(spec.path, area, theme),
    ...labels.references.map((label) => drawNote(label, theme.inkSecond, theme)),
    ...labels.dates.map((label) => drawNote(label, theme.ink, theme)),
    ...labels.names.map((label) => drawGroupLabel(label, label.request.group, label.request.outline, theme)),
    ...legend.nodes,
    spec.message === undefined
      ? undefined
      : drawMessage(spec.message, (box.left + box.right) / 2, (box.top + box.bottom) / 2, theme),
  ]);
};
