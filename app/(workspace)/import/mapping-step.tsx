'use client';

import { useEffect, useRef, useState } from 'react';
import type { AppError } from '../../../lib/core/app-error';
import { useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { ColumnQuestionStack } from './column-question-stack';
import { FailedFiles } from './failed-files';
import { openColumnQuestions, withTable, type ImportWork } from './import-work';
import styles from './import-screen.module.css';
import { IntoClinic } from './into-clinic';
import { MappingTable } from './mapping-table';
import type { Import } from './use-import';
import { StepHead } from './step-head';

interface MappingStepProps {
  readonly work: ImportWork;
  readonly error: AppError | undefined;
  readonly busy: boolean;
  readonly process: Import;
}

/** How the columns are read: questions first, then every table with all that can be changed. */
export const MappingStep = ({ work, error, busy, process }: MappingStepProps) => {
  const screen = useMessages().importScreen;
  const words = screen.mapping;
  const { clinic } = useSession();
  const open = openColumnQuestions(work);
  const [most, setMost] = useState(open);
  if (open > most) setMost(open);
  const next = useRef<HTMLButtonElement>(null);
  const before = useRef(open);
  useEffect(() => {
    if (before.current > 0 && open === 0) next.current?.focus();
    before.current = open;
  }, [open]);
  const none = work.tables.every(({ used }) => !used);
  const failed = work.read.files.flatMap(({ name, error: wrong }) => (wrong === null ? [] : [{ name, error: wrong }]));
  return (
    <div className={styles.screen}>
      <StepHead detail={words.lead}>
        {none ? words.heading.none : open === 0 ? words.heading.ready : words.heading.open({ questions: open })}
      </StepHead>
      <FailedFiles files={failed} />
      {error === undefined ? null : (
        <div role="alert" className={`sheet ${styles.wrong ?? ''}`}>
          <p className="strong">{error.message}</p>
          <p>{error.remedy}</p>
        </div>
      )}
      <ColumnQuestionStack
        work={work}
        answered={Math.max(0, most - open)}
        onMapping={(index, mapping) => void process.changeMapping(work, index, mapping)}
      />
      <div className={`sheet ${styles.commit ?? ''}`}>
        <button
          ref={next}
          type="button"
          className={`button button-strong ${styles.big ?? ''}`}
          disabled={busy || open > 0 || none}
          onClick={() => void process.plan(work, work)}
        >
          {words.next}
        </button>
        <button type="button" className="button" onClick={process.cancel}>
          {screen.discard}
        </button>
        <IntoClinic work={work} disabled={busy} onInto={(into) => void process.changeInto(work, into)} />
        <p className="quiet" role="status">
          {none ? words.nextNone : open === 0 ? '' : words.nextOpen({ n: open })}
        </p>
      </div>
      {work.tables.map((one, index) => (
        <MappingTable
          key={`${String(one.file)} ${one.table.table}`}
          one={one}
          busy={busy}
          intoOpen={work.into === clinic.id}
          onUse={(used) => {
            process.showMapping(withTable(work, index, { used }));
          }}
          onMapping={(mapping) => void process.changeMapping(work, index, mapping)}
          onHeaderLine={(line) => void process.changeHeaderLine(work, index, line)}
        />
      ))}
    </div>
  );
};
