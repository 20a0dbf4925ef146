import type { IndexPoint } from '../../../lib/cohort/types/cohort-summary';
import type { indices } from '../../../lib/core/messages/en/indices';
import type { DataColumn } from '../../_ui/data-column';
import { ROW_NAME } from '../../_ui/row-name';
import type { IndexGroupRow } from './index-groups';

type Words = ReturnType<typeof indices>;

const index = <Row,>(id: string, title: string, value: (row: Row) => number | null): DataColumn<Row> => ({
  id,
  title,
  kind: 'number',
  unit: 'kg/m2',
  digits: 1,
  value,
  width: 'narrow',
});

export const indexGroupColumns = (words: Words): readonly DataColumn<IndexGroupRow>[] => [
  {
    id: 'program',
    title: words.groups.program,
    value: (row) => row.program,
    cell: (row) => <bdi {...{ [ROW_NAME]: row.program }}>{row.program}</bdi>,
  },
  { id: 'n', title: words.groups.n, kind: 'number', value: (row) => row.n },
  { id: 'held', title: words.groups.heldCount, kind: 'number', value: (row) => row.held },
  index('ffmi', words.groups.ffmi, (row) => row.ffmi ?? null),
  index('fmi', words.groups.fmi, (row) => row.fmi ?? null),
];

export const indexPointColumns = (words: Words): readonly DataColumn<IndexPoint>[] => [
  {
    id: 'client',
    title: words.points.client,
    value: (row) => row.client,
    cell: (row) => <bdi {...{ [ROW_NAME]: String(row.clientKey) }}>{row.client}</bdi>,
  },
  { id: 'program', title: words.points.program, value: (row) => row.program, width: 'wide' },
  { id: 'sex', title: words.points.sex, value: (row) => row.sex, width: 'narrow' },
  { id: 'date', title: words.points.date, kind: 'date', value: (row) => row.date },
  index('ffmi', words.points.ffmi, (row) => row.ffmi),
  index('fmi', words.points.fmi, (row) => row.fmi),
  index('bmi', words.points.bmi, (row) => row.ffmi + row.fmi),
  {
    id: 'held',
    title: words.points.held,
    value: (row) => (row.held ? words.points.yes : words.points.no),
    width: 'narrow',
  },
];
