import { dayOf, LAST_DAY } from '../calendar';
import { programNamed, type Program, type ProgramName } from '../programs';
import { type ClientVisit } from './client-visit';

/** One client's program as the file tells it, with the client's visits that changes are made from. */
export interface ProgramVisits {
  readonly client: string;
  readonly program: Program;
  readonly start: number;
  /** Infinity while it is open. */
  readonly end: number;
  readonly visits: readonly ClientVisit[];
}

/** Every enrolment in the visits, by client and start. */
export const programVisits = (visits: readonly ClientVisit[]): ProgramVisits[] => {
  const changes = visits.filter(({ purpose }) => purpose === 'routine' || purpose === 'repeat');
  const byClient = new Map<string, ClientVisit[]>();
  for (const visit of changes) byClient.set(visit.client, [...(byClient.get(visit.client) ?? []), visit]);
  return [...byClient].flatMap(([client, own]) => {
    const enrolments = new Map<string, ProgramVisits>();
    for (const visit of own) {
      const row = visit.readings[0]?.row;
      if (row === undefined) continue;
      const program = programNamed(row.program as ProgramName);
      const end = row.program_end === '' ? Infinity : dayOf(row.program_end);
      enrolments.set(`${row.program} ${row.program_start}`, {
        client,
        program,
        start: dayOf(row.program_start),
        end,
        visits: own,
      });
    }
    return [...enrolments.values()];
  });
};

/** The last visit in [start − 30 d, start]; else the first in (start, start + 7 d]. */
export const baselineOf = ({ visits, start }: ProgramVisits): ClientVisit | undefined =>
  visits.filter(({ day }) => day >= start - 30 && day <= start).at(-1) ??
  visits.find(({ day }) => day > start && day <= start + 7);

/** The last visit after the baseline, not after the program's end. */
export const latestOf = (enrolment: ProgramVisits): ClientVisit | undefined => {
  const baseline = baselineOf(enrolment);
  const last = Math.min(enrolment.end, LAST_DAY);
  return baseline === undefined
    ? undefined
    : enrolment.visits.filter(({ day }) => day > baseline.day && day <= last).at(-1);
};

/** The closest visit in the window of a review; of two as close, the earlier. */
export const reviewVisit = (
  { visits, start }: ProgramVisits,
  { week, windowWeeks }: Program['reviews'][number],
): ClientVisit | undefined => {
  const target = start + 7 * week;
  const distance = (visit: ClientVisit): number => Math.abs(visit.day - target);
  return visits
    .filter((visit) => distance(visit) <= 7 * windowWeeks)
    .reduce<ClientVisit | undefined>(
      (best, visit) => (best === undefined || distance(visit) < distance(best) ? visit : best),
      undefined,
    );
};
