import type { PrecisionSums } from '../../lib/stats/variance-components';

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

const squares = (values: readonly number[]): number => {
  const centre = mean(values);
  return values.reduce((sum, value) => sum + (value - centre) ** 2, 0);
};

/** Client → visits → readings. */
export type Readings = readonly (readonly (readonly number[])[])[];

/** The sums of a precision study, straight from their definitions; every client is one cluster. */
export const sumsOfReadings = (clients: Readings): PrecisionSums => {
  const visits = clients.flat();
  const clusters = clients.filter((client) => client.length >= 2);
  const total = (terms: readonly number[]): number => terms.reduce((sum, term) => sum + term, 0);
  return {
    sumWithin: total(visits.map(squares)),
    dfWithin: total(visits.map((readings) => readings.length - 1)),
    sumBetween: total(clusters.map((client) => squares(client.map(mean)))),
    dfBetween: total(clusters.map((client) => client.length - 1)),
    sumReciprocalReadings: total(
      clusters.map((client) => (client.length - 1) * mean(client.map((readings) => 1 / readings.length))),
    ),
  };
};
