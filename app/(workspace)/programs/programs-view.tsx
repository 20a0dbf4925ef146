'use client';

import { useMemo, useState, type ReactNode } from 'react';
import type { Purpose } from '../../../lib/cohort/types/filter';
import type { ProgramRow } from '../../../lib/cohort/types/program-row';
import type { ReviewCounts } from '../../../lib/cohort/types/reviews';
import { describeProgramIntervals, tableProgramIntervals } from '../../../lib/figures/program-intervals/describe';
import { drawProgramIntervals } from '../../../lib/figures/program-intervals/draw';
import { buildProgramIntervals } from '../../../lib/figures/program-intervals/spec';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useEquationShare } from '../../_state/use-equation-share';
import { useFilter } from '../../_state/use-filter';
import { useNamedMeasure } from '../../_state/use-named-measure';
import { useValueFacts } from '../../_state/use-value-facts';
import { useSession } from '../../_state/workspace-provider';
import { capitalised } from '../../_ui/capitalised';
import { EquationShare } from '../../_ui/equation-share';
import { DataTable } from '../../_ui/data-table';
import { FigureFrame } from '../../_ui/figure-frame';
import { LinkedPoints } from '../../_ui/linked-points';
import { rowNameHandlers } from '../../_ui/row-name';
import { Sentence } from '../../_ui/sentence';
import { BesideCounts } from '../../_ui/beside-counts';
import { useFigureContext } from '../../_ui/use-figure-context';
import { useNarrow } from '../../_ui/use-narrow';
import { ByErrorTable } from './by-error-table';
import type { ShownReview } from './use-review-choice';
import { programColumns } from './program-columns';
import { programFinding } from './program-finding';
import { judgingThreshold, programsFigure } from './programs-figure';
import { programsNotes } from './programs-notes';
import styles from './programs-screen.module.css';

interface ProgramsViewProps {
  readonly rows: readonly ProgramRow[];
  readonly purpose: Purpose;
  /** For the purpose *baseline-review*. */
  readonly review: ShownReview | undefined;
  readonly reviews: readonly ReviewCounts[];
  readonly choice: ReactNode;
}

/** The finding, the intervals on one axis, and the table, linked to each other. */
export const ProgramsView = ({ rows, purpose, review, reviews, choice }: ProgramsViewProps) => {
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
  const share = useEquationShare(filter.measure);
  const facts = [...useValueFacts(filter.measure), ...(share?.facts ?? [])];
  const precision = cohort.precision(filter.level).find((row) => row.measure === filter.measure);
  const threshold = judgingThreshold(precision);
  const lsc = threshold === null ? null : formatters.quantity(threshold, measure.unit, measure.decimals);

  const spec = useMemo(() => {
    const names = cohort.summary.programs.map(({ name }) => name);
    return buildProgramIntervals(programsFigure(rows, measure, precision, names, words, narrow), context);
  }, [rows, measure, precision, cohort, words, context, narrow]);
  const columns = useMemo(
    () => programColumns({ measure, reviews: review === undefined ? undefined : reviews }, words, formatters),
    [measure, review, reviews, words, formatters],
  );
  const taken = review?.visit ?? 'closest';
  const sensitivity = taken === 'closest' ? undefined : words.review.sensitivity({ visit: taken });
  const fileName = [
    words.fileName,
    ...(review === undefined ? [] : [`week-${String(review.week).replace('.', '-')}`]),
    ...(taken === 'closest' ? [] : [taken]),
  ].join('-');
  const lead = words.lead({ purpose, lsc, week: review?.week });
  const unchecked =
    measure.group === 'composition-exported' && !cohort.summary.knowsBmi
      ? [messages.reasons.long.bmi_not_recorded]
      : [];
  const notes = programsNotes(rows, precision, { purpose, review }, filter.level, words, cohort.errorFrom);
  const source =
    lsc === null || precision === undefined
      ? []
      : [words.threshold({ lsc, tier: messages.repeatability.tier[precision.tier], df: precision.dfBetween })];
  const linked = useMemo(() => (active === undefined ? undefined : new Set([active])), [active]);

  return (
    <div className={styles.screen}>
      <Sentence
        overline={sensitivity}
        detail={
          <>
            <p>{words.notCompared}</p>
            <BesideCounts />
            {unchecked.map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
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
              subtitle: sensitivity === undefined ? lead : `${capitalised(sensitivity)}. ${lead}`,
              caption: [
                ...source,
                ...notes,
                ...unchecked,
                ...(share === undefined ? [] : [share.sentence]),
                words.notCompared,
              ].join(' '),
            }}
            draw={(theme) => drawProgramIntervals(spec, theme)}
            alternative={describeProgramIntervals(spec, context.words)}
            table={tableProgramIntervals(spec, context.words)}
            fileName={fileName}
            facts={facts}
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
          fileName={fileName}
          facts={facts}
          rowsWord={words.rowsWord}
          isMarked={(row) => row.program === pointed}
        />
        <p className={styles.notes}>{words.countsNote}</p>
        {rows.some(({ asMeant }) => asMeant !== null) ? <p className={styles.notes}>{words.asMeantNote}</p> : null}
        <EquationShare share={share} />
      </div>
      <ByErrorTable rows={rows} measure={measure} facts={facts} />
    </div>
  );
};
