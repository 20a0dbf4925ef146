import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sampleEllipse } from '../../lib/figures/ellipse';
import { lightTheme } from '../../lib/figures/figure-theme';
import { drawIndexChart } from '../../lib/figures/index-chart/draw';
import { drawVectorGraph } from '../../lib/figures/vector-graph/draw';
import { indexChart, vectorGraph } from './examples';
import { nodesOfClass, pathPixels } from './inspect';

const quadraticForm = (
  ellipse: { cx: number; cy: number; a: number; b: number; angleDeg: number },
  x: number,
  y: number,
) => {
  const angle = (ellipse.angleDeg * Math.PI) / 180;
  const dx = x - ellipse.cx;
  const dy = y - ellipse.cy;
  const along = dx * Math.cos(angle) + dy * Math.sin(angle);
  const across = dy * Math.cos(angle) - dx * Math.sin(angle);
  return (along / ellipse.a) ** 2 + (across / ellipse.b) ** 2;
};

/** From pixels back to data, by the two outermost ticks drawn on each axis. */
const invert = (figure: ReturnType<typeof drawIndexChart>, spec: typeof indexChart | typeof vectorGraph) => {
  const x = nodesOfClass(figure, 'axis-x')[0]?.children[0]?.attributes ?? {};
  const y = nodesOfClass(figure, 'axis-y')[0]?.children[0]?.attributes ?? {};
  const between = (share: number, [low, high]: readonly [number, number]): number => low + share * (high - low);
  return ([px, py]: readonly [number, number]): [number, number] => [
    between((px - Number(x.x1)) / (Number(x.x2) - Number(x.x1)), spec.x.domain),
    between((Number(y.y2) - py) / (Number(y.y2) - Number(y.y1)), spec.y.domain),
  ];
};

describe('an ellipse', () => {
  it('is sampled where its quadratic form is one', () => {
    const size = fc.double({ min: 0.1, max: 100, noNaN: true });
    const place = fc.double({ min: -500, max: 500, noNaN: true });
    fc.assert(
      fc.property(
        place,
        place,
        size,
        size,
        fc.double({ min: -180, max: 180, noNaN: true }),
        (cx, cy, a, b, angleDeg) => {
          const ellipse = { cx, cy, a, b, angleDeg };
          for (const [x, y] of sampleEllipse(ellipse)) expect(quadraticForm(ellipse, x, y)).toBeCloseTo(1, 6);
        },
      ),
      { seed: 5, numRuns: 100 },
    );
  });

  it('satisfies its quadratic form in data units when drawn under unequal scales', () => {
    const figure = drawVectorGraph(vectorGraph, lightTheme);
    const back = invert(figure, vectorGraph);
    const drawn = nodesOfClass(figure, 'reference');
    expect(drawn).toHaveLength(3);
    drawn.forEach((node, index) => {
      const ellipse = vectorGraph.references[index];
      expect(ellipse).toBeDefined();
      for (const pixel of pathPixels(String(node.attributes.d))) {
        const [x, y] = back(pixel);
        if (ellipse !== undefined) expect(quadraticForm(ellipse, x, y)).toBeCloseTo(1, 2);
      }
    });
  });
});

describe('the lines of the index chart', () => {
  const figure = drawIndexChart(indexChart, lightTheme);
  const back = invert(figure, indexChart);
  const along = ([from, to]: readonly (readonly [number, number])[]) =>
    from === undefined || to === undefined
      ? []
      : [0, 0.25, 0.5, 0.75, 1].map((t) => back([from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])]));

  it('of equal body mass index hold x + y constant', () => {
    const lines = nodesOfClass(figure, 'equal-bmi');
    expect(lines).toHaveLength(indexChart.bodyMassIndexLines.length);
    expect(lines.length).toBeGreaterThan(3);
    lines.forEach((line, index) => {
      const points = along(pathPixels(String(line.attributes.d)));
      expect(points).toHaveLength(5);
      for (const [x, y] of points)
        expect(Math.abs(x + y - (indexChart.bodyMassIndexLines[index]?.value ?? 0))).toBeLessThan(0.005);
    });
  });

  it('of equal fat fraction hold y / (x + y) constant', () => {
    const lines = nodesOfClass(figure, 'equal-fat');
    expect(lines).toHaveLength(indexChart.fatFractionLines.length);
    expect(lines.length).toBeGreaterThan(3);
    lines.forEach((line, index) => {
      for (const [x, y] of along(pathPixels(String(line.attributes.d))))
        expect(Math.abs(y / (x + y) - (indexChart.fatFractionLines[index]?.value ?? 0))).toBeLessThan(0.0005);
    });
  });

  it('stand at multiples of five', () => {
    for (const { value } of indexChart.bodyMassIndexLines) expect(value % 5).toBe(0);
  });
});

describe('the rays of the vector graph', () => {
  it('hold the phase angle they are labelled with', () => {
    const figure = drawVectorGraph(vectorGraph, lightTheme);
    const back = invert(figure, vectorGraph);
    const rays = nodesOfClass(figure, 'ray');
    expect(rays.length).toBeGreaterThan(4);
    for (const { attributes } of rays) {
      const [x, y] = back([Number(attributes.x2), Number(attributes.y2)]);
      const degrees = (Math.atan2(y, x) * 180) / Math.PI;
      expect(Math.abs(degrees - Math.round(degrees))).toBeLessThan(0.01);
    }
  });
});
