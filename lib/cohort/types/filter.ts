import type { MeasureId } from '../../measures/measure-id';

/** Which grades of pairs take part. `strict`: comparable and by procedure. */
export type ComparableSetting = 'strict' | 'caution' | 'all';

export type Level = 80 | 90 | 95;

/** What two visits are compared for; the place in the list is the number in the tables. */
export const PURPOSES = ['consecutive', 'baseline-latest', 'baseline-review'] as const;

export type Purpose = (typeof PURPOSES)[number];

/**
 * Which visit of a planned review's window is compared with the baseline. `closest`: the closest to the target of all,
 * then judged. The others are sensitivities: `closest-comparable`: the closest that is comparable or by procedure, else the
 * closest with a caution, else the closest; `first-in-window`: the earliest. Ties always to the earlier visit. The place
 * in the list, counted from that of `baseline-review`, is the number in the tables.
 */
export const REVIEW_VISITS = ['closest', 'closest-comparable', 'first-in-window'] as const;

export type ReviewVisit = (typeof REVIEW_VISITS)[number];

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
  /** For the purpose *baseline-review*: the planned review's week after the start; undefined = every review. */
  readonly reviewWeek?: number;
  /** For planned reviews: which visit of the window; undefined = `closest`. */
  readonly reviewVisit?: ReviewVisit;
}
