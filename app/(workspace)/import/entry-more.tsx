'use client';

import type { ColumnMapping } from '../../../lib/import/mapping';
import type { MappingTarget } from '../../../lib/workspace/mapping-targets';
import { useMessages } from '../../_state/language-provider';
import { keyOf } from './mapping-edit';
import { sourceName } from './mapping-view';
import styles from './mapping-step.module.css';
import { RowSelect } from './row-select';
import type { TargetEdits } from './target-edits';

const NONE = '';
const READINGS = 10;
const REPEATED = new Set<MappingTarget['role']>(['body', 'impedance', 'exported', 'other']);

interface EntryMoreProps {
  readonly header: readonly string[];
  readonly target: MappingTarget;
  readonly column: ColumnMapping;
  readonly name: string;
  readonly edits: TargetEdits;
}

/** What few files need: a second source column, and numbered readings side by side. */
export const EntryMore = ({ header, target, column, name, edits }: EntryMoreProps) => {
  const words = useMessages().importScreen.mapping.targets;
  const key = keyOf(column);
  const repeated = REPEATED.has(target.role);
  const [first, second] = column.from;
  const sources = header.map((_, place) => ({ value: String(place), label: sourceName(header, place) }));
  const unread = sources.find(({ value }) => !column.from.includes(Number(value)));
  return (
    <details className={styles.more} open={second !== undefined || column.reading !== undefined}>
      <summary>
        <span className="visually-hidden">{name}: </span>
        {repeated ? words.joinOrReadings : words.join}
      </summary>
      <div className={styles.details}>
        <RowSelect
          label={words.join}
          name={words.joined({ target: name })}
          value={second === undefined ? NONE : String(second)}
          options={[{ value: NONE, label: words.noJoin }, ...sources.filter(({ value }) => Number(value) !== first)]}
          onChange={(value) => {
            if (first !== undefined) edits.onSource(key, value === NONE ? [first] : [first, Number(value)]);
          }}
        />
        {repeated ? (
          <>
            <RowSelect
              label={words.readingLabel}
              name={words.reading({ target: name })}
              value={column.reading === undefined ? NONE : String(column.reading)}
              options={[
                { value: NONE, label: words.readingEach },
                ...Array.from({ length: READINGS }, (_, index) => ({
                  value: String(index + 1),
                  label: words.readingN({ n: index + 1 }),
                })),
              ]}
              onChange={(value) => {
                edits.onReading(key, value === NONE ? undefined : Number(value));
              }}
            />
            {unread === undefined ? null : (
              <button
                type="button"
                className="button"
                onClick={() => {
                  edits.onFurther(target.name, Number(unread.value));
                }}
              >
                {words.another}
                <span className="visually-hidden">: {name}</span>
              </button>
            )}
          </>
        ) : null}
      </div>
    </details>
  );
};
