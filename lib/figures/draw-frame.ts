import type { FigureFrame } from './figure-frame';
import type { FigureTheme } from './figure-theme';
import { svgNode, svgText, type SvgNode } from './svg-node';
import { wrapText } from './wrap-text';

const MARGIN = 24;

interface Paragraph {
  readonly size: number;
  readonly leading: number;
  readonly fill: string;
  readonly face: string;
  readonly strong: boolean;
  /** The serif is wider than the face the widths were measured for. */
  readonly stretch: number;
}

const paragraph = (
  text: string,
  top: number,
  width: number,
  style: Paragraph,
): { nodes: SvgNode[]; bottom: number } => {
  const lines = wrapText(text, width / style.stretch, style.size, style.strong ? 'strong' : 'regular');
  const nodes = lines.map((line, index) =>
    svgText(line, {
      x: MARGIN,
      y: top + style.size + index * style.leading,
      'font-size': style.size,
      'font-family': style.face,
      'font-weight': style.strong ? 600 : undefined,
      fill: style.fill,
    }),
  );
  return { nodes, bottom: top + lines.length * style.leading };
};

/** The figure with its title and subtitle above and its caption below, on its own sheet: what an exported file holds. */
export const drawFramed = (figure: SvgNode, frame: FigureFrame, theme: FigureTheme): SvgNode => {
  const figureWidth = Number(figure.attributes.width);
  const figureHeight = Number(figure.attributes.height);
  const width = Math.max(figureWidth, 360) + 2 * MARGIN;
  const textual = { fill: theme.inkSecond, face: theme.sans, strong: false, stretch: 1 };
  const title = paragraph(frame.title, MARGIN, width - 2 * MARGIN, {
    size: 20,
    leading: 26,
    fill: theme.ink,
    face: theme.serif,
    strong: true,
    stretch: 1.12,
  });
  const subtitle = paragraph(frame.subtitle, title.bottom + 4, width - 2 * MARGIN, {
    ...textual,
    size: 13,
    leading: 18,
  });
  const figureTop = subtitle.bottom + 12;
  const caption = paragraph(frame.caption, figureTop + figureHeight + 10, width - 2 * MARGIN, {
    ...textual,
    size: 12,
    leading: 17,
  });
  const height = Math.ceil(caption.bottom + MARGIN);
  return svgNode('svg', { ...figure.attributes, viewBox: `0 0 ${width} ${height}`, width, height }, [
    svgNode('rect', { x: 0, y: 0, width, height, fill: theme.sheet }),
    ...title.nodes,
    ...subtitle.nodes,
    svgNode('g', { transform: `translate(${MARGIN} ${figureTop})` }, figure.children),
    ...caption.nodes,
  ]);
};
