import type { IsoDate } from '../../core/iso-date';
import type { Ucum } from '../../core/units';
import type { FigureContext } from '../figure-context';
import type { LanePointState } from '../time-lanes/data';

export interface ValueStripData {
  readonly title: string;
  readonly unit: Ucum;
  readonly digits: number;
  /** In order of date; the last five are drawn. */
  readonly points: readonly {
    readonly key: string;
    readonly date: IsoDate;
    readonly value: number;
    readonly state: LanePointState;
  }[];
  readonly baseline?: number;
  readonly leastSignificantChange?: number;
}

export interface ValueStripPoint {
  readonly key: string;
  readonly value: number;
  readonly state: LanePointState;
  readonly label: string;
  readonly dateLabel: string;
  readonly valueLabel: string;
}

/** The last five values of one client in the error band, small enough for a row of a list. */
export interface ValueStripSpec {
  readonly kind: 'value-strip';
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly domain: readonly [number, number];
  readonly points: readonly ValueStripPoint[];
  readonly baseline?: number;
  readonly band?: { readonly low: number; readonly high: number; readonly lowText: string; readonly highText: string };
}

const SHOWN = 5;

/** Keeps the last five finite values; the domain holds them and the band. */
export const buildValueStrip = (data: ValueStripData, context: FigureContext): ValueStripSpec => {
  const { formatters, words } = context;
  const points = data.points
    .filter((point) => Number.isFinite(point.value))
    .slice(-SHOWN)
    .map((point): ValueStripPoint => {
      const valueLabel = formatters.quantity(point.value, data.unit, data.digits);
      const dateLabel = formatters.dateShort(point.date);
      const said = { title: data.title, value: valueLabel, date: dateLabel, state: words.state[point.state] };
      return {
        key: point.key,
        value: point.value,
        state: point.state,
        dateLabel,
        valueLabel,
        label: words.lanePoint(said),
      };
    });
  const baseline = data.baseline !== undefined && Number.isFinite(data.baseline) ? data.baseline : undefined;
  const error = data.leastSignificantChange;
  const write = (value: number): string => formatters.value(value, data.unit, data.digits);
  const band =
    baseline === undefined || error === undefined || !(Number.isFinite(error) && error > 0)
      ? undefined
      : {
          low: baseline - error,
          high: baseline + error,
          lowText: write(baseline - error),
          highText: write(baseline + error),
        };
  const held = [
    ...points.map((point) => point.value),
    ...(baseline === undefined ? [] : [baseline]),
    ...(band === undefined ? [] : [band.low, band.high]),
  ];
  const low = Math.min(...held);
  const high = Math.max(...held);
  const pad = high > low ? 0 : Math.max(Math.abs(high) * 0.05, 0.5);
  return {
    kind: 'value-strip',
    width: context.width ?? 110,
    height: context.height ?? 44,
    title: data.title,
    domain: held.length === 0 ? [0, 1] : [low - pad, high + pad],
    points,
    ...(baseline === undefined ? {} : { baseline }),
    ...(band === undefined ? {} : { band }),
  };
};

/** Keys of the points by date. */
export const valueStripPointKeys = (spec: ValueStripSpec): string[] => spec.points.map((point) => point.key);
