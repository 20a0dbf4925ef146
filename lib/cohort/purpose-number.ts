import { PURPOSES, REVIEW_VISITS, type Purpose, type ReviewVisit } from './types/filter';

const REVIEW = PURPOSES.indexOf('baseline-review');

/** The number of a purpose in the tables: planned reviews have one for each way to take a visit of the window. */
export const purposeNumber = (purpose: Purpose, reviewVisit: ReviewVisit = 'closest'): number =>
  purpose === 'baseline-review' ? REVIEW + REVIEW_VISITS.indexOf(reviewVisit) : PURPOSES.indexOf(purpose);

export const purposeOf = (number: number): Purpose => PURPOSES[Math.min(number, REVIEW)] ?? 'consecutive';
