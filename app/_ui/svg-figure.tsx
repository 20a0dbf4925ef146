'use client';

import { createElement, type ReactNode } from 'react';
import type { SvgNode } from '../../lib/figures/svg-node';

const isSpoken = (name: string): boolean => name.startsWith('data-') || name.startsWith('aria-');

const camelCase = (name: string): string => name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());

const propertyName = (name: string): string => {
  if (name === 'class') return 'className';
  if (name === 'tabindex') return 'tabIndex';
  return isSpoken(name) ? name : camelCase(name);
};

const properties = (attributes: SvgNode['attributes']): Record<string, string | number> =>
  Object.fromEntries(Object.entries(attributes).map(([name, value]) => [propertyName(name), value]));

/** A drawing's nodes as React elements. Text stays text: nothing is ever parsed as markup. */
export const svgElement = (node: SvgNode, key?: number): ReactNode =>
  createElement(
    node.name,
    { ...properties(node.attributes), ...(key === undefined ? {} : { key }) },
    node.text,
    ...node.children.map((child, index) => svgElement(child, index)),
  );

interface SvgFigureProps {
  readonly drawing: SvgNode;
  readonly className?: string | undefined;
  /** Text alternative; a decorative figure whose words stand beside it has none and is hidden. */
  readonly label?: string | undefined;
}

/** A drawing of the figure grammar on screen. */
export const SvgFigure = ({ drawing, className, label }: SvgFigureProps) => {
  const { width, height, ...attributes } = properties(drawing.attributes);
  return createElement(
    'svg',
    {
      viewBox: `0 0 ${width} ${height}`,
      ...attributes,
      className: [attributes.className, className].filter(Boolean).join(' '),
      ...(label === undefined ? { 'aria-hidden': true } : { role: 'group', 'aria-label': label }),
      width,
      height,
    },
    ...drawing.children.map((child, index) => svgElement(child, index)),
  );
};
