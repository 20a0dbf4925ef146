import { scaleLinear, scaleUtc } from 'd3';
import { dodge } from '../dodge';
import { TEXT_SIZE } from '../label';
import { textWidth } from '../text-width';
import type { TimeLanesSpec } from './spec';

export const LANE_GAP = 26;
export const GRID_ROW = 20;
const BREAK_ROW = 17;
const EDGE = 12;

export interface PlacedBreak {
  readonly label: string;
  readonly x: number;
  readonly labelX: number;
  readonly labelY: number;
}

export interface LaneLayout {
  readonly left: number;
  readonly right: number;
  readonly laneTop: (index: number) => number;
  readonly laneY: (index: number, value: number) => number;
  /** Where each visit lies in time. */
  readonly visitX: readonly number[];
  /** Where each visit stands in the conditions grid, moved apart where dates are close. */
  readonly columnX: readonly number[];
  readonly axisY: number;
  readonly gridTop: number;
  readonly height: number;
  readonly breaks: readonly PlacedBreak[];
}

const visitPositions = (spec: TimeLanesSpec, left: number, right: number): number[] => {
  const times = spec.visits.map((visit) => new Date(`${visit.date}T00:00:00Z`));
  const first = times[0];
  const last = times.at(-1);
  if (first === undefined || last === undefined) return [];
  if (first.getTime() === last.getTime()) return times.map(() => (left + right) / 2);
  const scale = scaleUtc()
    .domain([first, last])
    .range([left + EDGE, right - EDGE]);
  return times.map((time) => scale(time));
};

/** Words of breaks in rows above the lanes: a break takes the first row where its words do not touch others. */
const placeBreaks = (spec: TimeLanesSpec, visitX: readonly number[], left: number, right: number) => {
  const rowEnds: number[] = [];
  const placed = spec.visits.flatMap((visit, index) => {
    const here = visitX[index];
    if (visit.breakBefore === undefined || here === undefined) return [];
    const x = index === 0 ? here - EDGE / 2 : ((visitX[index - 1] ?? here) + here) / 2;
    const width = textWidth(visit.breakBefore, TEXT_SIZE);
    const labelX = Math.max(left, Math.min(x + 4, right - width));
    const free = rowEnds.findIndex((end) => end + 10 <= labelX);
    const row = free === -1 ? rowEnds.length : free;
    rowEnds[row] = labelX + width;
    return [{ label: visit.breakBefore, x, labelX, row }];
  });
  return { placed, rows: rowEnds.length };
};

/** All positions of the figure in pixels; the height follows from the lanes, the breaks and the conditions. */
export const timeLanesLayout = (spec: TimeLanesSpec): LaneLayout => {
  const widest = (texts: readonly string[], strong: boolean): number =>
    Math.max(0, ...texts.map((text) => textWidth(text, strong ? 13 : TEXT_SIZE, strong ? 'strong' : 'regular')));
  const titles = widest(
    spec.lanes.map((lane) => lane.title),
    true,
  );
  const conditions = widest(
    spec.conditions.map((row) => row.label),
    false,
  );
  const numbers = widest(
    spec.lanes.flatMap((lane) => [lane.first?.text ?? '', lane.last?.text ?? '']),
    true,
  );
  const left = Math.min(Math.max(titles, conditions, 60) + 18, spec.width * 0.34);
  const right = spec.width - Math.max(numbers, 24) - 16;
  const visitX = visitPositions(spec, left, right);
  const { placed, rows } = placeBreaks(spec, visitX, left, right);
  const top = rows === 0 ? 12 : rows * BREAK_ROW + 12;
  const laneTop = (index: number): number => top + index * (spec.laneHeight + LANE_GAP);
  const axisY = laneTop(Math.max(spec.lanes.length, 1)) - LANE_GAP + 14;
  const gridTop = axisY + 54;
  return {
    left,
    right,
    laneTop,
    laneY: (index, value) => {
      const [low, high] = spec.lanes[index]?.domain ?? [0, 1];
      return scaleLinear()
        .domain([low, high])
        .range([laneTop(index) + spec.laneHeight, laneTop(index)])(value);
    },
    visitX,
    columnX: dodge(visitX, 15, left + 7, right - 7),
    axisY,
    gridTop,
    height: spec.conditions.length === 0 ? axisY + 44 : gridTop + spec.conditions.length * GRID_ROW + 8,
    breaks: placed.map(({ row, ...rest }) => ({ ...rest, labelY: 14 + row * BREAK_ROW })),
  };
};
