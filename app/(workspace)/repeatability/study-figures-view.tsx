'use client';

import { useMemo } from 'react';
import type { ErrorStudy } from '../../../lib/cohort/types/error-study';
import type { PrecisionRow } from '../../../lib/cohort/types/precision-row';
import { describeAgreement, tableAgreement } from '../../../lib/figures/agreement/describe';
import { drawAgreement } from '../../../lib/figures/agreement/draw';
import { buildAgreement } from '../../../lib/figures/agreement/spec';
import { describeErrorBars, tableErrorBars } from '../../../lib/figures/error-bars/describe';
import { drawErrorBars } from '../../../lib/figures/error-bars/draw';
import { buildErrorBars } from '../../../lib/figures/error-bars/spec';
import type { Measure } from '../../../lib/measures/measure';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useFilter } from '../../_state/use-filter';
import { FigureFrame } from '../../_ui/figure-frame';
import { useFigureContext } from '../../_ui/use-figure-context';
import { useNarrow } from '../../_ui/use-narrow';
import { useOpenPath } from '../../_ui/use-open-path';
import { differenceFigure, quartersFigure } from './study-figures';

interface StudyFiguresProps {
  readonly study: ErrorStudy;
  readonly measure: Measure;
  readonly row: PrecisionRow | undefined;
}

/** Difference against mean of every pair, and the error quarter by quarter. */
export const StudyFigures = ({ study, measure, row }: StudyFiguresProps) => {
  const words = useMessages().errorStudy;
  const formatters = useFormatters();
  const { filter } = useFilter();
  const openPath = useOpenPath();
  const narrow = useNarrow();
  const context = useFigureContext({ width: narrow ? 310 : 720, height: narrow ? 300 : 360 });
  const difference = useMemo(
    () => buildAgreement(differenceFigure(study, measure, row, words, formatters), context),
    [study, measure, row, words, formatters, context],
  );
  const quarters = useMemo(
    () => buildErrorBars(quartersFigure(study, measure, words), context),
    [study, measure, words, context],
  );
  const clientOf = new Map(study.clusters.map(({ key, clientKey }) => [key, clientKey]));
  return (
    <>
      <div className="sheet">
        <FigureFrame
          frame={{
            title: words.figureTitle({ value: measure.name }),
            subtitle: words.figureSubtitle({ n: difference.points.length, level: filter.level }),
            caption: words.figureCaption,
          }}
          draw={(theme) => drawAgreement(difference, theme)}
          alternative={describeAgreement(difference, context.words)}
          table={tableAgreement(difference, context.words)}
          fileName="difference-against-mean"
          onOpenPoint={(key) => {
            openPath(`/client/?c=${String(clientOf.get(key) ?? '')}`);
          }}
        />
      </div>
      <div className="sheet">
        <FigureFrame
          frame={{ title: words.quartersTitle, subtitle: words.quartersSubtitle, caption: words.quartersCaption }}
          draw={(theme) => drawErrorBars(quarters, theme)}
          alternative={describeErrorBars(quarters, context.words)}
          table={tableErrorBars(quarters, context.words)}
          fileName="error-by-quarter"
        />
      </div>
    </>
  );
};
