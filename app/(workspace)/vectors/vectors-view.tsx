'use client';

import { useMemo, useState } from 'react';
import type { VectorAnalysis } from '../../../lib/cohort/types/vector-analysis';
import { useMessages } from '../../_state/language-provider';
import { DataTable } from '../../_ui/data-table';
import { rowNameHandlers } from '../../_ui/row-name';
import { SegmentedChoice } from '../../_ui/segmented-choice';
import { Sentence } from '../../_ui/sentence';
import { BesideCounts } from '../../_ui/beside-counts';
import { measuredWays } from './measured-ways';
import { useShownSex } from './use-shown-sex';
import { betweenColumns, meanVectorColumns, pairedColumns, pointColumns, type MeanVectorRow } from './vector-columns';
import { vectorFinding } from './vector-finding';
import { VectorsFigureSheet } from './vectors-figure-sheet';
import styles from './vectors-screen.module.css';

/** The finding, the graph, the mean vectors beside it, and the comparisons below; graph and tables are linked. */
export const VectorsView = ({ analysis }: { readonly analysis: VectorAnalysis }) => {
  const words = useMessages().vectors;
  const { sex, byFilter, setSex } = useShownSex();
  const [program, setProgram] = useState<string | undefined>(undefined);
  const [client, setClient] = useState<string | undefined>(undefined);
  const [pointed, setPointed] = useState<string | undefined>(undefined);
  const points = useMemo(() => analysis.points.filter((point) => point.sex === sex), [analysis, sex]);
  const columns = useMemo(
    () => ({
      means: meanVectorColumns(words),
      between: betweenColumns(words),
      paired: pairedColumns(words),
      points: pointColumns(words),
    }),
    [words],
  );
  const means = useMemo(() => {
    const own = analysis.groups.filter((group) => group.sex === sex);
    const reference = analysis.reference.filter((one) => one.sex === sex);
    return [
      ...own.map(({ program: name, n, mean }): MeanVectorRow => ({ name, n, rh: mean[0], xch: mean[1] })),
      ...reference.map(({ n, mean }): MeanVectorRow => ({ name: words.ownBaseline, n, rh: mean[0], xch: mean[1] })),
    ];
  }, [analysis, sex, words]);
  const between = useMemo(() => analysis.between.filter((row) => row.sex === sex), [analysis, sex]);
  const linked = useMemo(() => {
    if (client !== undefined) return new Set([client]);
    if (program === undefined || program === words.ownBaseline) return undefined;
    return new Set(points.filter((point) => point.program === program).map((point) => String(point.clientKey)));
  }, [client, program, points, words]);
  const activeProgram = points.find((point) => String(point.clientKey) === (pointed ?? client))?.program ?? program;
  const choice = byFilter ? undefined : (
    <SegmentedChoice
      label={words.sexLabel}
      value={sex}
      options={(['F', 'M'] as const).map((value) => ({ value, label: words.sex[value] }))}
      onChange={setSex}
    />
  );
  const ways = measuredWays(analysis, sex, words);
  const leftOut = words.leftOut(analysis.leftOut);
  return (
    <div className={styles.screen}>
      <Sentence
        detail={
          <>
            <p>{words.leadShort}</p>
            {leftOut === '' ? null : <p>{leftOut}</p>}
            <BesideCounts />
            {ways.map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
          </>
        }
        actions={choice}
      >
        {vectorFinding(analysis, sex, words)}
      </Sentence>
      <div className="split">
        <VectorsFigureSheet analysis={analysis} sex={sex} linked={linked} onActive={setPointed} />
        <div {...rowNameHandlers(setProgram)}>
          <DataTable
            caption={words.groups.title}
            rows={means}
            columns={columns.means}
            rowKey={(row) => row.name}
            fileName={words.groups.fileName}
            rowsWord={words.groups.rowsWord}
            isMarked={(row) => row.name === activeProgram}
          />
        </div>
      </div>
      <div className="sheet">
        <DataTable
          caption={words.between.title}
          rows={between}
          columns={columns.between}
          rowKey={(row) => `${row.a}\u0000${row.b}`}
          fileName={words.between.fileName}
          rowsWord={words.between.rowsWord}
        />
        <p className={styles.notes}>{words.between.note}</p>
      </div>
      <div className="sheet">
        <DataTable
          caption={words.paired.title}
          rows={analysis.paired}
          columns={columns.paired}
          rowKey={(row) => row.program}
          fileName={words.paired.fileName}
          rowsWord={words.paired.rowsWord}
        />
        <p className={styles.notes}>{words.paired.note}</p>
      </div>
      <div className="sheet no-print" {...rowNameHandlers(setClient)}>
        <DataTable
          caption={words.points.title}
          rows={points}
          columns={columns.points}
          rowKey={(row) => String(row.clientKey)}
          href={(row) => `/client/?c=${row.clientKey}`}
          fileName={words.points.fileName}
          rowsWord={words.points.rowsWord}
          searchLabel={words.points.search}
          isMarked={(row) => String(row.clientKey) === pointed}
        />
      </div>
    </div>
  );
};
