import type { FigureWords } from '../figure-context';
import type { FigureTable } from '../figure-table';
import type { ConditionMark } from './data';
import type { Lane, TimeLanesSpec } from './spec';

const describeLane = (lane: Lane, words: FigureWords): string => {
  const first = lane.points[0];
  const last = lane.points.at(-1);
  if (first === undefined || last === undefined) return words.laneEmpty({ title: lane.title });
  const apart = lane.points.filter((point) => point.state === 'not-comparable').length;
  const parts = [
    words.lane({ title: lane.title, first: first.valueLabel, last: last.valueLabel }),
    ...(lane.band === undefined ? [] : [words.laneBand({ low: lane.band.low.text, high: lane.band.high.text })]),
    ...(apart === 0 ? [] : [words.laneNotComparable({ n: apart })]),
  ];
  return `${parts.join('; ')}.`;
};

/** The text alternative: the span of time, each lane's first and last value and band, and the breaks. */
export const describeTimeLanes = (spec: TimeLanesSpec, words: FigureWords): string => {
  const first = spec.visits[0];
  const last = spec.visits.at(-1);
  if (spec.message !== undefined || first === undefined || last === undefined) return words.nothingToDraw;
  return [
    words.timeLanes({ visits: spec.visits.length, from: first.dateLabel, to: last.dateLabel }),
    ...spec.lanes.map((lane) => describeLane(lane, words)),
    ...spec.visits.flatMap((visit) =>
      visit.breakBefore === undefined ? [] : [words.breakAt({ label: visit.breakBefore, date: visit.dateLabel })],
    ),
  ].join(' ');
};

const conditionText = (mark: ConditionMark | undefined, words: FigureWords): string =>
  mark === undefined ? '' : typeof mark === 'object' ? mark.text : words.condition[mark];

/** One row per visit: date, each lane's value and whether it can be compared, each condition in words. */
export const tableTimeLanes = (spec: TimeLanesSpec, words: FigureWords): FigureTable => ({
  columns: [
    { title: words.columnDate, align: 'start' },
    ...spec.lanes.flatMap((lane) => [
      { title: lane.unitLabel === '' ? lane.title : `${lane.title}, ${lane.unitLabel}`, align: 'end' as const },
      { title: words.columnState, align: 'start' as const },
    ]),
    ...spec.conditions.map((row) => ({ title: row.label, align: 'start' as const })),
  ],
  rows: spec.visits.map((visit, index) => [
    visit.dateLabel,
    ...spec.lanes.flatMap((lane) => {
      const point = lane.points.find((candidate) => candidate.visitIndex === index);
      return point === undefined ? ['', ''] : [point.text, words.state[point.state]];
    }),
    ...spec.conditions.map((row) => conditionText(row.marks[index], words)),
  ]),
});
