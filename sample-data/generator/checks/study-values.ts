import { type VisitRow } from '../visit-row';
import { clientVisits, type ClientVisit } from './client-visit';
import { usableReadings } from './usable-reading';
import { meanOf, readingValues, type ValueName } from './visit-value';

/** Two-sided 95 % point of the normal distribution. */
const Z = 1.959963984540054;

const CLUSTER_DAYS = 7;

/** Error of one value in two components, and what follows from it. */
export interface ErrorOfValue {
  readonly repositioningVariance: number;
  readonly repositioningDf: number;
  readonly dayVariance: number;
  readonly dayDf: number;
  readonly clients: number;
  /** √(σ_b² + σ_w²): the error of one reading. */
  readonly pe: number;
  /** LSC of one reading against one, and of two against two. */
  readonly single: number;
  readonly double: number;
  /** What a threshold without the day component would be: one reading against one. */
  readonly repositioningOnly: number;
}

interface Sum {
  readonly squares: number;
  readonly df: number;
}

const spread = (values: readonly number[]): Sum => {
  const mean = meanOf(values);
  return { squares: values.reduce((sum, value) => sum + (value - mean) ** 2, 0), df: values.length - 1 };
};

const total = (sums: readonly Sum[]): Sum =>
  sums.reduce((all, next) => ({ squares: all.squares + next.squares, df: all.df + next.df }), { squares: 0, df: 0 });

/** Clusters of `precision` visits: from the first unused one, all within seven days after it. */
const clustersOf = (visits: readonly ClientVisit[]): ClientVisit[][] => {
  const clusters: ClientVisit[][] = [];
  for (const visit of visits) {
    const open = clusters.at(-1);
    const first = open?.[0];
    const joins = first !== undefined && first.client === visit.client && visit.day - first.day <= CLUSTER_DAYS;
    if (joins && open !== undefined) open.push(visit);
    else clusters.push([visit]);
  }
  return clusters.filter((cluster) => cluster.length >= 2);
};

/** The error of a value from the visits, by the sums of squares alone; every decimal column is recorded to 0.1. */
export const errorOfValue = (
  name: ValueName,
  visits: readonly ClientVisit[],
  ofStudy: (visit: ClientVisit) => boolean = () => true,
): ErrorOfValue => {
  const held = visits
    .map((visit) => ({ visit, values: readingValues(name, visit) }))
    .filter(({ values }) => values.length > 0);
  const within = total(held.filter(({ visit }) => visit.purpose !== 'crosscheck').map(({ values }) => spread(values)));
  const floor = ['weight', 'r', 'xc', 'exported ffm'].includes(name) ? 0.01 / 12 : 0;
  const repositioningVariance = Math.max(floor, within.squares / within.df);
  const precision = held
    .filter(({ visit }) => visit.purpose === 'precision' && ofStudy(visit))
    .map(({ visit }) => visit);
  const clusters = clustersOf(precision).map((cluster) => cluster.map((visit) => readingValues(name, visit)));
  const between = total(clusters.map((cluster) => spread(cluster.map(meanOf))));
  const weighted = clusters.reduce(
    (sum, cluster) => sum + (cluster.length - 1) * meanOf(cluster.map((v) => 1 / v.length)),
    0,
  );
  const dayVariance = Math.max(0, between.squares / between.df - (weighted / between.df) * repositioningVariance);
  const lsc = (k: number): number => Z * Math.sqrt(2 * dayVariance + (repositioningVariance * 2) / k);
  return {
    repositioningVariance,
    repositioningDf: within.df,
    dayVariance,
    dayDf: between.df,
    clients: clusters.length,
    pe: Math.sqrt(dayVariance + repositioningVariance),
    single: lsc(1),
    double: lsc(2),
    repositioningOnly: Z * Math.sqrt(2 * repositioningVariance),
  };
};

/** The realised error of computed FFM in a file. */
export const lscOfFfm = (rows: readonly VisitRow[]): ErrorOfValue =>
  errorOfValue('ffm', clientVisits(usableReadings(rows)));
