'use client';

import { useMemo } from 'react';
import type { ClientDetail, ClientVisit } from '../../../lib/cohort/types/client-detail';
import { describeIndexChart, tableIndexChart } from '../../../lib/figures/index-chart/describe';
import { drawIndexChart } from '../../../lib/figures/index-chart/draw';
import { buildIndexChart } from '../../../lib/figures/index-chart/spec';
import type { GuardCode } from '../../../lib/measures/guard';
import { useSession } from '../../_state/workspace-provider';
import { FigureFrame } from '../../_ui/figure-frame';
import { useFigureContext } from '../../_ui/use-figure-context';
import { useNarrow } from '../../_ui/use-narrow';
import { useWording } from '../contact/use-wording';
import { indexPath } from '../indices/indices-figure';
import { pathFinding } from '../indices/path-finding';
import { followedVisits } from './client-lanes';

const codesOf = (visit: ClientVisit): readonly GuardCode[] => [...visit.guards, ...(visit.outsideEquation.ffmi ?? [])];

const isOutsideRange = ({ values }: ClientVisit): boolean =>
  values.bmi !== undefined && (values.bmi < 16 || values.bmi > 34);

interface ClientIndexFigureProps {
  readonly detail: ClientDetail;
  readonly height?: number;
}

/** FFMI and FMI over the visits; a visit where composition is stopped has no point. */
export const ClientIndexFigure = ({ detail, height = 420 }: ClientIndexFigureProps) => {
  const { messages, formatters } = useWording();
  const { cohort } = useSession();
  const words = messages.clientVector.index;
  const context = useFigureContext({ width: useNarrow() ? 330 : 520, height });
  const shown = useMemo(() => {
    const { stop, hold } = cohort.guards('ffmi');
    const followed = followedVisits(detail).filter(({ values }) => values.ffmi !== undefined);
    const kept = followed.filter((visit) => !codesOf(visit).some((code) => stop.includes(code)));
    return {
      path: indexPath({ ...detail, visits: kept }, messages.indices, formatters),
      stopped: followed.length - kept.length,
      held: kept.some((visit) => isOutsideRange(visit) || codesOf(visit).some((code) => hold.includes(code))),
    };
  }, [cohort, detail, messages, formatters]);
  const spec = useMemo(() => buildIndexChart({ groups: [], path: shown.path }, context), [shown, context]);
  if (shown.path.length === 0) return null;
  const level = cohort.summary.posture === 'lying' ? messages.indices.levels : messages.indices.forChange;
  return (
    <FigureFrame
      frame={{
        title: words.title,
        subtitle: words.subtitle,
        caption: [
          level,
          ...(shown.held ? [words.held] : []),
          ...(shown.stopped === 0 ? [] : [words.stopped({ n: shown.stopped })]),
        ].join(' '),
      }}
      draw={(theme) => drawIndexChart(spec, theme)}
      alternative={describeIndexChart(spec, context.words)}
      table={tableIndexChart(spec, context)}
      fileName={words.fileName}
    >
      <p className="serif">
        <bdi>{pathFinding(detail, shown.path, messages.indices, formatters)}</bdi>
      </p>
    </FigureFrame>
  );
};
