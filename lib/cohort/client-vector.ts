import { eigen2x2 } from '../stats/eigen-2x2';
import type { Covariance2 } from '../stats/bivariate';
import { covarianceFromSums } from '../stats/covariance-from-sums';
import { ellipse } from '../stats/ellipse';
import { fluidAndCellAxes, type AxisPart } from '../stats/fluid-and-cell-axes';
import { thresholdFactor } from '../stats/threshold-factor';
import type { CohortModel } from './model';
import { newestChange } from './newest-change';
import type { Ask } from './question';
import { clientVectorsQuery, othersSumsQuery } from './sql/vector-change-sql';
import type { CohortFilter, Level } from './types/filter';
import type { Matrix2 } from './types/vector-analysis';
import type { ClientVectorPath, VectorChangeRow, VectorPart } from './types/vector-change';
import { vectorChangesOf } from './vector-changes';
import type { MeasuredVectorError } from './vector-error';

/** From so many degrees of freedom on, the direction of the day-to-day change is looked at. */
const DF_TO_LEARN_AXIS = 30;

const covarianceOf = ([[xx, xy], [, yy]]: Matrix2): Covariance2 => ({ xx, xy, yy });

/** Direction of the day-to-day change in the plane of SD units, degrees from the fluid axis at 45°. */
const dayAxis = ({ components }: MeasuredVectorError, people: Covariance2): number | null => {
  const { dayToDay, df } = components;
  if (df < DF_TO_LEARN_AXIS) return null;
  const [sx, sy] = [Math.sqrt(people.xx), Math.sqrt(people.yy)];
  const inUnits = { xx: dayToDay.xx / people.xx, xy: dayToDay.xy / (sx * sy), yy: dayToDay.yy / people.yy };
  return eigen2x2(inUnits).angleDeg - 45;
};

const partsOf = (
  change: VectorChangeRow,
  error: MeasuredVectorError | undefined,
  others: { readonly n: number; readonly cov: Covariance2 } | undefined,
  level: Level,
): ClientVectorPath['parts'] => {
  const isJudged = change.result === 'beyond' || change.result === 'within';
  if (!isJudged || change.variance === null || error === undefined || others === undefined) return null;
  const axes = fluidAndCellAxes(change.change, covarianceOf(change.variance), others.cov);
  if (axes === undefined) return null;
  const factor = thresholdFactor(level / 100, error.components.df, error.convention);
  const part = ({ value, variance }: AxisPart): VectorPart => {
    const lsc = factor * Math.sqrt(variance);
    return { value, lsc, beyond: value !== 0 && Math.abs(value) >= lsc * (1 - 1e-9) };
  };
  return { fluid: part(axes.fluid), cell: part(axes.cell), n: others.n, dayAxisDeg: dayAxis(error, others.cov) };
};

/** One client's vectors, which of them may be joined, and the change from baseline against the error of both together. */
export const clientVectorOf = async (
  ask: Ask,
  model: CohortModel,
  error: MeasuredVectorError | undefined,
  filter: CohortFilter,
  options: { readonly clientKey: number; readonly signal?: AbortSignal | undefined },
): Promise<ClientVectorPath> => {
  const vectors = await ask(clientVectorsQuery(model), filter, options);
  const steps = await vectorChangesOf(ask, model, error, filter, { purpose: 'consecutive', ...options });
  const changes = await vectorChangesOf(ask, model, error, filter, { purpose: 'baseline-latest', ...options });
  const [row] = await ask(othersSumsQuery(model), filter, options);
  const at = (name: string): number => Number(row?.[name] ?? 0);
  const others = covarianceFromSums({
    n: at('n'),
    mean: [at('mx'), at('my')],
    sxx: at('sxx'),
    sxy: at('sxy'),
    syy: at('syy'),
  });
  const change = newestChange(changes);
  const isJudged = change?.result === 'beyond' || change?.result === 'within';
  return {
    vectors: vectors.map((vector, index) => {
      const before = vectors[index - 1];
      const step = steps.find(
        ({ fromVisit, toVisit }) => fromVisit === before?.['visit_no'] && toVisit === vector['visit_no'],
      );
      return {
        visit: Number(vector['visit_no']),
        rh: Number(vector['x']),
        xch: Number(vector['y']),
        phaseAngle: Number(vector['phase_angle']),
        stopped: Number(vector['stops']) !== 0,
        joined: step !== undefined && step.comparable !== 'no' && step.guard !== 'stop',
      };
    }),
    change: change ?? null,
    ellipse:
      change === undefined || !isJudged || change.variance === null || change.threshold === null
        ? null
        : (ellipse({ mean: change.start, cov: covarianceOf(change.variance), factor: change.threshold }) ?? null),
    error: error?.shown ?? null,
    parts: change === undefined ? null : partsOf(change, error, others, filter.level),
  };
};
