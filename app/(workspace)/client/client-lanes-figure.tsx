'use client';

import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import { describeTimeLanes, tableTimeLanes } from '../../../lib/figures/time-lanes/describe';
import { drawTimeLanes } from '../../../lib/figures/time-lanes/draw';
import { buildTimeLanes } from '../../../lib/figures/time-lanes/spec';
import type { MeasureId } from '../../../lib/measures/measure-id';
import { useFilter } from '../../_state/use-filter';
import { useSession } from '../../_state/workspace-provider';
import { FigureFrame } from '../../_ui/figure-frame';
import { useNarrow } from '../../_ui/use-narrow';
import type { Wording } from '../contact/change-phrase';
import { useWording } from '../contact/use-wording';
import { clientLanes, followedVisits } from './client-lanes';
import { currentChange } from '../../../lib/workspace/current-change';

const captionOf = (detail: ClientDetail, ids: readonly MeasureId[], level: number, wording: Wording): string => {
  const words = wording.messages.client;
  const errors = ids.flatMap((id) => {
    const lsc = currentChange(detail, id)?.lsc ?? null;
    const value = wording.valueWords(id);
    return lsc === null ? [] : [words.laneError({ value: value.name, lsc: value.amount(lsc) })];
  });
  const medication = followedVisits(detail).filter(({ conditions }) => conditions.medication === 'not-met');
  const left = detail.visits.length - followedVisits(detail).length;
  const said = words.lanesCaption({
    errors: errors.length === 0 ? words.noErrors : wording.formatters.list(errors),
    level,
  });
  return [
    said,
    ...(medication.length === 0
      ? []
      : [words.medicationDates({ dates: medication.map(({ date }) => wording.formatters.dateShort(date)) })]),
    ...(left === 0 ? [] : [words.leftOut({ n: left })]),
  ].join(' ');
};

/** More visits than stand side by side on a telephone are scrolled. */
const FEW_VISITS = 8;

const narrowWidth = (visits: number): number => (visits <= FEW_VISITS ? 310 : 560);

/** Weight, the clinic's lean value, phase angle and the chosen value, one above the other on one time axis. */
export const ClientLanesFigure = ({
  detail,
  measure,
}: {
  readonly detail: ClientDetail;
  readonly measure: MeasureId;
}) => {
  const wording = useWording();
  const { messages, formatters, valueWords } = wording;
  const { cohort } = useSession();
  const { filter } = useFilter();
  const narrow = useNarrow();
  const ids = [...new Set<MeasureId>(['weight', cohort.lean, 'phase_angle', measure])];
  const data = clientLanes(detail, ids.map(valueWords), messages, cohort.guards);
  const spec = buildTimeLanes(data, {
    formatters,
    words: messages.figures,
    width: narrow ? narrowWidth(data.visits.length) : 780,
  });
  const first = data.visits[0];
  const last = data.visits[data.visits.length - 1];
  return (
    <div className="sheet">
      <FigureFrame
        frame={{
          title: messages.client.lanes,
          subtitle:
            first === undefined || last === undefined
              ? ''
              : messages.client.lanesSubtitle({
                  visits: data.visits.length,
                  from: formatters.date(first.date),
                  to: formatters.date(last.date),
                }),
          caption: captionOf(detail, ids, filter.level, wording),
        }}
        draw={(theme) => drawTimeLanes(spec, theme)}
        alternative={describeTimeLanes(spec, messages.figures)}
        table={tableTimeLanes(spec, messages.figures)}
        fileName="client-over-time"
      />
    </div>
  );
};
