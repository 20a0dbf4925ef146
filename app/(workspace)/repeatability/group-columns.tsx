import type { StudyGroup } from '../../../lib/cohort/types/error-study';
import type { Formatters } from '../../../lib/core/formatters';
import type { Messages } from '../../../lib/core/messages/en';
import type { Measure } from '../../../lib/measures/measure';
import type { DataColumn } from '../../_ui/data-column';

type Words = Messages['errorStudy']['groups'];

/** Names a row of the table of groups. */
export const groupKey = ({ by, name, kind }: StudyGroup): string => `${by}:${kind}:${name ?? ''}`;

const nameOf = ({ by, name }: StudyGroup, words: Words): string =>
  name ?? (by === 'operator' ? words.several : words.none);

/** The table of groups: every group's own error and df, and whether it is used. */
export const groupColumns = (words: Words, measure: Measure, f: Formatters): readonly DataColumn<StudyGroup>[] => {
  const write = (value: number): string => f.value(value, measure.unit, measure.decimals + 1);
  const plain = (value: number): string => value.toFixed(measure.decimals + 1);
  return [
    { id: 'by', title: words.columns.by, value: ({ by }) => words.by[by] },
    { id: 'group', title: words.columns.group, value: (row) => nameOf(row, words), width: 'wide' },
    { id: 'kind', title: words.columns.kind, value: ({ kind }) => words.kind[kind] },
    { id: 'people', title: words.columns.people, kind: 'number', value: ({ people }) => people },
    { id: 'df', title: words.columns.df, kind: 'number', value: ({ df }) => df },
    {
      id: 'pe',
      title: words.columns.pe,
      kind: 'number',
      unit: measure.unit,
      digits: measure.decimals + 1,
      value: ({ pe }) => pe,
    },
    {
      id: 'range',
      title: words.columns.range,
      kind: 'number',
      value: ({ interval }) => words.range({ low: plain(interval[0]), high: plain(interval[1]) }),
      cell: ({ interval }) => (
        <span className="no-wrap">{words.range({ low: write(interval[0]), high: write(interval[1]) })}</span>
      ),
    },
    {
      id: 'used',
      title: words.columns.used,
      value: ({ enough }) => (enough ? words.enough : words.few),
      width: 'wide',
    },
  ];
};
