import { dayNumber, type IsoDate } from '../../core/iso-date';
import type { FigureContext } from '../figure-context';
import type { ConditionRow, LaneData, LanePointData, LaneVisit, TimeLanesData } from './data';

export interface LanePoint extends LanePointData {
  readonly visitIndex: number;
  /** The value without its unit. */
  readonly text: string;
  readonly valueLabel: string;
  readonly dateLabel: string;
  /** What a person hears when the point has the focus. */
  readonly label: string;
}

export interface LaneValue {
  readonly value: number;
  readonly text: string;
}

export interface Lane {
  readonly id: string;
  readonly title: string;
  readonly unitLabel: string;
  /** Holds every point, the baseline and the band. */
  readonly domain: readonly [number, number];
  readonly points: readonly LanePoint[];
  readonly baseline?: LaneValue;
  /** Baseline ± LSC. */
  readonly band?: { readonly low: LaneValue; readonly high: LaneValue };
  readonly first?: LaneValue;
  readonly last?: LaneValue;
}

export interface LaneVisitSpec extends LaneVisit {
  readonly dayMonth: string;
  readonly year: string;
  readonly dateLabel: string;
}

/** One client's values over time: stacked lanes on one time axis, error bands, breaks, and the conditions beneath. */
export interface TimeLanesSpec {
  readonly kind: 'time-lanes';
  readonly width: number;
  readonly laneHeight: number;
  /** In order of date. */
  readonly visits: readonly LaneVisitSpec[];
  readonly lanes: readonly Lane[];
  readonly conditions: readonly ConditionRow[];
  readonly message?: string;
}

const laneDomain = (values: readonly number[]): readonly [number, number] => {
  const low = Math.min(...values);
  const high = Math.max(...values);
  if (!Number.isFinite(low) || !Number.isFinite(high)) return [0, 1];
  const pad = high > low ? (high - low) * 0.08 : Math.max(Math.abs(high) * 0.05, 0.5);
  return [low - pad, high + pad];
};

const buildLane = (data: LaneData, visits: readonly LaneVisitSpec[], context: FigureContext): Lane => {
  const { formatters, words } = context;
  const named = (value: number): LaneValue => ({ value, text: formatters.value(value, data.unit, data.digits) });
  const points = data.points
    .flatMap((point): LanePoint[] => {
      const visitIndex = visits.findIndex((visit) => visit.id === point.visitId);
      const visit = visits[visitIndex];
      if (visit === undefined || !Number.isFinite(point.value)) return [];
      const valueLabel = formatters.quantity(point.value, data.unit, data.digits);
      const said = { title: data.title, value: valueLabel, date: visit.dateLabel, state: words.state[point.state] };
      return [
        {
          ...point,
          visitIndex,
          text: named(point.value).text,
          valueLabel,
          dateLabel: visit.dateLabel,
          label: words.lanePoint(said),
        },
      ];
    })
    .sort((a, b) => a.visitIndex - b.visitIndex);
  const baseline = data.baseline !== undefined && Number.isFinite(data.baseline) ? data.baseline : undefined;
  const error = data.leastSignificantChange;
  const band =
    baseline === undefined || error === undefined || !(Number.isFinite(error) && error > 0)
      ? undefined
      : { low: named(baseline - error), high: named(baseline + error) };
  const first = points[0];
  const last = points.at(-1);
  const held = [
    ...points.map((point) => point.value),
    ...(baseline === undefined ? [] : [baseline]),
    ...(band === undefined ? [] : [band.low.value, band.high.value]),
  ];
  return {
    id: data.id,
    title: data.title,
    unitLabel: data.unit === 'deg' ? words.degrees : formatters.unit(data.unit),
    domain: laneDomain(held),
    points,
    ...(baseline === undefined ? {} : { baseline: named(baseline) }),
    ...(band === undefined ? {} : { band }),
    ...(first === undefined ? {} : { first: named(first.value) }),
    ...(last === undefined || last === first ? {} : { last: named(last.value) }),
  };
};

/** Orders visits by date, writes every label, and gives each lane a domain that holds its points and its band. */
export const buildTimeLanes = (data: TimeLanesData, context: FigureContext): TimeLanesSpec => {
  const { formatters, words } = context;
  const order = data.visits
    .map((visit, index) => ({ visit, index }))
    .filter(({ visit }) => Number.isFinite(dayNumber(visit.date)))
    .sort((a, b) => dayNumber(a.visit.date) - dayNumber(b.visit.date) || a.index - b.index);
  const year = (date: IsoDate): string => date.slice(0, 4);
  const visits = order.map(({ visit }) => ({
    ...visit,
    dayMonth: formatters.dayMonth(visit.date),
    year: year(visit.date),
    dateLabel: formatters.dateShort(visit.date),
  }));
  const lanes = data.lanes.map((lane) => buildLane(lane, visits, context));
  return {
    kind: 'time-lanes',
    width: context.width ?? 760,
    laneHeight: 84,
    visits,
    lanes,
    conditions: (data.conditions ?? []).map((row) => ({
      label: row.label,
      marks: order.map(({ index }) => row.marks[index]),
    })),
    ...(lanes.every((lane) => lane.points.length === 0) ? { message: words.nothingToDraw } : {}),
  };
};

/** Keys of the points in reading order: lane by lane, each by date. */
export const timeLanesPointKeys = (spec: TimeLanesSpec): string[] =>
  spec.lanes.flatMap((lane) => lane.points.map((point) => point.key));
