import { describe, expect, it } from 'vitest';
import type { IsoDate } from '../../lib/core/iso-date';
import { boxContains } from '../../lib/figures/box';
import { lightTheme } from '../../lib/figures/figure-theme';
import { drawIndexChart } from '../../lib/figures/index-chart/draw';
import { buildIndexChart } from '../../lib/figures/index-chart/spec';
import { drawProgramIntervals } from '../../lib/figures/program-intervals/draw';
import { buildProgramIntervals } from '../../lib/figures/program-intervals/spec';
import type { SvgNode } from '../../lib/figures/svg-node';
import { drawTimeLanes } from '../../lib/figures/time-lanes/draw';
import { timeLanesLayout } from '../../lib/figures/time-lanes/layout';
import { buildTimeLanes } from '../../lib/figures/time-lanes/spec';
import { drawVectorGraph } from '../../lib/figures/vector-graph/draw';
import { buildVectorGraph } from '../../lib/figures/vector-graph/spec';
import { context } from './examples';
import { allNodes, markBox, nodesOfClass } from './inspect';

const pointsOf = (pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([x, y], index) => ({ key: `k${index}`, x, y, label: `k${index}` }));

const group = (pairs: readonly (readonly [number, number])[]) => ({
  id: 'g',
  label: 'Group',
  shapeIndex: 5,
  n: pairs.length,
  points: pointsOf(pairs),
});

/** The rectangle between the two axis lines. */
const plotOf = (figure: SvgNode) => {
  const line = (name: string) => nodesOfClass(figure, name)[0]?.children[0]?.attributes ?? {};
  const x = line('axis-x');
  const y = line('axis-y');
  return { left: Number(x.x1), right: Number(x.x2), top: Number(y.y1), bottom: Number(y.y2) };
};

const clouds: Readonly<Record<string, readonly (readonly [number, number])[]>> = {
  'one point': [[350, 33]],
  'two equal points': [
    [350, 33],
    [350, 33],
  ],
  'one wild reading among plain ones': [
    [350, 33],
    [360, 34],
    [9_000, 2],
  ],
  'tiny and negative numbers': [
    [-3, -0.001],
    [1e-9, 1e-9],
  ],
  'very large numbers': [
    [1e12, 3e11],
    [2e12, 1e11],
  ],
};

describe.each(Object.entries(clouds))('with %s', (_name, pairs) => {
  it.each([
    ['the vector graph', drawVectorGraph(buildVectorGraph({ groups: [group(pairs)] }, context), lightTheme)],
    ['the index chart', drawIndexChart(buildIndexChart({ groups: [group(pairs)] }, context), lightTheme)],
  ])('%s keeps all marks within its axes', (_figure, figure) => {
    const marks = nodesOfClass(figure, 'mark');
    expect(marks).toHaveLength(pairs.length);
    for (const mark of marks) expect(boxContains(plotOf(figure), markBox(mark))).toBe(true);
  });
});

describe('values that are not numbers', () => {
  it('are left out of a scatter and counted', () => {
    const spec = buildVectorGraph(
      {
        groups: [
          group([
            [350, 33],
            [Number.NaN, 30],
            [340, Infinity],
          ]),
        ],
        references: [{ level: 0.5, cx: Number.NaN, cy: 1, a: 1, b: 1, angleDeg: 0 }],
      },
      context,
    );
    expect(spec.omitted).toBe(2);
    expect(spec.references).toEqual([]);
    for (const node of allNodes(drawVectorGraph(spec, lightTheme)))
      expect(JSON.stringify(node.attributes)).not.toMatch(/NaN|null/);
  });

  it('leave a program without an interval, never with a bare mean', () => {
    const spec = buildProgramIntervals(
      {
        title: 'Mean change',
        unit: 'kg',
        digits: 1,
        programs: [
          { id: 'a', label: 'A', shapeIndex: 0, nText: '1', estimate: { mean: 2, low: Number.NaN, high: Number.NaN } },
        ],
      },
      context,
    );
    const figure = drawProgramIntervals(spec, lightTheme);
    expect(nodesOfClass(figure, 'mark')).toEqual([]);
    expect(allNodes(figure).map((node) => node.text)).toContain('too few for an interval');
  });
});

describe('a confidence ellipse far wider than the people it is of', () => {
  it('is left out, so that the axes stay with the points', () => {
    const wide = { cx: 350, cy: 33, a: 5_000, b: 200, angleDeg: 3 };
    const points = [
      [340, 32],
      [350, 33],
      [361, 35],
    ] as const;
    const spec = buildVectorGraph({ groups: [{ ...group(points), confidence: wide }] }, context);
    expect(spec.groups[0]?.confidence).toBeUndefined();
    expect(spec.x.domain[1] - spec.x.domain[0]).toBeLessThan(300);
  });
});

describe('time lanes', () => {
  it.each([81, 5_000, -5_000])(
    'keep the band and every point of a lane inside the lane (second value %d)',
    (second) => {
      const day = '2025-01-01' as IsoDate;
      const spec = buildTimeLanes(
        {
          visits: [
            { id: 'a', date: day },
            { id: 'b', date: day },
          ],
          lanes: [
            {
              id: 'w',
              title: 'Weight',
              unit: 'kg',
              digits: 1,
              baseline: 80,
              leastSignificantChange: 400,
              points: [
                { key: '1', visitId: 'a', value: 80, state: 'comparable' },
                { key: '2', visitId: 'b', value: second, state: 'held' },
              ],
            },
          ],
        },
        context,
      );
      const figure = drawTimeLanes(spec, lightTheme);
      const { left, right, laneTop } = timeLanesLayout(spec);
      const lane = { left, right, top: laneTop(0), bottom: laneTop(0) + spec.laneHeight };
      for (const name of ['mark', 'band'])
        for (const node of nodesOfClass(figure, name)) expect(boxContains(lane, markBox(node)), name).toBe(true);
    },
  );
});
