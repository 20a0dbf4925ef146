'use client';

import { useMemo, useState } from 'react';
import { describeErrorBars, tableErrorBars } from '../../../lib/figures/error-bars/describe';
import { drawErrorBars } from '../../../lib/figures/error-bars/draw';
import { buildErrorBars } from '../../../lib/figures/error-bars/spec';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useCohortQuery } from '../../_state/use-cohort-query';
import { useFilter } from '../../_state/use-filter';
import { useNamedMeasure } from '../../_state/use-named-measure';
import { useValueNames } from '../../_state/use-value-names';
import { useSession } from '../../_state/workspace-provider';
import { DataTable } from '../../_ui/data-table';
import { FilterLink } from '../../_ui/filter-link';
import { FigureFrame } from '../../_ui/figure-frame';
import { LinkedPoints } from '../../_ui/linked-points';
import { rowNameHandlers } from '../../_ui/row-name';
import { BesideCounts } from '../../_ui/beside-counts';
import { Sentence } from '../../_ui/sentence';
import { Empty } from '../../_ui/states';
import { useFigureContext } from '../../_ui/use-figure-context';
import { useNarrow } from '../../_ui/use-narrow';
import { answerDetail } from './answer-detail';
import { ChoicesSection } from './choices-section';
import { CrossCheckSection } from './cross-check-section';
import { DeviceLogSection } from './device-log-section';
import { ErrorParts } from './error-parts';
import { PlannerSection } from './planner-section';
import { precisionColumns } from './precision-columns';
import { repeatabilityAnswer } from './repeatability-answer';
import { repeatabilityFigure } from './repeatability-figure';
import styles from './repeatability-screen.module.css';
import { StudyEntrySection } from './study-entry-section';
import { StudySection } from './study-section';

/** Repeatability: how large must a change be here, value by value, and where that number comes from. */
export const RepeatabilityScreen = () => {
  const messages = useMessages();
  const words = messages.repeatability;
  const formatters = useFormatters();
  const { cohort } = useSession();
  const { filter } = useFilter();
  const context = useFigureContext({ width: useNarrow() ? 310 : 720 });
  const [row, setRow] = useState<string | undefined>(undefined);
  const [pointed, setPointed] = useState<string | undefined>(undefined);
  const rows = cohort.precision(filter.level);
  const chosen = rows.find((one) => one.measure === filter.measure);
  const measure = useNamedMeasure(filter.measure);
  const nameOf = useValueNames();
  const title = words.figureTitle({ unit: formatters.unit(measure.unit), level: filter.level });
  const spec = useMemo(
    () => buildErrorBars(repeatabilityFigure(rows, measure.unit, nameOf, words), context),
    [rows, measure, nameOf, words, context],
  );
  const columns = useMemo(
    () => precisionColumns(words, (one) => nameOf(one.measure), formatters),
    [words, nameOf, formatters],
  );
  const linked = useMemo(() => (row === undefined ? undefined : new Set([row])), [row]);
  const query = useCohortQuery('error-study', (open, asked, signal) => open.errorStudy(asked, signal));
  const study = query.kind === 'ready' ? query.value : undefined;
  const tiers = [...new Set(rows.map((one) => one.tier))].sort();
  const drawn = new Set(spec.bars.map(({ id }) => id));
  const drawnTiers = tiers.filter((tier) => rows.some((one) => one.tier === tier && drawn.has(one.measure)));
  const studied = rows.some((one) => one.tier !== 6);

  return (
    <div className={styles.screen}>
      <Sentence
        overline={words.question}
        detail={
          <div className={styles.detail}>
            {answerDetail(chosen, filter.level, words).map((line) => (
              <p key={line}>{line}</p>
            ))}
            <BesideCounts />
          </div>
        }
      >
        {repeatabilityAnswer(chosen, measure, words, formatters)}
      </Sentence>
      {studied && spec.bars.length > 0 ? (
        <div className="split">
          <div className="sheet">
            <LinkedPoints keys={linked}>
              <FigureFrame
                frame={{
                  title,
                  subtitle: words.figureCaption,
                  caption: drawnTiers.map((tier) => words.tierLong[tier]).join(' '),
                }}
                draw={(theme) => drawErrorBars(spec, theme)}
                alternative={describeErrorBars(spec, context.words)}
                table={tableErrorBars(spec, context.words)}
                fileName="repeatability"
                onActivePoint={setPointed}
              />
            </LinkedPoints>
          </div>
          {chosen === undefined || chosen.tier === 6 ? null : <ErrorParts row={chosen} measure={measure} />}
        </div>
      ) : null}
      {studied ? null : (
        <Empty title={words.noneTitle}>
          <p>{words.noneBody}</p>
          <p>{words.noneRemedy}</p>
        </Empty>
      )}
      <div className="sheet" {...rowNameHandlers(setRow)}>
        <DataTable
          caption={words.tableTitle}
          rows={rows}
          columns={columns}
          rowKey={(one) => one.measure}
          fileName={words.fileName}
          rowsWord={words.rowsWord}
          isMarked={(one) => one.measure === (pointed ?? filter.measure)}
        />
        <div className={styles.notes}>
          <p className="no-print">
            <FilterLink href="/comparability/">{messages.comparability.link}</FilterLink>
          </p>
          <p>{words.columnsNote}</p>
          {rows.some((one) => one.provisional) ? <p>{words.provisionalNote}</p> : null}
          {tiers.includes(5) ? <p>{words.lowerLimitNote}</p> : null}
        </div>
      </div>
      <StudySection query={query} measure={measure} row={chosen} />
      <CrossCheckSection />
      <DeviceLogSection />
      <ChoicesSection study={study?.measure === measure.id ? study : undefined} measure={measure} />
      <PlannerSection row={chosen} measure={measure} />
      <StudyEntrySection />
    </div>
  );
};
