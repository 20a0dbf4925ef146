import type { Box } from '../../lib/figures/box';
import { labelBox } from '../../lib/figures/label';
import type { SvgNode } from '../../lib/figures/svg-node';

/** Every node of a drawing, parents before children. */
export const allNodes = (node: SvgNode): SvgNode[] => [node, ...node.children.flatMap(allNodes)];

export const nodesOfClass = (node: SvgNode, name: string): SvgNode[] =>
  allNodes(node).filter((candidate) =>
    String(candidate.attributes.class ?? '')
      .split(' ')
      .includes(name),
  );

/** The rectangle of every text of a drawing. */
export const textBoxes = (node: SvgNode): { text: string; box: Box }[] =>
  allNodes(node)
    .filter((candidate) => candidate.name === 'text')
    .map((candidate) => {
      const { x, y, ...rest } = candidate.attributes;
      const text = candidate.text ?? '';
      const box = labelBox({
        text,
        x: Number(x),
        y: Number(y),
        size: Number(rest['font-size']),
        weight: rest['font-weight'] === 600 ? 'strong' : 'regular',
        anchor: (rest['text-anchor'] ?? 'start') as 'start' | 'middle' | 'end',
      });
      return { text, box };
    });

/** All coordinates of path data made of absolute M, L and Z. */
export const pathPixels = (data: string): (readonly [number, number])[] =>
  [...data.matchAll(/(-?[\d.]+),(-?[\d.]+)/g)].map((match) => [Number(match[1]), Number(match[2])] as const);

/** The rectangle of a mark: circle, rectangle or path. */
export const markBox = ({ name, attributes }: SvgNode): Box => {
  if (name === 'circle') {
    const [x, y, r] = [Number(attributes.cx), Number(attributes.cy), Number(attributes.r)];
    return { left: x - r, right: x + r, top: y - r, bottom: y + r };
  }
  if (name === 'rect') {
    const [left, top] = [Number(attributes.x), Number(attributes.y)];
    return { left, top, right: left + Number(attributes.width), bottom: top + Number(attributes.height) };
  }
  const pixels = pathPixels(String(attributes.d));
  return {
    left: Math.min(...pixels.map(([x]) => x)),
    right: Math.max(...pixels.map(([x]) => x)),
    top: Math.min(...pixels.map(([, y]) => y)),
    bottom: Math.max(...pixels.map(([, y]) => y)),
  };
};
