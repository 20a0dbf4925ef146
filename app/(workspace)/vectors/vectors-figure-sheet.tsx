'use client';

import { useMemo } from 'react';
import type { VectorAnalysis } from '../../../lib/cohort/types/vector-analysis';
import { describeVectorGraph, tableVectorGraph } from '../../../lib/figures/vector-graph/describe';
import { drawVectorGraph } from '../../../lib/figures/vector-graph/draw';
import { buildVectorGraph } from '../../../lib/figures/vector-graph/spec';
import { useFormatters, useMessages } from '../../_state/language-provider';
import { useSession } from '../../_state/workspace-provider';
import { FigureFrame } from '../../_ui/figure-frame';
import { LinkedPoints } from '../../_ui/linked-points';
import { useFigureContext } from '../../_ui/use-figure-context';
import { useOpenPath } from '../../_ui/use-open-path';
import { measuredWays } from './measured-ways';
import { vectorsFigure } from './vectors-figure';

interface VectorsFigureSheetProps {
  readonly analysis: VectorAnalysis;
  readonly sex: 'F' | 'M';
  readonly linked: ReadonlySet<string> | undefined;
  readonly onActive: (clientKey: string | undefined) => void;
}

/** The graph of one sex with its reference, and in words which ellipse is which. */
export const VectorsFigureSheet = ({ analysis, sex, linked, onActive }: VectorsFigureSheetProps) => {
  const words = useMessages().vectors;
  const formatters = useFormatters();
  const { cohort } = useSession();
  const context = useFigureContext({ width: 760, height: 580 });
  const openPath = useOpenPath();
  const { posture } = cohort.summary;
  const reference = analysis.reference.find((one) => one.sex === sex);
  const spec = useMemo(() => {
    const names = cohort.summary.programs.map(({ name }) => name);
    return buildVectorGraph(vectorsFigure(analysis, sex, names, words, formatters), context);
  }, [analysis, sex, cohort, words, formatters, context]);
  const ellipses =
    reference === undefined
      ? [words.noReference({ sex })]
      : [words.largeEllipses({ n: reference.n }), ...(reference.provisional ? [words.provisional] : [])];
  return (
    <div className="sheet">
      <LinkedPoints keys={linked}>
        <FigureFrame
          frame={{
            title: words.figureTitle,
            subtitle: [words.lead({ sex, posture }), words.smallEllipses, ...ellipses].join(' '),
            caption: [
              ...(reference === undefined ? [] : [words.unusual]),
              ...measuredWays(analysis, sex, words),
              words.postureNote[posture],
            ].join(' '),
          }}
          draw={(theme) => drawVectorGraph(spec, theme)}
          alternative={describeVectorGraph(spec, context.words)}
          table={tableVectorGraph(spec, context)}
          fileName="vectors"
          onOpenPoint={(key) => {
            openPath(`/client/?c=${key}`);
          }}
          onActivePoint={onActive}
        />
      </LinkedPoints>
    </div>
  );
};
