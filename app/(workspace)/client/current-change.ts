import type { ChangeRow } from '../../../lib/cohort/types/change-row';
import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import type { AnyMeasureId } from '../../../lib/measures/measure-id';

const isLater = (row: ChangeRow, than: ChangeRow): boolean =>
  row.to === than.to ? row.from > than.from : row.to > than.to;

const newest = (rows: readonly ChangeRow[]): ChangeRow | undefined =>
  rows.reduce<ChangeRow | undefined>((best, row) => (best === undefined || isLater(row, best) ? row : best), undefined);

/** The change from baseline to latest of a value; with several programs, that of the newest. */
export const currentChange = (detail: ClientDetail, measure: AnyMeasureId): ChangeRow | undefined =>
  newest(detail.latestChanges.filter((row) => row.measure === measure));

/** The change of the chosen value between the last two visits. */
export const lastStep = (detail: ClientDetail, measure: AnyMeasureId): ChangeRow | undefined =>
  newest(detail.pairs.filter((row) => row.measure === measure && row.purpose === 'consecutive'));
