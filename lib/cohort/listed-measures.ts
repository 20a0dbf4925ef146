import type { MeasureId } from '../measures/measure-id';
import type { CohortModel } from './model';
import type { CohortSummary } from './types/cohort-summary';

/** What a clinic that measures standing follows first: nothing that rests on an equation made lying. */
const STANDING_FIRST: readonly MeasureId[] = ['weight', 'r_h', 'xc_h', 'phase_angle', 'ffm_exported'];

/**
 * The values in the order of the lists, and the one that screens open with: the clinic's lean value; where all is measured
 * standing and the lean value's equation was made lying, the exported fat-free mass, without it R/H.
 */
export const listedMeasures = (
  { catalogue, lean }: CohortModel,
  summary: Pick<CohortSummary, 'posture' | 'hasExportedComposition'>,
): { readonly listed: readonly MeasureId[]; readonly lead: MeasureId } => {
  const ids = catalogue.measures.map(({ id }) => id as MeasureId);
  if (summary.posture !== 'standing' || catalogue.measure(lean).equation?.posture !== 'lying')
    return { listed: ids, lead: lean };
  return {
    listed: [...STANDING_FIRST, ...ids.filter((id) => !STANDING_FIRST.includes(id))],
    lead: summary.hasExportedComposition ? 'ffm_exported' : 'r_h',
  };
};
