'use client';

import { DATE_ORDERS, type ColumnMapping, type ColumnProfile, type MappingQuestion } from '../../../lib/import/mapping';
import type { MappingTarget } from '../../../lib/workspace/mapping-targets';
import { useMessages } from '../../_state/language-provider';
import { EntryMore } from './entry-more';
import { keyOf } from './mapping-edit';
import { hasDecimalMarks } from './has-decimal-marks';
import styles from './mapping-step.module.css';
import { RowSelect } from './row-select';
import type { TargetEdits } from './target-edits';
import { WordsEditor } from './words-editor';

const OPEN = '?';
const MARKS = ['.', ','] as const;

interface EntryDetailsProps {
  readonly header: readonly string[];
  readonly target: MappingTarget;
  readonly column: ColumnMapping;
  readonly profile: ColumnProfile | undefined;
  /** The target in words, with its reading's number. */
  readonly name: string;
  /** What is still asked about the source column. */
  readonly asked: ReadonlySet<MappingQuestion['kind']>;
  readonly edits: TargetEdits;
}

/** How a source column's cells are read: unit, date order, decimal mark, words; only what its target has. */
export const EntryDetails = ({ header, target, column, profile, name, asked, edits }: EntryDetailsProps) => {
  const words = useMessages().importScreen.mapping;
  const key = keyOf(column);
  const [canonicalUnit] = target.units;
  const found = profile?.words ?? null;
  const offered = <Value extends string>(
    options: readonly { readonly value: Value; readonly label: string }[],
    open: boolean,
  ): readonly { readonly value: Value | typeof OPEN; readonly label: string }[] =>
    open ? [{ value: OPEN, label: words.targets.open }, ...options] : options;
  return (
    <div className={styles.details}>
      {target.units.length < 2 || canonicalUnit === undefined ? null : (
        <RowSelect
          label={words.targets.byUnit}
          name={words.targets.unit({ target: name })}
          value={column.unit ?? (asked.has('unit') ? OPEN : canonicalUnit)}
          options={offered(
            target.units.map((unit) => ({ value: unit, label: words.units[unit] })),
            asked.has('unit'),
          )}
          onChange={(unit) => {
            if (unit !== OPEN) edits.onRead(key, { unit });
          }}
        />
      )}
      {target.type === 'date' ? (
        <RowSelect
          label={words.targets.byOrder}
          name={words.targets.dateOrder({ target: name })}
          value={column.dateOrder ?? (asked.has('date-order') ? OPEN : 'ymd')}
          options={offered(
            DATE_ORDERS.map((order) => ({ value: order, label: words.orders[order] })),
            asked.has('date-order'),
          )}
          onChange={(dateOrder) => {
            if (dateOrder !== OPEN) edits.onRead(key, { dateOrder });
          }}
        />
      ) : null}
      {(target.type === 'number' || target.type === 'integer') && hasDecimalMarks(column, profile) ? (
        <RowSelect
          label={words.targets.byDecimal}
          name={words.targets.decimal({ target: name })}
          value={column.decimal ?? (asked.has('decimal') ? OPEN : '.')}
          options={offered(
            MARKS.map((mark) => ({ value: mark, label: words.decimals[mark] })),
            asked.has('decimal'),
          )}
          onChange={(decimal) => {
            if (decimal !== OPEN) edits.onRead(key, { decimal });
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
