import type { MeasureId } from '../../measures/measure-id';

/** Which grades of pairs take part. `strict`: comparable and by procedure. */
export type ComparableSetting = 'strict' | 'caution' | 'all';

export type Level = 80 | 90 | 95;

export type Purpose = 'consecutive' | 'baseline-latest';

/** What the filter bar says; undefined means all. Ages are completed years at the later visit. */
export interface CohortFilter {
  readonly measure: MeasureId;
  readonly level: Level;
  readonly comparable: ComparableSetting;
  readonly program?: string;
  readonly site?: string;
  readonly sex?: 'F' | 'M';
  readonly ageFrom?: number;
  readonly ageTo?: number;
}
