import { describe, expect, it } from 'vitest';
import { drawAgreement } from '../../lib/figures/agreement/draw';
import { buildAgreement } from '../../lib/figures/agreement/spec';
import { boxContains, boxesOverlap } from '../../lib/figures/box';
import { drawControlChart } from '../../lib/figures/control-chart/draw';
import { buildControlChart } from '../../lib/figures/control-chart/spec';
import { drawErrorBars } from '../../lib/figures/error-bars/draw';
import { buildErrorBars } from '../../lib/figures/error-bars/spec';
import { lightTheme } from '../../lib/figures/figure-theme';
import { drawIndexChart } from '../../lib/figures/index-chart/draw';
import { buildIndexChart } from '../../lib/figures/index-chart/spec';
import type { SvgNode } from '../../lib/figures/svg-node';
import { drawTimeLanes } from '../../lib/figures/time-lanes/draw';
import { buildTimeLanes } from '../../lib/figures/time-lanes/spec';
import { drawVectorGraph } from '../../lib/figures/vector-graph/draw';
import { buildVectorGraph } from '../../lib/figures/vector-graph/spec';
import { cloud } from './example-cloud';
import { lanesData, manyVisits } from './example-lanes';
import { controlChartData } from './example-control-chart';
import { context, errorBarsMixed, indexGroups, vectorGroups } from './examples';
import { textBoxes } from './inspect';

const overlaps = (figure: SvgNode): string[] => {
  const texts = textBoxes(figure);
  return texts.flatMap((a, index) =>
    texts
      .slice(index + 1)
      .filter((b) => boxesOverlap(a.box, b.box))
      .map((b) => `${a.text} × ${b.text}`),
  );
};

const outside = (figure: SvgNode): string[] => {
  const frame = { left: 0, top: 0, right: Number(figure.attributes.width), bottom: Number(figure.attributes.height) };
  return textBoxes(figure)
    .filter(({ box }) => !boxContains(frame, box))
    .map(({ text }) => text);
};

const sizes = {
  'a slide': { width: 640, height: 360 },
  'a narrow window': { width: 360, height: 340 },
  'a wide page': { width: 1100, height: 620 },
};

describe.each(Object.entries(sizes))('on %s', (_name, size) => {
  const at = { ...context, ...size };
  it.each([
    ['the vector graph', drawVectorGraph(buildVectorGraph({ groups: vectorGroups }, at), lightTheme)],
    ['the index chart', drawIndexChart(buildIndexChart({ groups: indexGroups }, at), lightTheme)],
    ['six visits', drawTimeLanes(buildTimeLanes(lanesData, at), lightTheme)],
    [
      'forty visits',
      drawTimeLanes(buildTimeLanes(manyVisits, { ...at, width: Math.max(600, size.width) }), lightTheme),
    ],
  ])('labels of %s stay apart and inside', (_figure, figure) => {
    expect(overlaps(figure)).toEqual([]);
    expect(outside(figure)).toEqual([]);
  });
});

describe('on a telephone', () => {
  const at = { ...context, width: 310, height: 300 };
  const bars = { title: 'Least significant change', values: errorBarsMixed.bars };
  const points = cloud('A', 40, { at: [48, 1.2], spread: [8, 1.1], correlation: 0.2 }, 400);
  const difference = {
    unit: 'kg',
    digits: 1,
    meanTitle: 'Mean of fat-free mass in the week',
    differenceTitle: 'Second minus first',
    points: points.map(({ key, x, y }) => ({ key, label: key, first: x + y / 2, second: x - y / 2 })),
    agreement: { bias: 1.2, limits: [-0.96, 3.36] },
  } as const;
  it.each([
    ['the error of every value', drawErrorBars(buildErrorBars(bars, at), lightTheme)],
    ['the difference against the mean', drawAgreement(buildAgreement(difference, at), lightTheme)],
    ['the control chart', drawControlChart(buildControlChart(controlChartData, at), lightTheme)],
  ])('labels of %s stay apart and inside', (_figure, figure) => {
    expect(overlaps(figure)).toEqual([]);
    expect(outside(figure)).toEqual([]);
  });
});

describe('twelve groups of two thousand points', () => {
  it('are all named, beside their points or beneath', () => {
    const groups = Array.from({ length: 12 }, (_, index) => {
      const shape = { at: [350 + 4 * index, 33], spread: [40, 4], correlation: 0.5 } as const;
      const points = cloud(`g${index}`, 170, shape, 40 + index);
      return { id: `g${index}`, label: `Program ${index + 1}`, shapeIndex: index, n: points.length, points };
    });
    const figure = drawVectorGraph(buildVectorGraph({ groups }, context), lightTheme);
    const texts = textBoxes(figure).map(({ text }) => text);
    for (const { label } of groups) expect(texts).toContain(`${label} (170)`);
    expect(overlaps(figure)).toEqual([]);
    expect(outside(figure)).toEqual([]);
  });
});
