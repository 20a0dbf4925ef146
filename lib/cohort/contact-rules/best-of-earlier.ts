import { bestOfEarlierFactor } from '../../stats/best-of-earlier-factor';
import type { BestOfEarlier } from '../types/contact-lists';
import { usableVisits, type ContactSeries } from './contact-series';
import type { Thresholds } from './thresholds';

/** One earlier visit is the ordinary comparison. */
const LEAST_EARLIER = 2;

/**
 * The latest visit against the best of the earlier ones that may be compared with it: the largest is chosen by its error
 * too, so that it has a factor of its own. Said beside a listed change, never a reason by itself. With unequal readings the
 * largest variance counts.
 */
export const bestOfEarlier = (series: ContactSeries, { variance }: Thresholds, level: number): BestOfEarlier | null => {
  const visits = usableVisits(series);
  const latest = visits.at(-1);
  const earlier = visits.slice(0, -1);
  if (latest === undefined || earlier.length < LEAST_EARLIER) return null;
  const best = earlier.reduce((high, visit) => (visit.value > high.value ? visit : high));
  const largest = Math.max(...visits.map(({ k, value }) => variance(k, value)));
  const threshold = bestOfEarlierFactor(earlier.length, (1 - level / 100) / 2) * Math.sqrt(largest);
  return { date: best.date, change: latest.value - best.value, threshold, earlier: earlier.length };
};
