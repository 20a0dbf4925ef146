'use client';

import { useMemo } from 'react';
import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import { describeIndexChart, tableIndexChart } from '../../../lib/figures/index-chart/describe';
import { drawIndexChart } from '../../../lib/figures/index-chart/draw';
import { buildIndexChart } from '../../../lib/figures/index-chart/spec';
import { citationLine } from '../../../lib/measures/citation';
import { useValueFacts } from '../../_state/use-value-facts';
import { valueMark } from '../../_state/value-mark';
import { useSession } from '../../_state/workspace-provider';
import { FigureFrame } from '../../_ui/figure-frame';
import { useFigureContext } from '../../_ui/use-figure-context';
import { useNarrow } from '../../_ui/use-narrow';
import { useWording } from '../contact/use-wording';
import { clientIndexPath } from '../indices/client-index-path';
import { pathFinding } from '../indices/path-finding';

interface ClientIndexFigureProps {
  readonly detail: ClientDetail;
  readonly height?: number;
  /** Whether the equation and its source stand below; not where another figure of the same sheet names them. */
  readonly namesEquation?: boolean;
}

/** FFMI and FMI over the visits; a visit where composition is stopped has no point. */
export const ClientIndexFigure = ({ detail, height = 420, namesEquation = true }: ClientIndexFigureProps) => {
  const wording = useWording();
  const { messages, formatters } = wording;
  const { cohort } = useSession();
  const words = messages.clientVector.index;
  const facts = useValueFacts('ffmi', 'fmi');
  const context = useFigureContext({ width: useNarrow() ? 330 : 520, height });
  const shown = useMemo(
    () => clientIndexPath(detail, cohort.guards, messages.indices, formatters),
    [cohort, detail, messages, formatters],
  );
  const spec = useMemo(() => buildIndexChart({ groups: [], path: shown.path }, context), [shown, context]);
  if (shown.path.length === 0) return null;
  const equation = cohort.catalogue.equations.ffm;
  const level = cohort.summary.posture === 'lying' ? messages.indices.levels : messages.indices.forChange;
  return (
    <FigureFrame
      frame={{
        title: words.title,
        subtitle: words.subtitle,
        caption: [
          ...(namesEquation
            ? [
                messages.indices.equation({
                  name: equation.name,
                  source: citationLine(equation.citation),
                  mark: valueMark(cohort.catalogue.measure('ffmi'), messages.methods.mark) ?? null,
                }),
              ]
            : []),
          level,
          ...(shown.held ? [words.held] : []),
          ...(shown.stopped === 0 ? [] : [words.stopped({ n: shown.stopped })]),
        ].join(' '),
      }}
      draw={(theme) => drawIndexChart(spec, theme)}
      alternative={describeIndexChart(spec, context.words)}
      table={tableIndexChart(spec, context)}
      fileName={words.fileName}
      facts={facts}
    >
      <p className="serif">{pathFinding(detail, wording, 'unnamed')}</p>
    </FigureFrame>
  );
};
