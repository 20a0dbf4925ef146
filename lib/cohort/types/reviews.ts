import type { IsoDate } from '../../core/iso-date';
import type { Comparable } from './change-row';

/**
 * Where an enrolment stands with a planned review. `seen` and `not-seen`: the window has closed and the program had not
 * ended before it opened, so the review is due. `seen-early`: the window is still open and holds a visit. `not-yet`: it
 * holds none so far. `ended-before`: the program ended before the window opened.
 */
export type ReviewState = 'seen' | 'not-seen' | 'seen-early' | 'not-yet' | 'ended-before';

/** One planned review of one enrolment, for one value. */
export interface ReviewRow {
  readonly clientKey: number;
  readonly client: string;
  readonly program: string;
  /** Weeks after the start, and of the window on either side. */
  readonly week: number;
  readonly windowWeeks: number;
  readonly target: IsoDate;
  readonly windowFrom: IsoDate;
  readonly windowTo: IsoDate;
  readonly state: ReviewState;
  /** The closest visit of the window that holds the value, and its day after the start; null where there is none or the program had ended. */
  readonly seenOn: IsoDate | null;
  readonly actualDay: number | null;
  /** Visits in the window that do not hold the value. */
  readonly passedOver: number;
  /** Grade of baseline → this visit; null where the review is not seen or the baseline does not hold the value. */
  readonly comparable: Comparable | null;
}

/** One planned review of one program, for one value. seen ≤ due; the others enter no rate. */
export interface ReviewCounts {
  readonly program: string;
  readonly week: number;
  readonly windowWeeks: number;
  readonly due: number;
  readonly seen: number;
  /** Of those seen: with a baseline that holds the value, and of these the pairs that take part under the setting. */
  readonly pairs: number;
  readonly comparable: number;
  readonly seenEarly: number;
  readonly notYet: number;
  readonly endedBefore: number;
  /** Visits of the due windows that were passed over because they do not hold the value. */
  readonly passedOver: number;
  /** First quartile, median and third quartile of the day after the start on which those seen were seen. */
  readonly actualDay: { readonly q1: number; readonly median: number; readonly q3: number } | null;
}
