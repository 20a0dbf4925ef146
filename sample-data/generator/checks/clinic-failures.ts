import { LAST_DAY } from '../calendar';
import { type Clinic } from '../build-clinic';
import { clientVisits } from './client-visit';
import { bmiOf, recentExcesses } from './lean-excess';
import { lossSurfaces } from './loss-surfaces';
import { plantedFailures } from './planted-landing';
import { programVisits } from './program-visits';
import { bandFailures, realisedErrors } from './realised-error';
import { strictlyComparable } from './strictly-comparable';
import { usableReadings } from './usable-reading';

const HEAD_OF_LIST = 'OM-0023';

/** Everything that makes a seed unfit for the demo clinic, in words; empty for a fit one. */
export const clinicFailures = ({ rows, people }: Clinic): string[] => {
  const visits = clientVisits(usableReadings(rows.map(({ row }) => row)));
  const errors = realisedErrors(visits);
  const enrolments = programVisits(visits);
  const [head] = recentExcesses(enrolments);
  const study = visits.filter(({ purpose }) => purpose === 'precision');
  const uneven = study.filter((visit, index) => {
    const next = study[index + 1];
    return next !== undefined && next.client === visit.client && !strictlyComparable(visit, next);
  });
  const losers = new Set(people.filter(({ loser }) => loser).map(({ id }) => id));
  const outside = visits.filter((visit) => losers.has(visit.client) && (bmiOf(visit) < 20 || bmiOf(visit) > 33));
  const hidden = enrolments.filter((enrolment) => losers.has(enrolment.client) && !lossSurfaces(enrolment, errors));
  return [
    ...bandFailures(errors),
    ...plantedFailures(visits, errors),
    ...(head?.client === HEAD_OF_LIST
      ? []
      : [`${head?.client ?? 'Nobody'} stands at the head of the list with ${head?.excess.toFixed(2) ?? ''}.`]),
    ...(losers.size === 18 ? [] : [`${losers.size} hidden losers instead of 18.`]),
    ...outside.map(({ client }) => `The hidden loser ${client} leaves BMI 20–33.`),
    ...hidden.map(({ client }) => `The loss of ${client} never surfaces.`),
    ...uneven.map(({ client }) => `The pair of ${client} in the error study is not comparable.`),
    ...(Math.max(...visits.map(({ day }) => day)) === LAST_DAY ? [] : ['Nobody was seen on the last day.']),
    ...(new Set(visits.map(({ client }) => client)).size === 600 ? [] : ['There are not 600 clients.']),
  ];
};
