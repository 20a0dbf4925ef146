import type { VectorBetween, VectorPaired, VectorPoint } from '../../../lib/cohort/types/vector-analysis';
import type { vectors } from '../../../lib/core/messages/en/vectors';
import type { DataColumn } from '../../_ui/data-column';
import { ROW_NAME } from '../../_ui/row-name';

type Words = ReturnType<typeof vectors>;

/** A mean vector as a row: a program's, or the clinic's own baseline. */
export interface MeanVectorRow {
  readonly name: string;
  readonly n: number;
  readonly rh: number;
  readonly xch: number;
}

const degrees = (rh: number, xch: number): number => (Math.atan2(xch, rh) * 180) / Math.PI;

const named = (name: string) => <bdi {...{ [ROW_NAME]: name }}>{name}</bdi>;

const count = <Row,>(title: string, value: (row: Row) => number | null, id = 'n'): DataColumn<Row> => ({
  id,
  title,
  kind: 'number',
  value,
});

const decimal = <Row,>(
  id: string,
  title: string,
  digits: number,
  value: (row: Row) => number | null,
): DataColumn<Row> => ({
  id,
  title,
  kind: 'number',
  digits,
  value,
});

const probability = <Row,>(
  id: string,
  title: string,
  words: Words,
  value: (row: Row) => number | null,
): DataColumn<Row> => ({
  id,
  title,
  kind: 'number',
  digits: 4,
  value,
  cell: (row) => {
    const p = value(row);
    return p === null ? undefined : <span className="no-wrap">{words.pValue({ value: p })}</span>;
  },
});

export const meanVectorColumns = (words: Words): readonly DataColumn<MeanVectorRow>[] => [
  { id: 'program', title: words.groups.program, value: (row) => row.name, cell: (row) => named(row.name) },
  count(words.groups.n, (row) => row.n),
  { ...decimal<MeanVectorRow>('rh', words.groups.rh, 0, (row) => row.rh), unit: 'Ohm/m' },
  { ...decimal<MeanVectorRow>('xch', words.groups.xch, 1, (row) => row.xch), unit: 'Ohm/m' },
  { ...decimal<MeanVectorRow>('phase', words.groups.phase, 1, (row) => degrees(row.rh, row.xch)), unit: 'deg' },
];

export const betweenColumns = (words: Words): readonly DataColumn<VectorBetween>[] => {
  const w = words.between;
  return [
    { id: 'pair', title: w.pair, value: ({ a, b }) => w.pairName({ a, b }) },
    count(`${w.n}₁`, (row) => row.nA, 'nA'),
    count(`${w.n}₂`, (row) => row.nB, 'nB'),
    decimal('t2', w.t2, 2, (row) => row.t2),
    decimal('f', w.f, 2, (row) => row.f),
    decimal('df2', w.df2, 0, (row) => row.df2),
    probability('p', w.p, words, (row) => row.p),
    decimal('t2Unequal', w.t2Unequal, 2, (row) => row.t2Unequal),
    decimal('fUnequal', w.fUnequal, 2, (row) => row.fUnequal),
    decimal('df2Unequal', w.df2Unequal, 1, (row) => row.df2Unequal),
    probability('pUnequal', w.pUnequal, words, (row) => row.pUnequal),
    decimal('d', w.d, 2, (row) => row.mahalanobisD),
  ];
};

export const pairedColumns = (words: Words): readonly DataColumn<VectorPaired>[] => {
  const w = words.between;
  return [
    { id: 'program', title: words.groups.program, value: (row) => row.program },
    count(w.n, (row) => row.n),
    { id: 'rh', title: words.paired.rh, kind: 'change', unit: 'Ohm/m', digits: 1, value: (row) => row.mean[0] },
    { id: 'xch', title: words.paired.xch, kind: 'change', unit: 'Ohm/m', digits: 2, value: (row) => row.mean[1] },
    decimal('t2', w.t2, 2, (row) => row.t2),
    decimal('f', w.f, 2, (row) => row.f),
    decimal('df2', w.df2, 0, (row) => row.df2),
    probability('p', w.p, words, (row) => row.p),
  ];
};

export const pointColumns = (words: Words): readonly DataColumn<VectorPoint>[] => [
  {
    id: 'client',
    title: words.points.client,
    value: (row) => row.client,
    cell: (row) => <bdi {...{ [ROW_NAME]: String(row.clientKey) }}>{row.client}</bdi>,
  },
  { id: 'program', title: words.groups.program, value: (row) => row.program, width: 'wide' },
  { id: 'date', title: words.points.date, kind: 'date', value: (row) => row.date },
  { ...decimal<VectorPoint>('rh', words.groups.rh, 1, (row) => row.rh), unit: 'Ohm/m' },
  { ...decimal<VectorPoint>('xch', words.groups.xch, 1, (row) => row.xch), unit: 'Ohm/m' },
  { ...decimal<VectorPoint>('phase', words.points.phase, 2, (row) => row.phaseAngle), unit: 'deg' },
];
