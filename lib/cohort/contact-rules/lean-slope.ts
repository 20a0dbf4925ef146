import { dayNumber } from '../../core/iso-date';
import { beyondThreshold } from '../../stats/beyond-threshold';
import { slope, type Slope } from '../../stats/slope';
import type { LeanSlopeReason } from '../types/contact-lists';
import { usableVisits, type ContactSeries, type SeriesVisit } from './contact-series';
import type { Thresholds } from './thresholds';

/** A slope lists nobody at the ordinary level: it is looked at at every visit. */
export const SLOPE_LEVEL = 0.99;
/** Three evenly spaced visits have the threshold of first against last: the gain begins at four. */
const LEAST_VISITS = 4;

interface SlopeQuestion {
  /** Excess of baseline → latest and its threshold, where that pair is judged. */
  readonly excess: number;
  readonly lsc: number;
  readonly lean: Thresholds;
  /** The part without weight, where the lean value's equation holds the weight itself. */
  readonly withoutWeight: Thresholds | 'needed' | 'not-needed';
}

const slopeOf = (
  visits: readonly SeriesVisit[],
  value: (visit: SeriesVisit) => number | null,
  { variance }: Thresholds,
): Slope | undefined =>
  slope(
    visits.flatMap((visit) => {
      const found = value(visit);
      return found === null ? [] : [{ days: dayNumber(visit.date), value: found, variance: variance(visit.k, found) }];
    }),
  );

const falls = (found: Slope | undefined, factor: number): found is Slope =>
  found !== undefined && beyondThreshold(0, found.perMonth, factor * found.standardError) === 'down';

/** Whether a series is long enough for its slope to be looked at. */
export const hasSlope = (series: ContactSeries): boolean => usableVisits(series).length >= LEAST_VISITS;

/**
 * The lean value falls from visit to visit: the slope of what the program does not let expect is down more than its error
 * at 99 %, over four or more visits comparable with the latest and 28 days, and the latest lies half an LSC below the
 * baseline. Where the equation holds the weight, the part without it has to fall as well.
 */
export const leanSlope = (series: ContactSeries, question: SlopeQuestion): LeanSlopeReason | undefined => {
  const { excess, lsc, lean, withoutWeight } = question;
  const visits = usableVisits(series);
  if (visits.length < LEAST_VISITS || !(excess <= -lsc / 2)) return undefined;
  const unexpected = slopeOf(visits, ({ value, expected }) => (expected === null ? null : value - expected), lean);
  const factor = lean.factorAt(SLOPE_LEVEL);
  if (!falls(unexpected, factor) || unexpected.dates < LEAST_VISITS) return undefined;
  if (withoutWeight === 'needed') return undefined;
  if (
    withoutWeight !== 'not-needed' &&
    !falls(
      slopeOf(visits, (visit) => visit.withoutWeight, withoutWeight),
      withoutWeight.factorAt(SLOPE_LEVEL),
    )
  ) {
    return undefined;
  }
  const [first] = visits;
  const last = visits.at(-1);
  if (first === undefined || last === undefined) return undefined;
  return {
    rule: 'lean-slope',
    perMonth: unexpected.perMonth,
    threshold: factor * unexpected.standardError,
    visits: unexpected.dates,
    from: first.date,
    to: last.date,
  };
};
