import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import type { MeasureId } from '../../../lib/measures/measure-id';
import type { Wording } from '../contact/change-phrase';
import { currentChange } from '../../../lib/workspace/current-change';

/** Fits water, fits cell mass, cannot tell: asked only where a lean value fell by more than error. */
export const fluidOrCell = (detail: ClientDetail, lean: MeasureId, { messages }: Wording): string => {
  const words = messages.clientVector.split;
  const change = currentChange(detail, lean);
  if (change?.result === 'up' || change?.result === 'within') return words.notAsked;
  if (change?.result !== 'down') return words.unasked;
  if (change.reasons.includes('fits_less_water')) return words.water;
  return change.reasons.includes('fits_cell_mass') ? words.cell : words.neither;
};
