import type { ChangeRow } from '../../../lib/cohort/types/change-row';
import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import type { AnyMeasureId, MeasureId } from '../../../lib/measures/measure-id';

const isLater = (row: ChangeRow, than: ChangeRow): boolean =>
  row.to === than.to ? row.from > than.from : row.to > than.to;

const newest = (rows: readonly ChangeRow[]): ChangeRow | undefined =>
  rows.reduce<ChangeRow | undefined>((best, row) => (best === undefined || isLater(row, best) ? row : best), undefined);

/** The change from baseline to latest of a value; with several programs, that of the newest. */
export const currentChange = (detail: ClientDetail, measure: AnyMeasureId): ChangeRow | undefined =>
  newest(detail.latestChanges.filter((row) => row.measure === measure));

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
  newest(detail.pairs.filter((row) => row.measure === measure && row.purpose === 'consecutive'));
