import tQuantile from '@stdlib/stats-base-dists-t-quantile';
import { type ClientVisit } from './client-visit';
import { bmiOf, excessBetween } from './lean-excess';
import { errorNamed, type RealisedErrors } from './realised-error';
import { visitValue, type ValueName } from './visit-value';

type Quantity = ValueName | 'excess' | 'lean share';

/** A change from the first to the visit `to` of a planted client, as the specification prints it. */
interface PrintedChange {
  readonly id: string;
  readonly to: number;
  readonly quantity: Quantity;
  readonly value: number;
  /** How it stands to the threshold: beyond, within, or not said. */
  readonly against?: 'beyond' | 'within';
}

const printed = (
  id: string,
  to: number,
  quantity: Quantity,
  value: number,
  against?: 'beyond' | 'within',
): PrintedChange => ({
  id,
  to,
  quantity,
  value,
  ...(against === undefined ? {} : { against }),
});

const PRINTED: readonly PrintedChange[] = [
  printed('OM-0007', 1, 'ffm', -2.22, 'beyond'),
  printed('OM-0007', 1, 'phase angle', -0.17),
  printed('OM-0007', 1, 'impedance per height', 20.2),
  printed('OM-0019', 1, 'ffm', -2.74, 'beyond'),
  printed('OM-0019', 1, 'ffm without weight', -2.28, 'beyond'),
  printed('OM-0019', 1, 'phase angle', -0.04, 'within'),
  printed('OM-0019', 1, 'impedance per height', 27.4, 'beyond'),
  printed('OM-0023', 1, 'ffm', -0.9, 'within'),
  printed('OM-0023', 2, 'ffm', -2.84, 'beyond'),
  printed('OM-0023', 3, 'ffm', -3.58, 'beyond'),
  printed('OM-0023', 1, 'phase angle', -0.23),
  printed('OM-0023', 2, 'phase angle', -0.73, 'beyond'),
  printed('OM-0023', 3, 'phase angle', -0.9, 'beyond'),
  printed('OM-0023', 3, 'impedance per height', 25.5),
  printed('OM-0023', 3, 'ffm without weight', -3.24, 'beyond'),
  printed('OM-0031', 1, 'ffm', -1.2, 'within'),
  printed('OM-0052', 1, 'ffm', -2.08, 'beyond'),
  printed('OM-0052', 1, 'ffm without weight', 0, 'within'),
  printed('OM-0058', 2, 'ffm', -5.04, 'beyond'),
  printed('OM-0058', 2, 'ffm without weight', -3.2, 'beyond'),
  printed('OM-0058', 2, 'excess', -3.04),
  printed('OM-0058', 2, 'lean share', 63.0),
  printed('OM-0058', 2, 'phase angle', -0.81, 'beyond'),
  printed('OM-0058', 2, 'impedance per height', 20.8),
  printed('OM-0066', 1, 'ffm', -1.13),
  printed('OM-0071', 1, 'ffm', 0.37, 'within'),
  printed('OM-0101', 2, 'ffm', -0.04, 'within'),
  printed('OM-0112', 1, 'ffm', -0.04, 'within'),
  printed('OM-0112', 2, 'ffm', 0.04, 'within'),
  printed('OM-0140', 1, 'weight', -3.0, 'beyond'),
  printed('OM-0155', 2, 'ffm', -3.76, 'beyond'),
  printed('OM-0155', 2, 'excess', -2.88),
  printed('OM-0160', 1, 'exported ffm', -2.9),
];

const PRINTED_BMI: readonly (readonly [id: string, first: number, last: number])[] = [
  ['OM-0052', 32.1, 29.3],
  ['OM-0058', 33.1, 30.6],
  ['OM-0140', 47.0, 45.9],
  ['OM-0155', 31.9, 30.8],
];

const agrees = (value: number, shown: number, quantity: Quantity): boolean =>
  Math.abs(value - shown) <= (quantity === 'lean share' || quantity === 'impedance per height' ? 0.051 : 0.0051);

const changeOf = (quantity: Quantity, from: ClientVisit, to: ClientVisit): number => {
  const program = from.readings[0]?.row.program ?? '';
  if (quantity === 'excess') return excessBetween(program, from, to);
  if (quantity === 'lean share') return (100 * changeOf('ffm', from, to)) / changeOf('weight', from, to);
  return visitValue(quantity, to) - visitValue(quantity, from);
};

const visitsOf = (visits: readonly ClientVisit[], id: string): readonly ClientVisit[] =>
  visits.filter(({ client }) => client === id);

const printedFailures = (visits: readonly ClientVisit[], errors: RealisedErrors): string[] =>
  PRINTED.flatMap(({ id, to, quantity, value, against }) => {
    const own = visitsOf(visits, id);
    const [first, last] = [own[0], own[to]];
    if (first === undefined || last === undefined) return [`${id} lacks a visit.`];
    const found = changeOf(quantity, first, last);
    if (!agrees(found, value, quantity)) return [`${id}: ${quantity} changes by ${found.toFixed(3)}, not ${value}.`];
    if (against === undefined || quantity === 'excess' || quantity === 'lean share') return [];
    const { single } = errorNamed(errors, quantity);
    const beyond = Math.abs(found) >= single;
    return beyond === (against === 'beyond')
      ? []
      : [`${id}: ${quantity} ${found.toFixed(2)} is not ${against} ${single.toFixed(2)}.`];
  });

const bmiFailures = (visits: readonly ClientVisit[]): string[] =>
  PRINTED_BMI.flatMap(([id, first, last]) => {
    const own = visitsOf(visits, id).map(bmiOf);
    const found = [own[0], own.at(-1)];
    return [first, last].every((bmi, end) => Math.abs((found[end] ?? Number.NaN) - bmi) <= 0.051)
      ? []
      : [`${id}: BMI is not as printed.`];
  });

const nearThresholdFailures = (visits: readonly ClientVisit[], errors: RealisedErrors): string[] => {
  const [first, last] = visitsOf(visits, 'OM-0044');
  if (first === undefined || last === undefined) return ['OM-0044 lacks a visit.'];
  const ffm = errorNamed(errors, 'ffm');
  const size = Math.abs(changeOf('ffm', first, last));
  const midway = (ffm.single + ffm.double) / 2;
  const oneComponent = 1.959963984540054 * ffm.pe;
  return [
    ...(size > ffm.double && size < ffm.single ? [] : ['OM-0044 is not between the two thresholds.']),
    ...(Math.abs(size - midway) < 0.01 ? [] : [`OM-0044 changes by ${size.toFixed(3)}, not ${midway.toFixed(3)}.`]),
    ...(Math.abs(ffm.double - oneComponent) >= 0.001
      ? []
      : ['OM-0044: the two- and the one-component threshold agree.']),
    ...(['phase angle', 'impedance per height'] as const).flatMap((name) =>
      Math.abs(changeOf(name, first, last)) < errorNamed(errors, name).double
        ? []
        : [`OM-0044: ${name} is beyond error.`],
    ),
  ];
};

const exportedFailures = (visits: readonly ClientVisit[], errors: RealisedErrors): string[] => {
  const [first, last] = visitsOf(visits, 'OM-0160');
  const error = errorNamed(errors, 'exported ffm');
  if (first === undefined || last === undefined) return ['OM-0160 lacks a visit.'];
  const lsc = tQuantile(0.975, error.dayDf) * Math.sqrt(2 * (error.dayVariance + error.repositioningVariance));
  return [
    ...(error.dayDf < 30 && error.dayDf >= 10 ? [] : ['The exported FFM is not provisional.']),
    ...(Math.abs(changeOf('exported ffm', first, last)) >= lsc ? [] : ['OM-0160 is within error.']),
  ];
};

const smallChangeFailures = (visits: readonly ClientVisit[], errors: RealisedErrors): string[] => {
  const [first, last] = visitsOf(visits, 'OM-0031');
  if (first === undefined || last === undefined) return ['OM-0031 lacks a visit.'];
  return Math.abs(changeOf('ffm', first, last)) <= 0.75 * errorNamed(errors, 'ffm').single
    ? []
    : ['OM-0031 is too near the threshold.'];
};

/** What of the planted clients does not land where it was planned, in words. */
export const plantedFailures = (visits: readonly ClientVisit[], errors: RealisedErrors): string[] => [
  ...printedFailures(visits, errors),
  ...bmiFailures(visits),
  ...nearThresholdFailures(visits, errors),
  ...exportedFailures(visits, errors),
  ...smallChangeFailures(visits, errors),
];
