'use client';

import type { ReactNode } from 'react';
import { daysBetween } from '../../../lib/core/iso-date';
import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import type { MeasureId } from '../../../lib/measures/measure-id';
import { useSession } from '../../_state/workspace-provider';
import { Sentence } from '../../_ui/sentence';
import { shownName } from '../../../lib/workspace/client-marks';
import { useWording } from '../contact/use-wording';
import { ChosenBaseline } from './chosen-baseline';
import { currentChange } from '../../../lib/workspace/current-change';
import { sinceWhen } from './since-when';
import { useClientMarks } from './use-client-marks';

const LONG_UNSEEN_DAYS = 42;

interface ClientHeadProps {
  readonly detail: ClientDetail;
  readonly measure: MeasureId;
  /** What can be done with the page. */
  readonly actions?: ReactNode;
}

/** Who, since when, and what has to be known before reading on. */
export const ClientHead = ({ detail, measure, actions }: ClientHeadProps) => {
  const wording = useWording();
  const { messages, formatters } = wording;
  const words = messages.client;
  const { cohort, settings } = useSession();
  const { finding, more } = sinceWhen(detail, measure, wording);
  const marks = useClientMarks(detail.client);
  const name = shownName(marks, detail);
  const alsoKnownAs = marks['also-known-as']?.value;
  const goal = marks.goal?.value;
  const height = detail.seriesHeightCm === null ? null : formatters.height(detail.seriesHeightCm);
  const last = detail.visits[detail.visits.length - 1];
  const unseen = last === undefined ? 0 : daysBetween(last.date, cohort.summary.asOf);
  const sex = detail.sexForEquations;
  const change = currentChange(detail, measure);
  const error = cohort.precision(settings.level).find((row) => row.measure === measure);
  const isProvisional =
    change?.tier === 2 || (change?.tier === 1 && change.errorGroup === null && error?.provisional === true);
  const says = [
    ...more,
    ...(isProvisional ? [words.provisional] : []),
    ...(cohort.errorFrom === 'everyone' || change === undefined || change.lsc === null || change.guard === 'stop'
      ? []
      : [words.errorOf({ group: change.errorGroup, by: cohort.errorFrom })]),
    ...(last !== undefined && unseen > LONG_UNSEEN_DAYS
      ? [words.notSeenSince({ date: formatters.date(last.date), weeks: Math.floor(unseen / 7) })]
      : []),
    ...(detail.sexesRecorded.length > 1 && sex !== null
      ? [words.sexes({ recorded: formatters.list(detail.sexesRecorded), used: words.sexWord[sex] })]
      : []),
  ];
  return (
    <Sentence
      overline={
        <>
          <strong>
            <bdi>{detail.client}</bdi>
          </strong>
          {name === null ? null : (
            <>
              {' · '}
              <bdi>{name}</bdi>
            </>
          )}
          {alsoKnownAs === undefined ? null : (
            <>
              {' · '}
              <bdi>{messages.clientOwn.knownAs({ names: alsoKnownAs })}</bdi>
            </>
          )}
          {' · '}
          {words.who({ sex, age: detail.ageAtLatest, height })}
        </>
      }
      detail={
        <>
          {goal === undefined ? null : (
            <p className="serif">
              <bdi>“{goal}”</bdi>
            </p>
          )}
          {says.length === 0 ? null : <p>{says.join(' ')}</p>}
          {detail.enrolments.map((enrolment) => (
            <p key={`${enrolment.program} ${enrolment.start ?? ''}`}>
              <bdi>
                {words.enrolment({
                  program: enrolment.program,
                  start: enrolment.start === null ? null : formatters.date(enrolment.start),
                  end: enrolment.end === null ? null : formatters.date(enrolment.end),
                  reason: enrolment.endReason === null ? null : words.endReason({ code: enrolment.endReason }),
                })}
              </bdi>
              {enrolment.baseline === null
                ? null
                : `. ${(enrolment.lateBaseline ? words.baselineLate : words.baselineOn)({ date: formatters.date(enrolment.baseline) })}`}
            </p>
          ))}
          {detail.enrolments.map((enrolment) => (
            <ChosenBaseline
              key={`${enrolment.program} ${enrolment.start ?? ''}`}
              client={detail.client}
              enrolment={enrolment}
            />
          ))}
        </>
      }
      actions={actions}
    >
      {finding}
    </Sentence>
  );
};
