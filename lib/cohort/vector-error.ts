import type { Engine, Row } from '../engine/types';
import { bivariateComponents, type BivariateComponents } from '../stats/bivariate-components';
import type { Covariance2 } from '../stats/bivariate';
import type { ThresholdConvention } from '../stats/threshold-factor';
import type { CohortModel } from './model';
import type { Settings } from './settings';
import { vectorBetweenQuery, vectorWithinQuery } from './sql/vector-error-sql';
import type { Matrix2 } from './types/vector-analysis';
import type { VectorError } from './types/vector-change';

/** Below this an own error says too little, as for single values. */
const LEAST_DF = 10;
const FIRM_DF = 30;
const FIRM_PEOPLE = 15;

/** The error study of the vector: its matrices, and as it is shown. */
export interface MeasuredVectorError {
  readonly components: BivariateComponents;
  readonly convention: ThresholdConvention;
  readonly shown: VectorError;
}

const at = (row: Row | undefined, name: string): number => Number(row?.[name] ?? 0);

const sumsOf = (row: Row | undefined): Covariance2 => ({ xx: at(row, 'sxx'), xy: at(row, 'sxy'), yy: at(row, 'syy') });

export const matrixOf = ({ xx, xy, yy }: Covariance2): Matrix2 => [
  [xx, xy],
  [xy, yy],
];

/** The error of R/H and Xc/H together from the clinic's study; undefined under ten degrees of freedom between days. */
export const readVectorError = async (
  engine: Engine,
  model: CohortModel,
  settings: Settings,
): Promise<MeasuredVectorError | undefined> => {
  const [within] = await engine.query(vectorWithinQuery);
  const [between] = await engine.query(vectorBetweenQuery(model));
  // A sum of fractions that is a whole number.
  const [dfWithin, dfBetween] = [Math.round(at(within, 'df')), Math.round(at(between, 'df'))];
  if (dfBetween < LEAST_DF) return undefined;
  const components = bivariateComponents({
    within: sumsOf(within),
    dfWithin,
    between: sumsOf(between),
    dfBetween,
    sumReciprocalReadings: at(between, 'ik'),
  });
  if (components === undefined) return undefined;
  const people = at(between, 'people');
  const firm = dfBetween >= FIRM_DF;
  return {
    components,
    convention: settings.errorSource.alwaysT && !(firm && people < FIRM_PEOPLE) ? 'always-t' : 'conventional',
    shown: {
      people,
      df: dfBetween,
      dfWithin,
      h: components.repositioningShare,
      repositioning: matrixOf(components.repositioning),
      meanSquare: matrixOf(components.meanSquare),
      dayToDay: matrixOf(components.dayToDay),
      provisional: !firm || people < FIRM_PEOPLE,
    },
  };
};
