import { range } from 'd3';
import type { FigureContext } from '../figure-context';
import { buildLinearAxis, type LinearAxis } from '../linear-axis';
import { isFinitePoint, scatterPointKeys, type Captioned, type PathPoint, type ScatterGroup } from '../scatter';

export interface IndexChartData {
  /** x = FFMI, y = FMI, both kg/m². */
  readonly groups: readonly ScatterGroup[];
  readonly path?: readonly PathPoint[];
  /** Multiples of five inside the domain where not given. */
  readonly bodyMassIndexLines?: readonly number[];
}

export interface IndexLine {
  /** kg/m² for body mass index; a fraction 0–1 for fat. */
  readonly value: number;
  readonly label: string;
}

/** FFMI against FMI with lines of equal body mass index (x + y) and of equal fat fraction (y = x·f/(1−f)). */
export interface IndexChartSpec {
  readonly kind: 'index-chart';
  readonly width: number;
  readonly height: number;
  readonly x: LinearAxis;
  readonly y: LinearAxis;
  readonly groups: readonly Captioned<ScatterGroup>[];
  readonly bodyMassIndexLines: readonly IndexLine[];
  readonly fatFractionLines: readonly IndexLine[];
  readonly path: readonly PathPoint[];
  /** Points left out because a coordinate is not a number. */
  readonly omitted: number;
  readonly message?: string;
}

const FAT_FRACTIONS = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6];

/** FMI on the line of equal fat fraction: FM/(FM + FFM) = f. */
export const fatMassIndexAt = (fraction: number, fatFreeMassIndex: number): number =>
  (fatFreeMassIndex * fraction) / (1 - fraction);

const multiplesBetween = (low: number, high: number): number[] => {
  const step = high - low > 50 ? 10 * Math.ceil((high - low) / 100) : 5;
  return range(Math.ceil(low / step) * step, high + 1e-9, step).filter((value) => value > 0);
};

/** Chooses axes that hold every point and the lines that cross them. */
export const buildIndexChart = (data: IndexChartData, context: FigureContext): IndexChartSpec => {
  const { formatters, words } = context;
  const points = [...data.groups.flatMap((group) => group.points), ...(data.path ?? [])];
  const groups = data.groups.map((group): Captioned<ScatterGroup> => {
    const { mean, ...rest } = group;
    return {
      ...rest,
      points: group.points.filter(isFinitePoint),
      caption: words.group({ label: group.label, n: group.n }),
      ...(mean !== undefined && isFinitePoint(mean) ? { mean } : {}),
    };
  });
  const held = [...points.filter(isFinitePoint), ...groups.flatMap((group) => group.mean ?? [])];
  const axis = { unit: 'kg/m2', formatters, floor: 0 } as const;
  const x = buildLinearAxis({
    ...axis,
    title: words.fatFreeMassIndex,
    values: held.map((point) => point.x),
    fallback: [12, 24],
    minimumSpan: 6,
  });
  const y = buildLinearAxis({
    ...axis,
    title: words.fatMassIndex,
    values: held.map((point) => point.y),
    fallback: [0, 16],
    minimumSpan: 10,
  });
  const sums = [x.domain[0] + y.domain[0], x.domain[1] + y.domain[1]] as const;
  return {
    kind: 'index-chart',
    width: context.width ?? 720,
    height: context.height ?? 540,
    x,
    y,
    groups,
    bodyMassIndexLines: (data.bodyMassIndexLines ?? multiplesBetween(...sums))
      .filter((value) => value > sums[0] && value < sums[1])
      .map((value) => ({ value, label: words.bodyMassIndexLine({ value }) })),
    fatFractionLines: FAT_FRACTIONS.filter(
      (value) => fatMassIndexAt(value, x.domain[1]) > y.domain[0] && fatMassIndexAt(value, x.domain[0]) < y.domain[1],
    ).map((value) => ({ value, label: words.fatLine({ share: value }) })),
    path: (data.path ?? []).filter(isFinitePoint),
    omitted: points.filter((point) => !isFinitePoint(point)).length,
    ...(held.length === 0 ? { message: words.nothingToDraw } : {}),
  };
};

/** Keys of the points in reading order, for arrow keys. */
export const indexChartPointKeys = (spec: IndexChartSpec): string[] => scatterPointKeys(spec.groups, spec.path);
