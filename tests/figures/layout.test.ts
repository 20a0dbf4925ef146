import { describe, expect, it } from 'vitest';
import { boxContains, boxesOverlap } from '../../lib/figures/box';
import { lightTheme } from '../../lib/figures/figure-theme';
import type { SvgNode } from '../../lib/figures/svg-node';
import { emptyExamples, fullExamples } from './examples';
import { allNodes, markBox, nodesOfClass, textBoxes } from './inspect';

const frameOf = (figure: SvgNode) => ({
  left: -0.01,
  top: -0.01,
  right: Number(figure.attributes.width) + 0.01,
  bottom: Number(figure.attributes.height) + 0.01,
});

describe.each(Object.entries(fullExamples))('%s', (_name, draw) => {
  const figure = draw(lightTheme);
  const texts = textBoxes(figure);

  it('keeps every label inside its frame', () => {
    for (const { text, box } of texts) expect(boxContains(frameOf(figure), box), text).toBe(true);
  });

  it('lays no label on another', () => {
    const pairs = texts.flatMap((a, index) => texts.slice(index + 1).map((b) => [a, b] as const));
    const met = pairs.filter(([a, b]) => boxesOverlap(a.box, b.box)).map(([a, b]) => `${a.text} × ${b.text}`);
    expect(met).toEqual([]);
  });

  it('lays no label on a mark', () => {
    const marks = nodesOfClass(figure, 'mark').map(markBox);
    expect(marks.length).toBeGreaterThan(0);
    const met = texts.filter(({ box }) => marks.some((mark) => boxesOverlap(mark, box))).map(({ text }) => text);
    expect(met).toEqual([]);
  });

  it('keeps every mark inside its frame', () => {
    for (const mark of nodesOfClass(figure, 'mark')) expect(boxContains(frameOf(figure), markBox(mark))).toBe(true);
  });
});

describe('a figure without data', () => {
  it.each(Object.entries(emptyExamples))(
    '%s says so, or stays an empty band, and holds no broken number',
    (name, draw) => {
      const figure = draw(lightTheme);
      for (const node of allNodes(figure)) {
        for (const value of Object.values(node.attributes)) expect(String(value)).not.toMatch(/NaN|Infinity|undefined/);
      }
      expect(nodesOfClass(figure, 'mark')).toEqual([]);
      if (name !== 'value-strip')
        expect(textBoxes(figure).map(({ text }) => text)).toContain('Nothing to draw: no value fits the filters.');
    },
  );
});

describe('every drawing', () => {
  it('holds no style attribute, so that a strict content policy lets it be', () => {
    for (const draw of Object.values(fullExamples)) {
      for (const node of allNodes(draw(lightTheme))) expect(Object.keys(node.attributes)).not.toContain('style');
    }
  });
});
