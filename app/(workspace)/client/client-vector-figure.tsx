'use client';

import { useMemo } from 'react';
import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import { describeVectorGraph, tableVectorGraph } from '../../../lib/figures/vector-graph/describe';
import { drawVectorGraph } from '../../../lib/figures/vector-graph/draw';
import { buildVectorGraph } from '../../../lib/figures/vector-graph/spec';
import { useFilter } from '../../_state/use-filter';
import { FigureFrame } from '../../_ui/figure-frame';
import { useFigureContext } from '../../_ui/use-figure-context';
import { useNarrow } from '../../_ui/use-narrow';
import { useWording } from '../contact/use-wording';
import { vectorCaption, vectorFinding } from './vector-finding';
import { vectorPathFigure } from './vector-path';

interface ClientVectorFigureProps {
  readonly detail: ClientDetail;
  readonly height?: number;
}

/** R/H and Xc/H over the visits, with the client's own error around the baseline. */
export const ClientVectorFigure = ({ detail, height = 420 }: ClientVectorFigureProps) => {
  const wording = useWording();
  const { filter } = useFilter();
  const words = wording.messages.clientVector;
  const context = useFigureContext({ width: useNarrow() ? 330 : 520, height });
  const spec = useMemo(
    () => buildVectorGraph(vectorPathFigure(detail, filter.level, words, context.formatters), context),
    [detail, filter.level, words, context],
  );
  if (detail.vector.vectors.length === 0) return null;
  return (
    <FigureFrame
      frame={{
        title: words.title,
        subtitle: words.subtitle({ level: filter.level, drawn: detail.vector.ellipse !== null }),
        caption: vectorCaption(detail, wording),
      }}
      draw={(theme) => drawVectorGraph(spec, theme)}
      alternative={describeVectorGraph(spec, context.words)}
      table={tableVectorGraph(spec, context)}
      fileName={words.fileName}
    >
      <p className="serif">{vectorFinding(detail, wording)}</p>
    </FigureFrame>
  );
};
