'use client';

import { useMemo, useState, type ReactNode } from 'react';
import type { Purpose } from '../../../lib/cohort/types/filter';
import type { ProgramRow } from '../../../lib/cohort/types/program-row';
import { describeProgramIntervals, tableProgramIntervals } from '../../../lib/figures/program-intervals/describe';
import { drawProgramIntervals } from '../../../lib/figures/program-intervals/draw';
import { buildProgramIntervals } from '../../../lib/figures/program-intervals/spec';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useFilter } from '../../_state/use-filter';
import { useNamedMeasure } from '../../_state/use-named-measure';
import { useSession } from '../../_state/workspace-provider';
import { EquationShare } from '../../_ui/equation-share';
import { DataTable } from '../../_ui/data-table';
import { FigureFrame } from '../../_ui/figure-frame';
import { LinkedPoints } from '../../_ui/linked-points';
import { rowNameHandlers } from '../../_ui/row-name';
import { Sentence } from '../../_ui/sentence';
import { SetAsideNote } from '../../_ui/set-aside-note';
import { useFigureContext } from '../../_ui/use-figure-context';
import { useNarrow } from '../../_ui/use-narrow';
import { ByErrorTable } from './by-error-table';
import { programColumns } from './program-columns';
import { programFinding } from './program-finding';
import { judgingThreshold, programsFigure } from './programs-figure';
import { programsNotes } from './programs-notes';
import styles from './programs-screen.module.css';

interface ProgramsViewProps {
  readonly rows: readonly ProgramRow[];
  readonly purpose: Exclude<Purpose, 'baseline-review'>;
  readonly choice: ReactNode;
}

/** The finding, the intervals on one axis, and the table, linked to each other. */
export const ProgramsView = ({ rows, purpose, choice }: ProgramsViewProps) => {
  const messages = useMessages();
  const words = messages.programs;
  const formatters = useFormatters();
  const { cohort } = useSession();
  const { filter } = useFilter();
  const narrow = useNarrow();
  const context = useFigureContext({ width: narrow ? 310 : 1080 });
  const [active, setActive] = useState<string | undefined>(undefined);
  const [pointed, setPointed] = useState<string | undefined>(undefined);
  const measure = useNamedMeasure(filter.measure);
  const precision = cohort.precision(filter.level).find((row) => row.measure === filter.measure);
  const threshold = judgingThreshold(precision);
  const lsc = threshold === null ? null : formatters.quantity(threshold, measure.unit, measure.decimals);

  const spec = useMemo(() => {
    const names = cohort.summary.programs.map(({ name }) => name);
    return buildProgramIntervals(programsFigure(rows, measure, precision, names, words, narrow), context);
  }, [rows, measure, precision, cohort, words, context, narrow]);
  const columns = useMemo(
    () => programColumns(measure, filter.level, words, formatters),
    [measure, filter.level, words, formatters],
  );
  const lead = words.lead({ purpose, level: filter.level, lsc });
  const notes = programsNotes(rows, precision, purpose, filter.level, words);
  const source =
    lsc === null || precision === undefined
      ? []
      : [words.threshold({ lsc, tier: messages.repeatability.tier[precision.tier], df: precision.dfBetween })];
  const linked = useMemo(() => (active === undefined ? undefined : new Set([active])), [active]);

  return (
    <div className={styles.screen}>
      <Sentence
        detail={
          <>
            <p>{words.notCompared}</p>
            <SetAsideNote />
          </>
        }
        actions={choice}
      >
        {programFinding(rows, measure, words, formatters)}
      </Sentence>
      <div className={`sheet ${styles.figure ?? ''}`}>
        <LinkedPoints keys={linked}>
          <FigureFrame
            frame={{
              title: words.figureTitle({ value: measure.name }),
              subtitle: lead,
              caption: [...source, ...notes, words.notCompared].join(' '),
            }}
            draw={(theme) => drawProgramIntervals(spec, theme)}
            alternative={describeProgramIntervals(spec, context.words)}
            table={tableProgramIntervals(spec, context.words)}
            fileName="programs"
            onActivePoint={setPointed}
          />
        </LinkedPoints>
      </div>
      <div className="sheet" {...rowNameHandlers(setActive)}>
        <DataTable
          caption={words.tableTitle}
          rows={rows}
          columns={columns}
          rowKey={(row) => row.program}
          fileName={words.fileName}
          rowsWord={words.rowsWord}
          isMarked={(row) => row.program === pointed}
        />
        <p className={styles.notes}>{words.countsNote}</p>
        <EquationShare measure={filter.measure} />
      </div>
      <ByErrorTable rows={rows} measure={measure} />
    </div>
  );
};
