import { createFormatters } from '../../lib/core/formatters';
import { addDays, type IsoDate } from '../../lib/core/iso-date';
import { figures } from '../../lib/core/messages/en/figures';
import { buildChangeTerms } from '../../lib/figures/change-terms/spec';
import { drawChangeTerms } from '../../lib/figures/change-terms/draw';
import type { Ellipse } from '../../lib/figures/ellipse';
import { buildErrorBars } from '../../lib/figures/error-bars/spec';
import { drawErrorBars } from '../../lib/figures/error-bars/draw';
import type { FigureContext } from '../../lib/figures/figure-context';
import type { FigureTheme } from '../../lib/figures/figure-theme';
import { drawIndexChart } from '../../lib/figures/index-chart/draw';
import { buildIndexChart } from '../../lib/figures/index-chart/spec';
import { drawProgramIntervals } from '../../lib/figures/program-intervals/draw';
import { buildProgramIntervals } from '../../lib/figures/program-intervals/spec';
import type { ScatterPoint } from '../../lib/figures/scatter';
import type { SvgNode } from '../../lib/figures/svg-node';
import type { ConditionMark, TimeLanesData } from '../../lib/figures/time-lanes/data';
import { drawTimeLanes } from '../../lib/figures/time-lanes/draw';
import { buildTimeLanes } from '../../lib/figures/time-lanes/spec';
import { drawValueStrip } from '../../lib/figures/value-strip/draw';
import { buildValueStrip } from '../../lib/figures/value-strip/spec';
import { drawVectorGraph } from '../../lib/figures/vector-graph/draw';
import { buildVectorGraph, type VectorGroup } from '../../lib/figures/vector-graph/spec';
import { seededNormal, seededUniform } from './seeded';

const formatters = createFormatters('en-GB');
export const context: FigureContext = { formatters, words: figures(formatters) };

const PROGRAMS = ['Before surgery', 'Check-ups only', 'Kidney nutrition', 'Strength, 65 and over', 'Weight management'];

interface Cloud {
  readonly at: readonly [number, number];
  readonly spread: readonly [number, number];
  readonly correlation: number;
}

const cloud = (prefix: string, n: number, { at, spread, correlation }: Cloud, seed: number): ScatterPoint[] => {
  const normal = seededNormal(seed);
  return Array.from({ length: n }, (_, index) => {
    const first = normal();
    const second = correlation * first + Math.sqrt(1 - correlation ** 2) * normal();
    const x = at[0] + spread[0] * first;
    const y = at[1] + spread[1] * second;
    return { key: `${prefix}-${index}`, x, y, label: `${prefix}-${index}` };
  });
};

/** The ellipse of all points at squared distance `c` by a sample's own mean and covariance. */
export const ellipseOf = (points: readonly ScatterPoint[], c: number): Ellipse => {
  const n = points.length;
  const cx = points.reduce((sum, point) => sum + point.x, 0) / n;
  const cy = points.reduce((sum, point) => sum + point.y, 0) / n;
  const moment = (of: (point: ScatterPoint) => number): number =>
    points.reduce((sum, point) => sum + of(point), 0) / (n - 1);
  const xx = moment((point) => (point.x - cx) ** 2);
  const yy = moment((point) => (point.y - cy) ** 2);
  const xy = moment((point) => (point.x - cx) * (point.y - cy));
  const root = Math.hypot((xx - yy) / 2, xy);
  const angleDeg = (Math.atan2(2 * xy, xx - yy) / 2) * (180 / Math.PI);
  const middle = (xx + yy) / 2;
  return { cx, cy, a: Math.sqrt(c * (middle + root)), b: Math.sqrt(c * (middle - root)), angleDeg };
};

const VECTORS: readonly Cloud[] = [
  { at: [372, 33.5], spread: [40, 4.4], correlation: 0.55 },
  { at: [365, 35.5], spread: [38, 4.2], correlation: 0.5 },
  { at: [397, 31.1], spread: [44, 4.6], correlation: 0.45 },
  { at: [391, 32.7], spread: [41, 4.3], correlation: 0.5 },
  { at: [338, 33.8], spread: [36, 4.1], correlation: 0.6 },
];
const SIZES = [44, 58, 51, 62, 85];

export const vectorGroups: readonly VectorGroup[] = PROGRAMS.map((label, index) => {
  const points = cloud(`V${index}`, SIZES[index] ?? 40, VECTORS[index] ?? VECTORS[0]!, 100 + index);
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
  const points = cloud(`I${index}`, SIZES[index] ?? 40, INDICES[index] ?? INDICES[0]!, 200 + index).map((point) => ({
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

const day = (text: string): IsoDate => text as IsoDate;

export const lanesData: TimeLanesData = {
  visits: ['2025-03-04', '2025-04-15', '2025-05-27', '2025-07-08', '2025-08-19', '2025-09-09'].map((date, index) => ({
    id: `v${index}`,
    date: day(date),
    ...(index === 3 ? { breakBefore: 'other position' } : index === 4 ? { breakBefore: 'position as at first' } : {}),
  })),
  lanes: [
    { id: 'weight', title: 'Weight', unit: 'kg', digits: 1, values: [66.8, 67, 66.4, 66.2, 65.9, 65.7], lsc: 0.9 },
    {
      id: 'ffm',
      title: 'Fat-free mass',
      unit: 'kg',
      digits: 1,
      values: [45.6, 45.5, 44.7, 44.1, 43.6, 42.6],
      lsc: 1.7,
    },
    { id: 'phase', title: 'Phase angle', unit: 'deg', digits: 1, values: [5.1, 5.1, 5, 4.9, 4.8, 4.6], lsc: 0.4 },
  ].map(({ values, lsc, unit, ...lane }) => ({
    ...lane,
    unit: unit as 'kg' | 'deg',
    points: values.map((value, index) => ({
      key: `${lane.id}-${index}`,
      visitId: `v${index}`,
      value,
      state: index === 3 ? ('not-comparable' as const) : ('comparable' as const),
    })),
    baseline: values[0] ?? 0,
    leastSignificantChange: lsc,
  })),
  conditions: [
    { label: 'fasted', marks: ['met', 'met', 'met', 'met-by-procedure', 'met', 'met'] },
    { label: 'no exercise', marks: ['met', 'met', 'met-by-procedure', 'met', 'met', 'met'] },
    { label: 'bladder', marks: ['met', 'met', 'unknown', 'met', undefined, 'met'] },
    { label: 'rested', marks: ['met', 'met', 'not-met', 'met', 'met', 'met'] },
    { label: 'position', marks: ['A', 'A', 'A', 'B', 'A', 'A'].map((text) => ({ text })) },
  ],
};
export const timeLanes = buildTimeLanes(lanesData, context);

/** Forty visits over three years, some two days apart, three breaks, one lane held back for a while. */
export const manyVisits: TimeLanesData = (() => {
  const uniform = seededUniform(11);
  const normal = seededNormal(12);
  const dates: IsoDate[] = [];
  let date = day('2022-11-03');
  for (let index = 0; index < 40; index += 1) {
    dates.push(date);
    date = addDays(date, uniform() < 0.3 ? 2 : Math.round(14 + uniform() * 28));
  }
  const breaks: Record<number, string> = { 9: 'other device', 11: 'first device again', 26: 'other position' };
  const signs: readonly ConditionMark[] = ['met', 'met', 'met-by-procedure', 'not-met', 'unknown'];
  return {
    visits: dates.map((at, index) => {
      const breakBefore = breaks[index];
      return { id: `v${index}`, date: at, ...(breakBefore === undefined ? {} : { breakBefore }) };
    }),
    lanes: [
      { id: 'weight', title: 'Weight', start: 92, slope: -0.22, noise: 0.5, digits: 1, lsc: 0.9, unit: 'kg' as const },
      {
        id: 'ffm',
        title: 'Fat-free mass',
        start: 56,
        slope: -0.04,
        noise: 0.5,
        digits: 1,
        lsc: 1.7,
        unit: 'kg' as const,
      },
      {
        id: 'rh',
        title: 'Resistance / height',
        start: 318,
        slope: 0.4,
        noise: 4,
        digits: 0,
        lsc: 13,
        unit: 'Ohm/m' as const,
      },
      {
        id: 'phase',
        title: 'Phase angle',
        start: 5.6,
        slope: -0.01,
        noise: 0.1,
        digits: 1,
        lsc: 0.4,
        unit: 'deg' as const,
      },
    ].map(({ start, slope, noise, lsc, ...lane }) => ({
      ...lane,
      points: dates.map((_, index) => ({
        key: `${lane.id}-${index}`,
        visitId: `v${index}`,
        value: start + slope * index + noise * normal(),
        state:
          index === 9 || index === 10 || index >= 26
            ? ('not-comparable' as const)
            : lane.id === 'ffm' && index < 4 && index > 0
              ? ('held' as const)
              : ('comparable' as const),
      })),
      baseline: start,
      leastSignificantChange: lsc,
    })),
    conditions: [
      ...['fasted', 'no exercise', 'bladder emptied', 'rested'].map((label) => ({
        label,
        marks: dates.map(() => signs[Math.floor(uniform() ** 2 * signs.length)]),
      })),
      { label: 'position', marks: dates.map((_, index) => ({ text: index >= 26 ? 'B' : 'A' })) },
    ],
  };
})();
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
};
