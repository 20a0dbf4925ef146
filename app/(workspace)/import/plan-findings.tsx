'use client';

import { useMemo, useState } from 'react';
import type { Finding, FindingKind, ImportPlan } from '../../../lib/import/plan';
import { useMessages } from '../../_state/language-provider';
import type { DataColumn } from '../../_ui/data-column';
import { DataTable } from '../../_ui/data-table';
import { SegmentedChoice } from '../../_ui/segmented-choice';
import { CellText } from './cell-text';
import styles from './import-screen.module.css';
import { ReportButton } from './report-button';

const KINDS: readonly FindingKind[] = ['refused', 'question', 'warning', 'changed', 'duplicate', 'set-aside', 'erased'];

/** Every row or cell that import has something to say about: where, what, and what to do. */
export const PlanFindings = ({ plan, listed }: { readonly plan: ImportPlan; readonly listed: boolean }) => {
  const words = useMessages().importScreen.findings;
  const [kind, setKind] = useState<FindingKind | 'all'>('all');
  const present = KINDS.filter((one) => plan.findings.some((finding) => finding.kind === one));
  const shownKind = kind !== 'all' && present.includes(kind) ? kind : 'all';
  const rows = useMemo(
    () => (shownKind === 'all' ? plan.findings : plan.findings.filter((finding) => finding.kind === shownKind)),
    [plan, shownKind],
  );
  const columns = useMemo(
    (): readonly DataColumn<Finding>[] => [
      {
        id: 'kind',
        title: words.columns.kind,
        value: (row) => words.kind[row.kind],
        cell: (row) => <span className="no-wrap">{words.kind[row.kind]}</span>,
      },
      {
        id: 'file',
        title: words.columns.file,
        value: (row) => row.file,
        cell: (row) => <bdi className={styles.name}>{row.file}</bdi>,
      },
      { id: 'line', title: words.columns.line, kind: 'number', value: (row) => row.line, width: 'narrow' },
      {
        id: 'column',
        title: words.columns.column,
        value: (row) => row.column,
        cell: (row) => <bdi className={styles.name}>{row.column}</bdi>,
      },
      {
        id: 'value',
        title: words.columns.value,
        value: (row) => row.value,
        cell: (row) => <CellText value={row.value} />,
      },
      {
        id: 'message',
        title: words.columns.message,
        value: (row) => row.message,
        width: 'wide',
        cell: (row) => <span className={styles.prose}>{row.message}</span>,
      },
      {
        id: 'remedy',
        title: words.columns.remedy,
        value: (row) => row.remedy,
        width: 'wide',
        cell: (row) => <span className={styles.prose}>{row.remedy}</span>,
      },
    ],
    [words],
  );
  if (plan.findings.length === 0) return <p className="sheet">{words.none}</p>;
  return (
    <div className="sheet">
      {present.length < 2 ? null : (
        <div className={styles.kinds}>
          <SegmentedChoice
            label={words.filterLabel}
            value={shownKind}
            options={[
              { value: 'all', label: words.all },
              ...present.map((value) => ({ value, label: words.kinds[value] })),
            ]}
            onChange={setKind}
          />
        </div>
      )}
      <DataTable
        caption={words.title}
        rows={rows}
        columns={columns}
        rowKey={(row) => [row.row.source, row.line, row.row.part, row.column, row.code].join('\u0000')}
        fileName={words.fileName}
        rowsWord={words.rowsWord({ n: rows.length })}
        searchLabel={words.search}
      />
      {plan.findingCount > plan.findings.length ? (
        <p className={styles.notes}>{words.part({ shown: plan.findings.length, of: plan.findingCount })}</p>
      ) : null}
      <p className={styles.notes}>{words.note}</p>
      <ReportButton plan={plan} listed={listed} />
    </div>
  );
};
