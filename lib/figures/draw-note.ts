import type { FigureTheme } from './figure-theme';
import { drawLabel } from './label';
import type { PlacedLabel } from './place-labels';
import { svgNode, type SvgNode } from './svg-node';

/** A placed label in one colour, with its leader line. */
export const drawNote = (label: PlacedLabel, fill: string, theme: FigureTheme): SvgNode =>
  svgNode('g', { class: 'note' }, [
    label.leader && svgNode('line', { ...label.leader, stroke: theme.inkSecond, 'stroke-width': 0.8 }),
    drawLabel({ ...label, fill, halo: theme.sheet }),
  ]);
