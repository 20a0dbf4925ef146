'use client';

import { useMemo } from 'react';
import type { ProgramByError, ProgramRow } from '../../../lib/cohort/types/program-row';
import type { programs } from '../../../lib/core/messages/en/programs';
import type { Measure } from '../../../lib/measures/measure';
import type { TableFact } from '../../../lib/workspace/table-file';
import { useMessages } from '../../_state/language-provider';
import type { DataColumn } from '../../_ui/data-column';
import { DataTable } from '../../_ui/data-table';
import { judgedPairs } from './program-columns';
import styles from './programs-screen.module.css';

type Words = ReturnType<typeof programs>;
type JudgedRow = ProgramRow & { readonly byError: ProgramByError };

const isJudged = (row: ProgramRow): row is JudgedRow => row.byError !== null;

const columnsFor = (measure: Measure, words: Words): readonly DataColumn<JudgedRow>[] => {
  const titles = words.byErrorColumns;
  const number = (id: string, title: string, value: (row: JudgedRow) => number): DataColumn<JudgedRow> => ({
    id,
    title,
    kind: 'number',
    value,
  });
  const probability = (id: string, title: string, value: (row: JudgedRow) => number | null): DataColumn<JudgedRow> => ({
    id,
    title,
    kind: 'number',
    digits: 3,
    value,
    cell: (row) => {
      const p = value(row);
      return p === null ? words.noP : words.p({ p });
    },
  });
  return [
    {
      id: 'program',
      title: words.columns.program,
      value: (row) => row.program,
      cell: (row) => <bdi>{row.program}</bdi>,
    },
    number('judged', titles.judged, judgedPairs),
    number('up', words.columns.up, (row) => row.up),
    probability('p-up', titles.pUp, (row) => row.byError.pUp),
    number('down', words.columns.down, (row) => row.down),
    probability('p-down', titles.pDown, (row) => row.byError.pDown),
    probability('p-up-down', titles.pUpAgainstDown, (row) => row.byError.pUpAgainstDown),
    probability('p-spread', titles.pSpread, (row) => row.byError.spread?.p ?? null),
    {
      id: 'slope',
      title: titles.slope,
      kind: 'change',
      digits: 3,
      value: (row) => row.byError.slope,
    },
    {
      id: 'true-sd',
      title: titles.trueSd,
      kind: 'number',
      unit: measure.unit,
      digits: measure.decimals + 1,
      value: (row) => row.byError.spread?.trueSd ?? null,
    },
  ];
};

interface ByErrorTableProps {
  readonly rows: readonly ProgramRow[];
  readonly measure: Measure;
  readonly facts: readonly TableFact[];
}

/** Each program's counts against what measurement error alone would give; nothing without an own between-day error. */
export const ByErrorTable = ({ rows, measure, facts }: ByErrorTableProps) => {
  const { programs: words } = useMessages();
  const judged = useMemo(() => rows.filter(isJudged), [rows]);
  const columns = useMemo(() => columnsFor(measure, words), [measure, words]);
  if (judged.length === 0) return null;
  return (
    <div className="sheet">
      <DataTable
        caption={words.byErrorTitle}
        rows={judged}
        columns={columns}
        rowKey={(row) => row.program}
        fileName={words.byErrorFile}
        facts={facts}
        rowsWord={words.rowsWord}
      />
      <p className={styles.notes}>{words.byErrorNote}</p>
    </div>
  );
};
