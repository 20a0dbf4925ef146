'use client';

import { useRef, useState } from 'react';
import {
  isEmptyStudyRow,
  rowBelow,
  STUDY_COLUMNS,
  STUDY_EXPORTED_COLUMNS,
  STUDY_SHARED_COLUMNS,
  studyFileOf,
  type StudyCell,
  type StudyRow,
  type StudyShared,
} from '../../../lib/workspace/study-file';
import { dropFiles } from '../../_state/dropped-files';
import { useMessages } from '../../_state/language-provider';
import { localToday } from '../../_state/local-today';
import { useSession } from '../../_state/workspace-provider';
import { AnchoredSection } from '../../_ui/anchored-section';
import { Check } from '../../_ui/check';
import { LabelledInput } from '../../_ui/labelled-input';
import { LabelledSelect } from '../../_ui/labelled-select';
import { useOpenPath } from '../../_ui/use-open-path';
import { StudyEntryRow } from './study-entry-row';
import styles from './study-entry.module.css';
import { useStudyDraft } from './use-study-draft';

const HOURS: ReadonlySet<StudyShared> = new Set(['fasted_h', 'since_exercise_h', 'since_alcohol_h']);
const POSTURES = ['', 'lying', 'standing'] as const;
type Posture = (typeof POSTURES)[number];

/** The error study's readings as they were written on paper: a table to type into, which Import then reads. */
export const StudyEntrySection = () => {
  const words = useMessages().studyEntry;
  const { clinic, keeping } = useSession();
  const openPath = useOpenPath();
  const { draft, keep } = useStudyDraft();
  const [exported, setExported] = useState(false);
  const body = useRef<HTMLTableSectionElement>(null);
  const { rows, shared, standard, imported } = draft;
  const columns: readonly StudyCell[] = exported ? [...STUDY_COLUMNS, ...STUDY_EXPORTED_COLUMNS] : STUDY_COLUMNS;
  const filled = rows.filter((row) => !isEmptyStudyRow(row)).length;
  const setRows = (next: readonly StudyRow[]): void => {
    keep({ rows: next.length === 0 ? [{}] : next });
  };
  const focusRow = (index: number): void => {
    // The row may be drawn only after this event.
    requestAnimationFrame(() => body.current?.rows.item(index)?.querySelector('input')?.focus());
  };
  const goBelow = (index: number): void => {
    if (index === rows.length - 1) setRows([...rows, rowBelow(rows.at(-1))]);
    focusRow(index + 1);
  };
  const handOver = async (): Promise<void> => {
    const made = await studyFileOf(draft, localToday());
    keep({ handedOver: made.sha256 });
    dropFiles([made.file]);
    openPath('/import/');
  };
  return (
    <AnchoredSection id="study-entry" title={words.title} lead={words.lead} className="sheet" printed={false}>
      <fieldset className={styles.form} disabled={!keeping.writer}>
        {clinic.kind === 'demo' ? <p className="quiet small">{words.intoOwn}</p> : null}
        <div>
          <h3>{words.shared}</h3>
          <div className={styles.shared}>
            {STUDY_SHARED_COLUMNS.map((column) =>
              column === 'posture' ? (
                <LabelledSelect<Posture>
                  key={column}
                  label={words.columns.posture}
                  value={POSTURES.find((value) => value === shared.posture) ?? ''}
                  options={POSTURES.map((value) => ({
                    value,
                    label: words.postures[value === '' ? 'unknown' : value],
                  }))}
                  onChange={(posture) => {
                    keep({ shared: { ...shared, posture } });
                  }}
                />
              ) : (
                <LabelledInput
                  key={column}
                  label={words.columns[column]}
                  type="text"
                  inputMode={HOURS.has(column) ? 'decimal' : 'text'}
                  value={shared[column] ?? ''}
                  onChange={(text) => {
                    keep({ shared: { ...shared, [column]: text } });
                  }}
                />
              ),
            )}
          </div>
        </div>
        <Check
          label={words.standard}
          checked={standard}
          onChange={(ticked) => {
            keep({ standard: ticked });
          }}
        />
        <p className={`quiet small ${styles.notes ?? ''}`}>{words.sharedNote}</p>
        <Check label={words.exported} checked={exported} onChange={setExported} />
        <div className={styles.wrap}>
          <table className={styles.table}>
            <caption>{words.table}</caption>
            <thead>
              <tr>
                {columns.map((column) => (
                  <th key={column} scope="col">
                    {words.columns[column]}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody ref={body}>
              {rows.map((row, index) => (
                <StudyEntryRow
                  // A row has no name but its place: a removed one takes its cells with it.
                  key={String(index)}
                  row={row}
                  index={index}
                  columns={columns}
                  onCell={(column, text) => {
                    setRows(rows.map((one, place) => (place === index ? { ...one, [column]: text } : one)));
                  }}
                  onEnter={() => {
                    goBelow(index);
                  }}
                  onRemove={() => {
                    setRows(rows.filter((_, place) => place !== index));
                  }}
                />
              ))}
            </tbody>
          </table>
        </div>
        <p className={`quiet small ${styles.notes ?? ''}`}>{words.keys}</p>
        <div className="row">
          <button type="button" className="button primary" disabled={filled === 0} onClick={() => void handOver()}>
            {words.check({ rows: filled })}
          </button>
          <button
            type="button"
            className="button"
            onClick={() => {
              goBelow(rows.length - 1);
            }}
          >
            {words.addRow}
          </button>
          <button
            type="button"
            className="button"
            disabled={filled === 0}
            onClick={() => {
              keep({ rows: [{}], handedOver: null });
            }}
          >
            {words.clear}
          </button>
        </div>
        <div role="status" className="small">
          {filled > 0 ? <p>{draft.handedOver === null ? words.unsaved : words.waiting}</p> : null}
          {filled === 0 && imported !== null ? <p>{words.kept({ rows: imported })}</p> : null}
        </div>
      </fieldset>
    </AnchoredSection>
  );
};
