import { describeOmitted, describePath } from '../describe-scatter';
import type { FigureContext, FigureWords } from '../figure-context';
import type { FigureTable } from '../figure-table';
import type { ScatterPoint } from '../scatter';
import type { VectorGraphSpec } from './spec';

/** The text alternative: what is drawn, each group's mean vector, the reference, the path. */
export const describeVectorGraph = (spec: VectorGraphSpec, words: FigureWords): string => {
  if (spec.message !== undefined) return [spec.message, ...describeOmitted(spec.omitted, words)].join(' ');
  const points = spec.groups.reduce((sum, group) => sum + group.points.length, 0);
  return [
    words.vectorGraph({ groups: spec.groups.length, points }),
    ...spec.groups.map((group) =>
      group.mean === undefined ? words.groupWithoutMean(group) : words.vectorMean({ ...group, ...group.mean }),
    ),
    ...(spec.references.length === 0
      ? []
      : [
          words.references({ levels: spec.references.map((reference) => reference.label), label: spec.referenceLabel }),
        ]),
    ...describePath(spec.path, words),
    ...describeOmitted(spec.omitted, words),
  ].join(' ');
};

/** One row per point in reading order: group, point, R/H, Xc/H, phase angle. */
export const tableVectorGraph = (spec: VectorGraphSpec, { formatters, words }: FigureContext): FigureTable => {
  const row = (group: string, point: ScatterPoint): string[] => [
    group,
    point.label,
    formatters.number(point.x, 1),
    formatters.number(point.y, 1),
    formatters.quantity((Math.atan2(point.y, point.x) * 180) / Math.PI, 'deg', 1),
  ];
  return {
    columns: [
      { title: words.columnGroup, align: 'start' },
      { title: words.columnPoint, align: 'start' },
      { title: spec.x.title, align: 'end' },
      { title: spec.y.title, align: 'end' },
      { title: words.phaseAngle, align: 'end' },
    ],
    rows: [
      ...spec.groups.flatMap((group) =>
        [...group.points].sort((a, b) => a.x - b.x || a.y - b.y).map((point) => row(group.label, point)),
      ),
      ...spec.path.map((point) => row(point.dateLabel, point)),
    ],
  };
};
