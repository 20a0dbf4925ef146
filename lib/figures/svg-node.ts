/** A drawing as a plain tree: SVG element names and attribute names as the standard spells them (`stroke-width`, `class`). */
export interface SvgNode {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string | number>>;
  readonly children: readonly SvgNode[];
  readonly text?: string;
}

type Attributes = Readonly<Record<string, string | number | undefined>>;

/** Two decimals: a hundredth of a pixel is finer than any printer, and files stay small and stable. */
export const roundPixel = (value: number): number => Math.round(value * 100) / 100 + 0;

const clean = (attributes: Attributes): Record<string, string | number> => {
  const kept: Record<string, string | number> = {};
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== undefined) kept[name] = typeof value === 'number' ? roundPixel(value) : value;
  }
  return kept;
};

/** An element; numbers are rounded to two decimals, undefined attributes and children are left out. */
export const svgNode = (
  name: string,
  attributes: Attributes = {},
  children: readonly (SvgNode | undefined)[] = [],
): SvgNode => ({
  name,
  attributes: clean(attributes),
  children: children.filter((child) => child !== undefined),
});

/** A text element. The text is data, never markup. */
export const svgText = (text: string, attributes: Attributes): SvgNode => ({
  name: 'text',
  attributes: clean(attributes),
  children: [],
  text,
});
