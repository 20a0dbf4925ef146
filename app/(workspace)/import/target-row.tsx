'use client';

import type { ColumnMapping, MappingQuestion } from '../../../lib/import/mapping';
import type { ReadTable } from '../../../lib/import/plan';
import type { MappingTarget } from '../../../lib/workspace/mapping-targets';
import { useMessages } from '../../_state/language-provider';
import { ConstantField } from './constant-field';
import { EntryDetails } from './entry-details';
import { keyOf } from './mapping-edit';
import type { Sureness } from './mapping-view';
import { sourceName } from './mapping-view';
import { RowSelect } from './row-select';
import { SampleCells } from './sample-cells';
import styles from './mapping-step.module.css';
import type { TargetEdits } from './target-edits';

const NONE = '';

interface TargetRowProps {
  readonly table: ReadTable;
  readonly target: MappingTarget;
  /** The source column that fills the target; undefined where none does. */
  readonly column: ColumnMapping | undefined;
  readonly sureness: Sureness | undefined;
  readonly constant: string;
  /** What is still asked about the source column. */
  readonly asked: ReadonlySet<MappingQuestion['kind']>;
  readonly edits: TargetEdits;
}

/** One canonical column: where it comes from, how sure that is, its first values, and how they are read. */
export const TargetRow = ({ table, target, column, sureness, constant, asked, edits }: TargetRowProps) => {
  const words = useMessages().importScreen.mapping;
  const { header, columns } = table.profile;
  const name = words.name({ column: target.name });
  const numbered = column?.reading === undefined ? name : `${name}, ${words.targets.readingN({ n: column.reading })}`;
  const key = column === undefined ? { to: target.name } : keyOf(column);
  const sources = header.map((_, place) => ({ value: String(place), label: sourceName(header, place) }));
  const profile = columns.find(({ place }) => place === column?.from[0]);
  const said = sureness === undefined ? (constant === '' ? '' : words.confidence.constant) : words.confidence[sureness];
  return (
    <li className={styles.target}>
      <div>
        <p className="strong">
          {numbered}
          {target.required && column === undefined ? ' *' : ''}
        </p>
        <p className="quiet small">
          <bdi>{target.name}</bdi>
          {said === '' ? null : <span className={styles.sureness}> · {said}</span>}
        </p>
      </div>
      <RowSelect
        label={words.targets.source}
        name={words.targets.sourceOf({ target: numbered })}
        value={column === undefined ? NONE : String(column.from[0] ?? NONE)}
        options={[{ value: NONE, label: words.targets.none }, ...sources]}
        onChange={(value) => {
          const rest = column?.from.slice(1) ?? [];
          edits.onSource(
            key,
            value === NONE ? [] : [Number(value), ...rest.filter((place) => place !== Number(value))],
          );
        }}
      />
      {column === undefined ? (
        <ConstantField target={target} name={name} value={constant} onChange={edits.onConstant} />
      ) : (
        <>
          <SampleCells samples={profile?.samples ?? []} />
          <EntryDetails
            header={header}
            target={target}
            column={column}
            profile={profile}
            name={numbered}
            asked={asked}
            edits={edits}
          />
        </>
      )}
    </li>
  );
};
