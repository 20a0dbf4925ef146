import type { AnyMeasureId } from '../measures/measure-id';

/** A between-day error from the literature, for clinics without one of their own. */
export interface PublishedError {
  /** SD of one measurement between days within a person, Ω. */
  readonly sd: number;
  readonly df: number;
  readonly clients: number;
  readonly source: string;
}

/**
 * Within-subject SD of the impedance at 50 kHz over four measurements within two months: 14 Ω, 12 healthy older adults
 * (mean 75 years), so 36 degrees of freedom. Source: J Gerontol 1997;52A:M137–M141, read in the abstract.
 */
export const PUBLISHED_ERROR: PublishedError = {
  sd: 14,
  df: 36,
  clients: 12,
  source: 'J Gerontol 1997;52A:M137–M141 (read in the abstract)',
};

/**
 * The values that depend on the impedance alone, with the power of the client's height (in metres) by which they are
 * divided: by the delta method the SD is divided by the same. R stands for |Z|, of which it is nearly all.
 */
export const PUBLISHED_FOR: ReadonlyMap<AnyMeasureId, 0 | 1> = new Map([
  ['r', 0],
  ['z', 0],
  ['r_h', 1],
  ['z_h', 1],
]);
