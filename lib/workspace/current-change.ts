import { judgedMeasureOf } from '../cohort/judged-measure';
import { newestChange } from '../cohort/newest-change';
import type { ChangeRow } from '../cohort/types/change-row';
import type { ClientDetail } from '../cohort/types/client-detail';
import type { AnyMeasureId, MeasureId } from '../measures/measure-id';

/** The change from baseline to latest of a value; with several programs, that of the newest. */
export const currentChange = (detail: ClientDetail, measure: AnyMeasureId): ChangeRow | undefined =>
  newestChange(detail.latestChanges.filter((row) => row.measure === measure));

/** The chosen value; where a client has none of it, the same value as the device exported it. */
export const judgedMeasure = (detail: ClientDetail, chosen: MeasureId): MeasureId =>
  judgedMeasureOf(detail.latestChanges, chosen);

/** The change of the chosen value between the last two visits. */
export const lastStep = (detail: ClientDetail, measure: AnyMeasureId): ChangeRow | undefined =>
  newestChange(detail.pairs.filter((row) => row.measure === measure && row.purpose === 'consecutive'));
