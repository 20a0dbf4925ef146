import type { MeasureId } from '../measures/measure-id';
import type { CohortModel } from './model';
import type { CohortSummary } from './types/cohort-summary';

/** What a clinic that measures standing reads first: nothing whose level rests on an equation made lying. */
const STANDING_FIRST: readonly MeasureId[] = ['weight', 'r_h', 'xc_h', 'phase_angle', 'ffm_exported'];

/** The values in the order of the lists: where all is measured standing, those first whose levels can be read. */
export const listedMeasures = (
  { catalogue }: CohortModel,
  { posture }: Pick<CohortSummary, 'posture'>,
): readonly MeasureId[] => {
  const ids = catalogue.measures.map(({ id }) => id as MeasureId);
  if (posture !== 'standing' || catalogue.equations.ffm.posture !== 'lying') return ids;
  return [...STANDING_FIRST, ...ids.filter((id) => !STANDING_FIRST.includes(id))];
};
