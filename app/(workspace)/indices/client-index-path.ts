import type { ClientDetail, ClientVisit } from '../../../lib/cohort/types/client-detail';
import type { Cohort } from '../../../lib/cohort/types/cohort';
import type { Formatters } from '../../../lib/core/formatters';
import type { indices } from '../../../lib/core/messages/en/indices';
import type { PathPoint } from '../../../lib/figures/scatter';
import type { GuardCode } from '../../../lib/measures/guard';
import { followedVisits } from '../client/client-lanes';

type Words = ReturnType<typeof indices>;

/** A client's places on the chart, and what a reader of them has to know. */
export interface ClientIndexPath {
  readonly path: readonly PathPoint[];
  /** Visits left out because composition is stopped there. */
  readonly stopped: number;
  /** At least one visit has values from which no level may be read. */
  readonly held: boolean;
}

const codesOf = (visit: ClientVisit): readonly GuardCode[] => [...visit.guards, ...(visit.outsideEquation.ffmi ?? [])];

const isOutsideRange = ({ values }: ClientVisit): boolean =>
  values.bmi !== undefined && (values.bmi < 16 || values.bmi > 34);

/**
 * One client's visits in order of date: hollow where not comparable with the baseline, joined where the fat-free mass
 * index of two successive visits may be compared. A visit where composition is stopped has no point, and nothing is
 * joined across it.
 */
export const clientIndexPath = (
  detail: ClientDetail,
  guardsOf: Cohort['guards'],
  words: Words,
  f: Formatters,
): ClientIndexPath => {
  const { stop, hold } = guardsOf('ffmi');
  const placed = followedVisits(detail).flatMap((visit) => {
    const { ffmi, fmi } = visit.values;
    return ffmi === undefined || fmi === undefined ? [] : [{ visit, ffmi, fmi }];
  });
  const kept = placed.filter(({ visit }) => !codesOf(visit).some((code) => stop.includes(code)));
  const isJoined = (from: ClientVisit | undefined, to: ClientVisit): boolean =>
    detail.indexSteps.some(
      (step) =>
        step.fromVisit === from?.visit &&
        step.toVisit === to.visit &&
        step.comparable !== 'no' &&
        step.guard !== 'stop',
    );
  return {
    path: kept.map(({ visit, ffmi, fmi }, at) => ({
      key: `visit-${visit.visit}`,
      x: ffmi,
      y: fmi,
      label: words.pathLabel({ date: f.dateShort(visit.date), ffmi, fmi }),
      dateLabel: f.dateShort(visit.date),
      comparable: visit.comparableWithBaseline !== 'no',
      joined: isJoined(kept[at - 1]?.visit, visit),
    })),
    stopped: placed.length - kept.length,
    held: kept.some(({ visit }) => isOutsideRange(visit) || codesOf(visit).some((code) => hold.includes(code))),
  };
};
