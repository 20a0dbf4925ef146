import { addDays, type IsoDate } from '../core/iso-date';
import type { ProgramSettings } from './settings-parts/program-settings';
import type { ClientDetail, ClientEnrolment } from './types/client-detail';

interface Planned {
  readonly enrolments: readonly Pick<ClientEnrolment, 'program' | 'start' | 'end'>[];
  readonly visits: ClientDetail['visits'];
}

/**
 * The first visit that the client's running programs plan after as-of and after the last visit; undefined where none is
 * planned.
 */
export const nextPlannedVisit = (
  { enrolments, visits }: Planned,
  programs: readonly ProgramSettings[],
  asOf: IsoDate,
): IsoDate | undefined => {
  const last = visits.at(-1)?.date ?? asOf;
  const after = last > asOf ? last : asOf;
  const planned = enrolments.flatMap(({ program, start, end }) =>
    start === null || (end !== null && end <= asOf)
      ? []
      : (programs.find(({ name }) => name === program)?.plannedVisitWeeks ?? []).map((week) =>
          addDays(start, Math.round(week * 7)),
        ),
  );
  return planned.filter((date) => date > after).toSorted()[0];
};
