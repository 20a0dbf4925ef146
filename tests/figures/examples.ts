import { createFormatters } from '../../lib/core/formatters';
import { addDays } from '../../lib/core/iso-date';
import { figures } from '../../lib/core/messages/en/figures';
import { drawAgreement } from '../../lib/figures/agreement/draw';
import { buildAgreement } from '../../lib/figures/agreement/spec';
import { buildChangeTerms } from '../../lib/figures/change-terms/spec';
import { drawChangeTerms } from '../../lib/figures/change-terms/draw';
import { drawControlChart } from '../../lib/figures/control-chart/draw';
import { buildControlChart } from '../../lib/figures/control-chart/spec';
import { drawDifferenceSpread } from '../../lib/figures/difference-spread/draw';
import { buildDifferenceSpread } from '../../lib/figures/difference-spread/spec';
import { buildErrorBars } from '../../lib/figures/error-bars/spec';
import { drawErrorBars } from '../../lib/figures/error-bars/draw';
import type { FigureContext } from '../../lib/figures/figure-context';
import type { FigureTheme } from '../../lib/figures/figure-theme';
import { drawIndexChart } from '../../lib/figures/index-chart/draw';
import { buildIndexChart } from '../../lib/figures/index-chart/spec';
import { drawProgramIntervals } from '../../lib/figures/program-intervals/draw';
import { buildProgramIntervals } from '../../lib/figures/program-intervals/spec';
import { drawShareBars } from '../../lib/figures/share-bars/draw';
import { buildShareBars } from '../../lib/figures/share-bars/spec';
import type { SvgNode } from '../../lib/figures/svg-node';
import { drawTimeLanes } from '../../lib/figures/time-lanes/draw';
import { buildTimeLanes } from '../../lib/figures/time-lanes/spec';
import { drawValueStrip } from '../../lib/figures/value-strip/draw';
import { buildValueStrip } from '../../lib/figures/value-strip/spec';
import { drawVectorGraph } from '../../lib/figures/vector-graph/draw';
import { buildVectorGraph, type VectorGroup } from '../../lib/figures/vector-graph/spec';
import { controlChartData, emptyControlChartData } from './example-control-chart';
import { cloud, ellipseOf, type Cloud } from './example-cloud';
import { day, lanesData, manyVisits } from './example-lanes';
import { shareBarsData } from './example-share-bars';

const formatters = createFormatters('en-GB');
export const context: FigureContext = { formatters, words: figures(formatters) };

const PROGRAMS = ['Before surgery', 'Check-ups only', 'Kidney nutrition', 'Strength, 65 and over', 'Weight management'];

const PLAIN: Cloud = { at: [0, 0], spread: [1, 1], correlation: 0 };

const VECTORS: readonly Cloud[] = [
  { at: [372, 33.5], spread: [40, 4.4], correlation: 0.55 },
  { at: [365, 35.5], spread: [38, 4.2], correlation: 0.5 },
  { at: [397, 31.1], spread: [44, 4.6], correlation: 0.45 },
  { at: [391, 32.7], spread: [41, 4.3], correlation: 0.5 },
  { at: [338, 33.8], spread: [36, 4.1], correlation: 0.6 },
];
const SIZES = [44, 58, 51, 62, 85];

export const vectorGroups: readonly VectorGroup[] = PROGRAMS.map((label, index) => {
  const points = cloud(`V${index}`, SIZES[index] ?? 40, VECTORS[index] ?? PLAIN, 100 + index);
  const whole = ellipseOf(points, 1);
  return {
    id: `p${index}`,
    label,
    shapeIndex: index,
    n: points.length,
    points,
    mean: { x: whole.cx, y: whole.cy },
    confidence: ellipseOf(points, 6.2 / points.length),
  };
});

const baseline = cloud('B', 260, { at: [371, 35.1], spread: [42, 4.6], correlation: 0.5 }, 7);

export const vectorGraph = buildVectorGraph(
  {
    groups: vectorGroups,
    referenceLabel: 'this clinic’s own baseline, women, n = 260',
    references: [0.5, 0.75, 0.95].map((level) => ({ level, ...ellipseOf(baseline, -2 * Math.log(1 - level)) })),
  },
  context,
);

const pathDates = ['4 Mar 2025', '15 Apr 2025', '27 May 2025', '8 Jul 2025', '19 Aug 2025', '9 Sep 2025'];
const pathOf = (values: readonly (readonly [number, number])[]) =>
  values.map(([x, y], index) => ({
    key: `path-${index}`,
    x,
    y,
    label: `visit ${index + 1}`,
    dateLabel: pathDates[index] ?? '',
    comparable: index !== 3,
    joined: index > 0 && index !== 3 && index !== 4,
  }));

export const clientVectors = buildVectorGraph(
  {
    groups: [],
    referenceLabel: 'this clinic’s own baseline, women, n = 260',
    references: [0.5, 0.75, 0.95].map((level) => ({ level, ...ellipseOf(baseline, -2 * Math.log(1 - level)) })),
    path: pathOf([
      [372, 33.4],
      [374, 33.5],
      [381, 33],
      [398, 33.9],
      [394, 32.1],
      [404, 31.9],
    ]),
  },
  { ...context, width: 480, height: 400 },
);

const INDICES: readonly Cloud[] = [
  { at: [17.2, 9.5], spread: [1.7, 2.6], correlation: 0.3 },
  { at: [17.6, 8.4], spread: [1.6, 2.4], correlation: 0.3 },
  { at: [16.4, 8.1], spread: [1.5, 2.7], correlation: 0.35 },
  { at: [16.1, 9], spread: [1.4, 2.2], correlation: 0.25 },
  { at: [18.9, 13.6], spread: [1.7, 2.7], correlation: 0.45 },
];

export const indexGroups = PROGRAMS.map((label, index) => {
  const points = cloud(`I${index}`, SIZES[index] ?? 40, INDICES[index] ?? PLAIN, 200 + index).map((point) => ({
    ...point,
    y: Math.max(1.2, point.y),
  }));
  const whole = ellipseOf(points, 1);
  return { id: `p${index}`, label, shapeIndex: index, n: points.length, points, mean: { x: whole.cx, y: whole.cy } };
});

export const indexChart = buildIndexChart({ groups: indexGroups }, context);

export const clientIndices = buildIndexChart(
  {
    groups: [],
    path: pathOf([
      [17.9, 8.8],
      [17.8, 8.9],
      [17.5, 9.1],
      [17.2, 9.3],
      [17.0, 9.5],
      [16.7, 9.6],
    ]),
  },
  { ...context, width: 480, height: 400 },
);

export const timeLanes = buildTimeLanes(lanesData, context);

export const timeLanesMany = buildTimeLanes(manyVisits, context);

export const changeTerms = buildChangeTerms(
  {
    title: 'Fat-free mass',
    unit: 'kg',
    digits: 1,
    terms: [
      { id: 'weight', label: 'weight', value: -0.25 },
      { id: 'resistance', label: 'resistance', value: -2.59 },
      { id: 'reactance', label: 'reactance', value: -0.21 },
      { id: 'height', label: 'height', value: 0 },
      { id: 'age', label: 'age', value: 0.05 },
    ],
    change: -3,
  },
  context,
);

export const programIntervals = buildProgramIntervals(
  {
    title: 'Mean change in fat-free mass',
    unit: 'kg',
    digits: 2,
    programs: [
      { mean: 0.75, low: 0.47, high: 1.03, n: '44 of 62 seen' },
      { mean: -0.1, low: -0.27, high: 0.07, n: '58 of 69 seen' },
      { mean: -0.3, low: -0.74, high: 0.14, n: '51 of 83 seen' },
      { mean: 1, low: 0.66, high: 1.34, n: '53 of 101 seen' },
      { mean: -1.2, low: -1.55, high: -0.85, n: '66 of 104 seen' },
    ].map(({ n, ...estimate }, index) => ({
      id: `p${index}`,
      label: PROGRAMS[index] ?? '',
      shapeIndex: index,
      nText: n,
      estimate,
      leastSignificantChange: 1.7,
    })),
  },
  context,
);

export const programIntervalsFew = buildProgramIntervals(
  {
    title: 'Mean change in weight',
    unit: 'kg',
    digits: 1,
    programs: [
      {
        id: 'a',
        label: 'Recovery of strength after a long stay in hospital, second group',
        shapeIndex: 7,
        nText: '24 of 30 seen',
        estimate: { mean: 2.2, low: 1.1, high: 3.3 },
        leastSignificantChange: 0.9,
      },
      { id: 'b', label: 'Winter group', shapeIndex: 8, nText: '1 of 4 seen' },
    ],
  },
  { ...context, width: 520 },
);

const stripPoints = [46.1, 45.6, 45.5, 44.8, 44.0, 42.6].map((value, index) => ({
  key: `s${index}`,
  date: addDays(day('2025-03-04'), index * 30),
  value,
  state: index === 3 ? ('not-comparable' as const) : ('comparable' as const),
}));
export const valueStrip = buildValueStrip(
  { title: 'Fat-free mass', unit: 'kg', digits: 1, points: stripPoints, baseline: 45.6, leastSignificantChange: 1.7 },
  context,
);

export const errorBarsMixed = buildErrorBars(
  {
    title: 'Least significant change',
    values: [
      {
        id: 'w',
        label: 'Weight',
        unit: 'kg',
        digits: 1,
        estimate: 0.9,
        low: 0.7,
        high: 1.2,
        note: 'own between-day, 35 df',
      },
      {
        id: 'f',
        label: 'Fat-free mass',
        unit: 'kg',
        digits: 1,
        estimate: 1.7,
        low: 1.4,
        high: 2.3,
        note: 'own between-day, 35 df',
      },
      {
        id: 'r',
        label: 'Resistance / height',
        unit: 'Ohm/m',
        digits: 0,
        estimate: 13,
        low: 10,
        high: 17,
        note: 'own between-day, 35 df',
      },
      {
        id: 'p',
        label: 'Phase angle',
        unit: 'deg',
        digits: 2,
        estimate: 0.4,
        low: 0.28,
        high: 0.68,
        note: 'own between-day, 12 df, provisional',
      },
    ],
  },
  context,
);
export const errorBarsKilograms = buildErrorBars(
  {
    title: 'Least significant change',
    values: errorBarsMixed.bars.slice(0, 2).map(({ id, label, unit, digits, estimate, low, high, note }) => ({
      id,
      label,
      unit,
      digits,
      estimate,
      low,
      high,
      note,
    })),
  },
  context,
);

const pairs = cloud('A', 60, { at: [48, 1.2], spread: [8, 1.1], correlation: 0.2 }, 400);
export const agreement = buildAgreement(
  {
    unit: 'kg',
    digits: 1,
    meanTitle: 'Mean of exported and computed fat-free mass',
    differenceTitle: 'Exported minus computed fat-free mass',
    points: pairs.map(({ key, x, y }) => ({ key, label: key, first: x + y / 2, second: x - y / 2 })),
    agreement: { bias: 1.2, limits: [-0.96, 3.36] },
  },
  context,
);

/** Limits and bias lie closer together than their names are high. */
export const agreementClose = buildAgreement(
  {
    unit: 'kg',
    digits: 1,
    meanTitle: 'Mean',
    differenceTitle: 'Exported minus computed',
    points: [
      { key: 'a', label: 'a', first: 60, second: 40 },
      { key: 'b', label: 'b', first: 50, second: 50.1 },
      { key: 'c', label: 'c', first: 45, second: 45 },
    ],
    agreement: { bias: 0, limits: [-0.2, 0.2] },
  },
  { ...context, width: 520, height: 300 },
);

export const differenceSpread = buildDifferenceSpread(
  {
    title: 'Difference from Kyle 2001 in fat-free mass',
    unit: 'kg',
    digits: 1,
    rows: ['Deurenberg 1991', 'Rush (Asian Indian adults)', 'The clinic’s own, second version'].map((label, index) => {
      const differences = cloud(
        `D${index}`,
        120,
        { at: [index * 2 - 2, 0], spread: [1.4, 1], correlation: 0 },
        500 + index,
      )
        .map(({ x }) => x)
        .sort((a, b) => a - b);
      const part = (share: number): number => differences[Math.round(share * 119)] ?? 0;
      return {
        id: `e${index}`,
        label,
        nText: `${120 - index} people, ${index * 30} outside the group`,
        differences,
        quantiles: { p5: part(0.05), p25: part(0.25), p50: part(0.5), p75: part(0.75), p95: part(0.95) },
      };
    }),
  },
  context,
);

export const emptyAgreement = buildAgreement(
  { unit: 'kg', digits: 1, meanTitle: 'Mean', differenceTitle: 'Difference', points: [] },
  context,
);
export const emptyDifferenceSpread = buildDifferenceSpread(
  { title: 'Difference', unit: 'kg', digits: 1, rows: [] },
  context,
);

export const emptyVectorGraph = buildVectorGraph({ groups: [] }, context);
export const emptyIndexChart = buildIndexChart({ groups: [] }, context);
export const emptyTimeLanes = buildTimeLanes({ visits: [], lanes: [] }, context);
export const emptyChangeTerms = buildChangeTerms(
  { title: 'Fat-free mass', unit: 'kg', digits: 1, terms: [], change: 0 },
  context,
);
export const emptyProgramIntervals = buildProgramIntervals(
  { title: 'Mean change', unit: 'kg', digits: 1, programs: [] },
  context,
);
export const emptyValueStrip = buildValueStrip({ title: 'Fat-free mass', unit: 'kg', digits: 1, points: [] }, context);
export const emptyErrorBars = buildErrorBars({ title: 'Least significant change', values: [] }, context);

type Draw = (theme: FigureTheme) => SvgNode;

export const shareBars = buildShareBars(shareBarsData, context);
export const shareBarsNarrow = buildShareBars(shareBarsData, { ...context, width: 310 });
export const emptyShareBars = buildShareBars({ ...shareBarsData, rows: [] }, context);

/** Every figure with realistic data. */
export const fullExamples: Readonly<Record<string, Draw>> = {
  'vector-graph': (theme) => drawVectorGraph(vectorGraph, theme),
  'vector-graph-client': (theme) => drawVectorGraph(clientVectors, theme),
  'index-chart': (theme) => drawIndexChart(indexChart, theme),
  'index-chart-client': (theme) => drawIndexChart(clientIndices, theme),
  'time-lanes': (theme) => drawTimeLanes(timeLanes, theme),
  'time-lanes-many': (theme) => drawTimeLanes(timeLanesMany, theme),
  'change-terms': (theme) => drawChangeTerms(changeTerms, theme),
  'program-intervals': (theme) => drawProgramIntervals(programIntervals, theme),
  'program-intervals-few': (theme) => drawProgramIntervals(programIntervalsFew, theme),
  'value-strip': (theme) => drawValueStrip(valueStrip, theme),
  'error-bars': (theme) => drawErrorBars(errorBarsMixed, theme),
  'error-bars-kilograms': (theme) => drawErrorBars(errorBarsKilograms, theme),
  agreement: (theme) => drawAgreement(agreement, theme),
  'control-chart': (theme) => drawControlChart(buildControlChart(controlChartData, context), theme),
  'agreement-close': (theme) => drawAgreement(agreementClose, theme),
  'difference-spread': (theme) => drawDifferenceSpread(differenceSpread, theme),
  'share-bars': (theme) => drawShareBars(shareBars, theme),
  'share-bars-narrow': (theme) => drawShareBars(shareBarsNarrow, theme),
};

/** Every figure without data. */
export const emptyExamples: Readonly<Record<string, Draw>> = {
  'vector-graph': (theme) => drawVectorGraph(emptyVectorGraph, theme),
  'index-chart': (theme) => drawIndexChart(emptyIndexChart, theme),
  'time-lanes': (theme) => drawTimeLanes(emptyTimeLanes, theme),
  'change-terms': (theme) => drawChangeTerms(emptyChangeTerms, theme),
  'program-intervals': (theme) => drawProgramIntervals(emptyProgramIntervals, theme),
  'value-strip': (theme) => drawValueStrip(emptyValueStrip, theme),
  'error-bars': (theme) => drawErrorBars(emptyErrorBars, theme),
  agreement: (theme) => drawAgreement(emptyAgreement, theme),
  'control-chart': (theme) => drawControlChart(buildControlChart(emptyControlChartData, context), theme),
  'difference-spread': (theme) => drawDifferenceSpread(emptyDifferenceSpread, theme),
  'share-bars': (theme) => drawShareBars(emptyShareBars, theme),
};
