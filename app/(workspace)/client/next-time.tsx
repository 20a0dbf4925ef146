'use client';

import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import type { MeasureId } from '../../../lib/measures/measure-id';
import { capitalised } from '../../_ui/capitalised';
import { useWording } from '../contact/use-wording';
import { followedVisits } from './client-lanes';
import { currentChange } from '../../../lib/workspace/current-change';

/** What has to be the same at the next visit, so that it can be compared with the baseline. */
export const NextTime = ({ detail, measure }: { readonly detail: ClientDetail; readonly measure: MeasureId }) => {
  const { messages, formatters } = useWording();
  const words = messages.client;
  const visits = followedVisits(detail);
  const baseline = visits.find(({ visit }) => visit === currentChange(detail, measure)?.fromVisit) ?? visits[0];
  if (baseline === undefined) return null;
  const { device, position, posture } = baseline;
  const same = [
    ...(device === null ? [] : [words.nextDevice({ device })]),
    ...(posture === null ? [] : [words.nextPosture({ posture })]),
    ...(position === null ? [] : [words.nextPosition({ position })]),
    words.nextSame,
    ...(detail.seriesHeightCm === null ? [] : [words.nextHeight({ height: formatters.height(detail.seriesHeightCm) })]),
  ];
  return (
    <section>
      <h2>{words.next}</h2>
      <p className="serif">
        <bdi>{capitalised(formatters.list(same))}.</bdi>
      </p>
      <p>{words.nextRest}</p>
    </section>
  );
};
