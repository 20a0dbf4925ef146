import { changePrior } from '../stats/change-prior';
import { confidenceFromError } from '../stats/confidence-from-error';
import { shrunkenChange } from '../stats/shrunken-change';
import type { CohortModel } from './model';
import type { Ask } from './question';
import { changePriorQuery } from './sql/change-prior-sql';
import type { ChangeConfidence } from './types/change-confidence';
import type { ChangeRow } from './types/change-row';
import type { CohortFilter } from './types/filter';
import type { PrecisionRow } from './types/precision-row';

/** Below this many people a program says too little about a typical change. */
const LEAST_PEOPLE = 30;
/** From this tier on there is no error to rely on: own repositioning alone is a lower limit. */
const LOWER_LIMIT_TIER = 5;

const isJudged = ({ result }: ChangeRow): boolean => result === 'up' || result === 'down' || result === 'within';

/** A value whose error is relative is looked at on logarithms; what others changed is not, so nothing stands beside it. */
const onLogarithms = (change: ChangeRow, { twoBetween, within }: PrecisionRow, df: number): ChangeConfidence | null => {
  if (twoBetween === null || within === null || !(change.valueFrom > 0 && change.valueTo > 0)) return null;
  const variance = twoBetween + within * (1 / change.kFrom + 1 / change.kTo);
  const fromError = confidenceFromError(Math.log(change.valueTo / change.valueFrom), variance, df);
  return fromError === undefined ? null : { fromError, df, beside: null };
};

/** How a client's change stands against error alone, and beside the changes of the others in the program. */
export const changeConfidenceOf = async (
  ask: Ask,
  model: CohortModel,
  precision: PrecisionRow | undefined,
  filter: CohortFilter,
  change: ChangeRow,
  signal?: AbortSignal,
): Promise<ChangeConfidence | null> => {
  if (!isJudged(change) || change.tier >= LOWER_LIMIT_TIER || change.lsc === null || change.change === 0) return null;
  if (precision?.factor === null || precision?.factor === undefined) return null;
  const { factor, form } = precision;
  const df = precision.outsideDf ?? precision.dfBetween;
  if (form === 'log') return onLogarithms(change, precision, df);
  const variance = (change.lsc / factor) ** 2;
  const fromError = confidenceFromError(change.change, variance, df);
  if (fromError === undefined) return null;
  const measure = model.catalogue.measure(change.measure);
  const rows = await ask(
    changePriorQuery(measure, model),
    { ...filter, program: change.program },
    {
      purpose: change.purpose,
      signal,
    },
  );
  const people = rows.reduce((sum, row) => sum + Number(row['people']), 0);
  const prior = changePrior(
    rows.map((row) => ({
      n: Number(row['n']),
      mean: Number(row['mean']),
      sumSquares: Number(row['ss']),
      variance: (Number(row['lsc']) / Number(row['factor'])) ** 2,
    })),
  );
  const guess =
    people < LEAST_PEOPLE || prior === undefined ? undefined : shrunkenChange(change.change, variance, prior);
  return {
    fromError,
    df,
    beside:
      guess === undefined || prior === undefined
        ? null
        : {
            program: change.program,
            people,
            mean: prior.mean,
            sd: Math.sqrt(prior.variance),
            guess: guess.change,
            guessSd: guess.sd,
            sameDirection: change.change < 0 ? guess.below : guess.above,
          },
  };
};
