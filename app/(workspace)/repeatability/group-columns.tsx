import type { Cohort } from '../../../lib/cohort/types/cohort';
import type { StudyGroup } from '../../../lib/cohort/types/error-study';
import type { PrecisionRow } from '../../../lib/cohort/types/precision-row';
import type { Formatters } from '../../../lib/core/formatters';
import type { Messages } from '../../../lib/core/messages/en';
import type { Measure } from '../../../lib/measures/measure';
import type { DataColumn } from '../../_ui/data-column';

type Words = Messages['errorStudy']['groups'];

/** Names a row of the table of groups. */
export const groupKey = ({ by, name, kind }: StudyGroup): string => `${by}:${kind}:${name ?? ''}`;

const nameOf = ({ by, name }: StudyGroup, words: Words): string =>
  name ?? (by === 'operator' ? words.several : words.none);

/** What a group's own error is used for: its own pairs, where the clinic chose so, or nothing. */
const usedFor = (row: StudyGroup, own: OwnErrors, words: Words, write: (value: number) => string): string => {
  const found =
    own.from === row.by && row.kind === 'between' ? own.rows.find(({ group }) => group === row.name) : undefined;
  if (found === undefined || found.lsc === null || found.form === 'log') return row.enough ? words.enough : words.few;
  return words.judges({ lsc: write(found.lsc) });
};

/** By which groups the error is taken, and what they have of their own for the value. */
export interface OwnErrors {
  readonly from: Cohort['errorFrom'];
  readonly rows: readonly PrecisionRow[];
}

/** The table of groups: every group's own error and df, and whether it is used. */
export const groupColumns = (
  words: Words,
  measure: Measure,
  f: Formatters,
  own: OwnErrors,
): readonly DataColumn<StudyGroup>[] => {
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
      value: (row) => usedFor(row, own, words, write),
      width: 'wide',
    },
  ];
};
