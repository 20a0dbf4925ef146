'use client';

import { useMemo } from 'react';
import type { ImportPlan, PlannedFile } from '../../../lib/import/plan';
import { useMessages } from '../../_state/language-provider';
import type { DataColumn } from '../../_ui/data-column';
import { DataTable } from '../../_ui/data-table';
import { FailedFiles } from './failed-files';
import styles from './import-screen.module.css';

const used = (file: PlannedFile): readonly string[] => {
  const places = new Set(file.mapping.columns.flatMap(({ from }) => from));
  return file.mapping.header.filter((_, place) => places.has(place));
};

/** The files as they were understood: encoding, delimiter, rows, columns used and columns kept; and those not read. */
export const PlanFiles = ({ plan, title }: { readonly plan: ImportPlan; readonly title: string }) => {
  const words = useMessages().importScreen.files;
  const columns = useMemo(
    (): readonly DataColumn<PlannedFile>[] => [
      { id: 'name', title: words.name, value: (file) => file.name },
      { id: 'rows', title: words.rows, kind: 'number', value: (file) => file.rows },
      { id: 'size', title: words.size, kind: 'number', value: (file) => Math.max(1, Math.round(file.bytes / 1000)) },
      {
        id: 'format',
        title: words.table,
        value: (file) => (file.mapping.role === 'enrolment' ? `${file.format}, ${words.enrolment}` : file.format),
      },
      { id: 'encoding', title: words.encoding, value: (file) => file.encoding },
      {
        id: 'delimiter',
        title: words.delimiter,
        value: (file) => words.delimiterName[file.delimiter] ?? file.delimiter,
      },
      {
        id: 'used',
        title: words.used,
        kind: 'number',
        value: (file) => used(file).length,
        cell: (file) => words.usedCount({ used: used(file).length, of: file.mapping.header.length }),
      },
      {
        id: 'kept',
        title: words.kept,
        value: (file) => file.unknownColumns.join(', '),
        cell: (file) =>
          file.unknownColumns.length === 0 ? words.noneKept : <bdi>{file.unknownColumns.join(', ')}</bdi>,
      },
    ],
    [words],
  );
  return (
    <div className="sheet stack">
      <DataTable
        caption={title}
        rows={plan.files}
        columns={columns}
        rowKey={(file) => file.source}
        fileName={words.fileName}
        rowsWord={words.rowsWord({ n: plan.files.length })}
      />
      {plan.files.map(({ name, source, leftOut = 0 }) =>
        leftOut === 0 ? null : <p key={source}>{words.withdrawn({ name, n: leftOut })}</p>,
      )}
      <FailedFiles files={plan.failedFiles} />
      <div>
        {plan.files.map((file) => (
          <details key={file.source} className={styles.file}>
            <summary>{words.columnsOf({ name: file.name })}</summary>
            <ul className={styles.columns}>
              {used(file).map((name) => (
                <li key={name}>
                  <bdi>{name}</bdi>
                </li>
              ))}
            </ul>
          </details>
        ))}
      </div>
    </div>
  );
};
