import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxContains, boxesOverlap, segmentMeetsBox, squareAround } from '../../lib/figures/box';
import { dodge } from '../../lib/figures/dodge';
import { groupStyle } from '../../lib/figures/group-style';
import { darkTheme, lightTheme, printTheme } from '../../lib/figures/figure-theme';
import { placeLabels, type LabelRequest } from '../../lib/figures/place-labels';
import { textWidth } from '../../lib/figures/text-width';
import { thinLabels } from '../../lib/figures/thin-labels';
import { fitText, wrapText } from '../../lib/figures/wrap-text';

const frame = { left: 0, top: 0, right: 600, bottom: 400 };
const pixel = fc.record({ x: fc.integer({ min: 0, max: 600 }), y: fc.integer({ min: 0, max: 400 }) });
const request = ({ x, y }: { x: number; y: number }, index: number): LabelRequest => ({
  text: `Program ${index} (42)`,
  anchorX: x,
  anchorY: y,
  clearance: 8,
  reach: 300,
  size: 13,
  weight: 'strong',
});

describe('placed labels', () => {
  it('touch no mark, no other label, no leader line, and stay inside, wherever the points lie', () => {
    fc.assert(
      fc.property(
        fc.array(pixel, { maxLength: 60 }),
        fc.array(pixel, { minLength: 1, maxLength: 8 }),
        (points, anchors) => {
          const boxes = points.map(({ x, y }) => squareAround(x, y, 5));
          const requests = anchors.map(request);
          const { placed, unplaced } = placeLabels(requests, { frame, boxes });
          expect(placed.length + unplaced.length).toBe(requests.length);
          placed.forEach((label, index) => {
            expect(boxContains(frame, label.box)).toBe(true);
            expect(boxes.some((box) => boxesOverlap(box, label.box))).toBe(false);
            for (const other of placed.filter((_, at) => at !== index)) {
              expect(boxesOverlap(other.box, label.box)).toBe(false);
              const line = other.leader;
              if (line !== undefined)
                expect(segmentMeetsBox(line.x1, line.y1, line.x2, line.y2, label.box)).toBe(false);
            }
          });
        },
      ),
      { seed: 3, numRuns: 60 },
    );
  });
  it('are given back unplaced where there is no room, not drawn over something', () => {
    const { placed, unplaced } = placeLabels([request({ x: 300, y: 200 }, 1)], { frame, boxes: [frame] });
    expect(placed).toEqual([]);
    expect(unplaced).toHaveLength(1);
  });
});

describe('columns moved apart', () => {
  it('keep their order, their gap where there is room, and their range', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 600 }), { maxLength: 45 }), (numbers) => {
        const sorted = [...numbers].sort((a, b) => a - b);
        const moved = dodge(sorted, 15, 0, 600);
        const gap = (sorted.length - 1) * 15 > 600 ? 600 / (sorted.length - 1) : 15;
        moved.forEach((x, index) => {
          expect(x).toBeGreaterThanOrEqual(-1e-9);
          expect(x).toBeLessThanOrEqual(600 + 1e-9);
          const next = moved[index + 1];
          if (next !== undefined) expect(next - x).toBeGreaterThanOrEqual(gap - 1e-9);
        });
      }),
      { seed: 4, numRuns: 200 },
    );
  });
  it('stay where they are when they do not touch', () => {
    expect(dodge([10, 50, 90], 15, 0, 100)).toEqual([10, 50, 90]);
  });
});

describe('thinned labels', () => {
  it('keep the first and the last and drop what would touch', () => {
    const at = (x: number) => ({ text: '14 Mar', x });
    expect(thinLabels([0, 10, 60, 65, 120].map(at))).toEqual([true, false, true, false, true]);
    expect(thinLabels([])).toEqual([]);
  });
});

describe('text', () => {
  it('wraps into lines that fit and loses no word', () => {
    fc.assert(
      fc.property(fc.lorem({ maxCount: 30 }), fc.integer({ min: 80, max: 400 }), (text, width) => {
        const lines = wrapText(text, width, 13);
        for (const line of lines) expect(textWidth(line, 13)).toBeLessThanOrEqual(width);
        expect(lines.join(' ')).toBe(text);
      }),
      { seed: 6, numRuns: 100 },
    );
  });
  it('breaks a word that is wider than a line', () => {
    const lines = wrapText('x'.repeat(100), 60, 12);
    expect(lines.join('')).toBe('x'.repeat(100));
    for (const line of lines) expect(textWidth(line, 12)).toBeLessThanOrEqual(60);
  });
  it('is cut with an ellipsis where only one line is allowed', () => {
    expect(fitText('short', 100, 12)).toBe('short');
    expect(fitText('a very long name of a program', 80, 12)).toMatch(/^a very.*…$/);
  });
});

describe('the style of groups', () => {
  it.each([lightTheme, darkTheme, printTheme])('tells 24 groups apart without relying on hue', (theme) => {
    const styles = Array.from({ length: 24 }, (_, index) => groupStyle(index, theme));
    expect(new Set(styles.map(({ shape, dash }) => `${shape} ${dash ?? 'solid'}`)).size).toBe(24);
    expect(new Set(styles.map(({ shape, sign }) => `${shape} ${sign}`)).size).toBe(24);
  });
});

const luminance = (hex: string): number => {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const contrast = (a: string, b: string): number => {
  const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light + 0.05) / (dark + 0.05);
};

describe('the colours of files', () => {
  // WCAG 2.2: 4.5:1 for text (1.4.3), 3:1 for graphical objects (1.4.11).
  it.each([lightTheme, darkTheme, printTheme])('have the contrast WCAG 2.2 AA asks for', (theme) => {
    for (const text of [theme.ink, theme.inkSecond, ...theme.groups])
      expect(contrast(text, theme.sheet)).toBeGreaterThanOrEqual(4.5);
    for (const mark of [theme.ink, theme.inkSecond, ...theme.groups])
      expect(contrast(mark, theme.band)).toBeGreaterThanOrEqual(3);
  });
});
