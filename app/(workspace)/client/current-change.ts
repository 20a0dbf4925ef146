import { newestChange } from '../../../lib/cohort/newest-change';
import type { ChangeRow } from '../../../lib/cohort/types/change-row';
import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import type { AnyMeasureId, MeasureId } from '../../../lib/measures/measure-id';

/** The change from baseline to latest of a value; with several programs, that of the newest. */
export const currentChange = (detail: ClientDetail, measure: AnyMeasureId): ChangeRow | undefined =>
  newestChange(detail.latestChanges.filter((row) => row.measure === measure));

const exportedOf: Readonly<Partial<Record<MeasureId, MeasureId>>> = {
  ffm: 'ffm_exported',
  fm: 'fm_exported',
  smm: 'smm_exported',
  phase_angle: 'phase_angle_exported',
};

/** The chosen value; where a client has none of it, the same value as the device exported it. */
export const judgedMeasure = (detail: ClientDetail, chosen: MeasureId): MeasureId => {
  const exported = exportedOf[chosen];
  return exported !== undefined &&
    currentChange(detail, chosen) === undefined &&
    currentChange(detail, exported) !== undefined
    ? exported
    : chosen;
};

/** The change of the chosen value between the last two visits. */
export const lastStep = (detail: ClientDetail, measure: AnyMeasureId): ChangeRow | undefined =>
  newestChange(detail.pairs.filter((row) => row.measure === measure && row.purpose === 'consecutive'));
