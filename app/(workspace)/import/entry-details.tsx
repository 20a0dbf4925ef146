'use client';

import { DATE_ORDERS, type ColumnMapping, type ColumnProfile } from '../../../lib/import/mapping';
import type { MappingTarget } from '../../../lib/workspace/mapping-targets';
import { useMessages } from '../../_state/language-provider';
import { EntryMore } from './entry-more';
import { keyOf } from './mapping-edit';
import { hasDecimalMarks } from './has-decimal-marks';
import styles from './mapping-step.module.css';
import { RowSelect } from './row-select';
import type { TargetEdits } from './target-row';
import { WordsEditor } from './words-editor';

interface EntryDetailsProps {
  readonly header: readonly string[];
  readonly target: MappingTarget;
  readonly column: ColumnMapping;
  readonly profile: ColumnProfile | undefined;
  /** The target in words, with its reading's number. */
  readonly name: string;
  readonly edits: TargetEdits;
}

/** How a source column's cells are read: unit, date order, decimal mark, words; only what its target has. */
export const EntryDetails = ({ header, target, column, profile, name, edits }: EntryDetailsProps) => {
  const words = useMessages().importScreen.mapping;
  const key = keyOf(column);
  const [canonicalUnit] = target.units;
  const found = profile?.words ?? null;
  return (
    <div className={styles.details}>
      {target.units.length < 2 || canonicalUnit === undefined ? null : (
        <RowSelect
          label={words.targets.byUnit}
          name={words.targets.unit({ target: name })}
          value={column.unit ?? canonicalUnit}
          options={target.units.map((unit) => ({ value: unit, label: words.units[unit] }))}
          onChange={(unit) => {
            edits.onRead(key, { unit });
          }}
        />
      )}
      {target.type === 'date' ? (
        <RowSelect
          label={words.targets.byOrder}
          name={words.targets.dateOrder({ target: name })}
          value={column.dateOrder ?? 'ymd'}
          options={DATE_ORDERS.map((order) => ({ value: order, label: words.orders[order] }))}
          onChange={(dateOrder) => {
            edits.onRead(key, { dateOrder });
          }}
        />
      ) : null}
      {(target.type === 'number' || target.type === 'integer') && hasDecimalMarks(column, profile) ? (
        <RowSelect
          label={words.targets.byDecimal}
          name={words.targets.decimal({ target: name })}
          value={column.decimal ?? '.'}
          options={(['.', ','] as const).map((mark) => ({ value: mark, label: words.decimals[mark] }))}
          onChange={(decimal) => {
            edits.onRead(key, { decimal });
          }}
        />
      ) : null}
      {target.choices === null || found === null ? null : (
        <WordsEditor
          title={words.targets.words({ target: name })}
          choices={target.choices}
          found={found}
          words={column.words ?? {}}
          onWords={(next) => {
            edits.onRead(key, { words: next });
          }}
        />
      )}
      <EntryMore header={header} target={target} column={column} name={name} edits={edits} />
    </div>
  );
};
