import { describeOmitted, describePath } from '../describe-scatter';
import type { FigureContext, FigureWords } from '../figure-context';
import type { FigureTable } from '../figure-table';
import type { ScatterPoint } from '../scatter';
import type { IndexChartSpec } from './spec';

/** The text alternative: what is drawn, each group's mean, the path. */
export const describeIndexChart = (spec: IndexChartSpec, words: FigureWords): string => {
  if (spec.message !== undefined) return [spec.message, ...describeOmitted(spec.omitted, words)].join(' ');
  const points = spec.groups.reduce((sum, group) => sum + group.points.length, 0);
  return [
    words.indexChart({ groups: spec.groups.length, points }),
    ...spec.groups.map((group) =>
      group.mean === undefined ? words.groupWithoutMean(group) : words.indexMean({ ...group, ...group.mean }),
    ),
    ...describePath(spec.path, words),
    ...describeOmitted(spec.omitted, words),
  ].join(' ');
};

/** One row per point in reading order: group, point, FFMI, FMI, their sum, fat in percent of weight. */
export const tableIndexChart = (spec: IndexChartSpec, { formatters, words }: FigureContext): FigureTable => {
  const row = (group: string, point: ScatterPoint): string[] => [
    group,
    point.label,
    formatters.number(point.x, 1),
    formatters.number(point.y, 1),
    formatters.number(point.x + point.y, 1),
    point.x + point.y > 0 ? formatters.number((100 * point.y) / (point.x + point.y), 1) : '',
  ];
  return {
    columns: [
      { title: words.columnGroup, align: 'start' },
      { title: words.columnPoint, align: 'start' },
      { title: spec.x.title, align: 'end' },
      { title: spec.y.title, align: 'end' },
      { title: `${words.bodyMassIndex}, ${formatters.unit('kg/m2')}`, align: 'end' },
      { title: words.fatShare, align: 'end' },
    ],
    rows: [
      ...spec.groups.flatMap((group) =>
        [...group.points].sort((a, b) => a.x - b.x || a.y - b.y).map((point) => row(group.label, point)),
      ),
      ...spec.path.map((point) => row(point.dateLabel, point)),
    ],
  };
};
