import type { IsoDate } from '../../core/iso-date';
import { dayNumber } from '../../core/iso-date';
import type { Ucum } from '../../core/units';
import type { FigureContext } from '../figure-context';
import { buildLinearAxis, type LinearAxis } from '../linear-axis';

export interface ControlReading {
  readonly key: string;
  readonly date: IsoDate;
  readonly value: number;
}

/** Limits that hold from one day to the next segment's. */
export interface ControlSegment {
  /** Its first day; null for the first segment. */
  readonly from: IsoDate | null;
  /** Missing for fewer than two readings. */
  readonly limits?: { readonly centre: number; readonly lower: number; readonly upper: number };
}

export interface ControlChartData {
  readonly title: string;
  readonly unit: Ucum;
  readonly digits: number;
  readonly readings: readonly ControlReading[];
  /** In order of time, the first from the beginning on. */
  readonly segments: readonly ControlSegment[];
  /** Days on which a person marked a step. */
  readonly steps: readonly IsoDate[];
}

export interface ControlPoint {
  readonly key: string;
  /** Days since 1970-01-01. */
  readonly x: number;
  readonly y: number;
  /** Which of the segments it lies in, from 0 on: readings of one are joined. */
  readonly segment: number;
  readonly outside: boolean;
  readonly dateText: string;
  readonly valueText: string;
  readonly noteText: string;
  /** What a person hears when the point has the focus. */
  readonly focusLabel: string;
}

export interface ControlLine {
  readonly id: 'upper' | 'centre' | 'lower';
  readonly value: number;
  readonly text: string;
}

/** The limits of one segment, drawn from one day to another. */
export interface ControlBand {
  readonly days: readonly [number, number];
  readonly lines: readonly ControlLine[];
  /** Since when they hold, where a step begins them. */
  readonly since?: string;
}

/** Readings of something that should not change, over time, inside the limits of an individuals chart. */
export interface ControlChartSpec {
  readonly kind: 'control-chart';
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly days: readonly [number, number];
  readonly dayTicks: readonly { readonly day: number; readonly label: string }[];
  readonly y: LinearAxis;
  readonly points: readonly ControlPoint[];
  /** In order of time; a segment without limits has none. */
  readonly bands: readonly ControlBand[];
  readonly steps: readonly { readonly day: number; readonly label: string }[];
  readonly message?: string;
}

/** Readings in order of time; the later of one day stands after the earlier. */
export const buildControlChart = (data: ControlChartData, context: FigureContext): ControlChartSpec => {
  const { formatters, words } = context;
  const { unit, digits } = data;
  const write = (value: number): string => formatters.value(value, unit, digits);
  const points = data.readings
    .filter(({ value }) => Number.isFinite(value))
    .map(({ key, date, value }): ControlPoint => {
      const segment = data.segments.findLastIndex(({ from }) => from === null || from <= date);
      const limits = data.segments[segment]?.limits;
      const outside = limits !== undefined && (value < limits.lower || value > limits.upper);
      const dateText = formatters.dateShort(date);
      const noteText = limits === undefined ? '' : outside ? words.controlOutside : words.controlInside;
      const valueText = write(value);
      return {
        key,
        x: dayNumber(date),
        y: value,
        segment,
        outside,
        dateText,
        valueText,
        noteText,
        focusLabel: words.controlPoint({ date: dateText, value: valueText, note: noteText }),
      };
    })
    .sort((a, b) => a.x - b.x);
  const steps = data.steps.map((on) => ({
    day: dayNumber(on),
    label: words.controlStep({ date: formatters.dateShort(on) }),
  }));
  const xs = points.map(({ x }) => x);
  const [first, last] = [Math.min(...xs), Math.max(...xs)];
  const pad = Math.max(7, (last - first) * 0.03);
  const days = points.length === 0 ? ([0, 1] as const) : ([first - pad, last + pad] as const);
  const dayOf = (segment: ControlSegment | undefined, otherwise: number): number =>
    segment?.from === null || segment === undefined
      ? otherwise
      : Math.min(days[1], Math.max(days[0], dayNumber(segment.from)));
  const bands = data.segments.flatMap((segment, at): ControlBand[] => {
    const { from, limits } = segment;
    if (limits === undefined) return [];
    return [
      {
        days: [dayOf(segment, days[0]), dayOf(data.segments[at + 1], days[1])],
        lines: (['upper', 'centre', 'lower'] as const).map((id) => ({
          id,
          value: limits[id],
          text: words.controlLine({ id, value: write(limits[id]) }),
        })),
        ...(from === null ? {} : { since: formatters.dateShort(from) }),
      },
    ];
  });
  const ticks = points.length === 0 ? [] : [...new Map(points.map(({ x, dateText }) => [x, dateText]))];
  const every = Math.max(1, Math.ceil(ticks.length / 6));
  return {
    kind: 'control-chart',
    width: context.width ?? 760,
    height: context.height ?? 320,
    title: data.title,
    days,
    dayTicks: ticks.filter((_, index) => index % every === 0).map(([day, label]) => ({ day, label })),
    y: buildLinearAxis({
      title: data.title,
      unit,
      values: [...points.map(({ y }) => y), ...bands.flatMap(({ lines }) => lines.map(({ value }) => value))],
      fallback: [0, 1],
      formatters,
      padding: 0.08,
    }),
    points,
    bands,
    steps: steps.filter(({ day }) => day >= first - pad && day <= last + pad),
    ...(points.length === 0 ? { message: words.nothingToDraw } : {}),
  };
};

/** Keys of the points in order of time. */
export const controlChartPointKeys = (spec: ControlChartSpec): string[] => spec.points.map(({ key }) => key);
