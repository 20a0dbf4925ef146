import { daysBetween } from '../../core/iso-date';
import { classify } from '../../measures/cut-offs/classify';
import type { CutOff } from '../../measures/cut-offs/cut-off';
import { cutOffsFor } from '../../measures/cut-offs/cut-offs-for';
import { beyondThreshold } from '../../stats/beyond-threshold';
import { DAYS_PER_MONTH } from '../../stats/slope';
import type { WeightLossReason } from '../types/contact-lists';
import { usableVisits, type ContactSeries, type SeriesVisit } from './contact-series';
import type { Thresholds } from './thresholds';

const MONTHS = 6;
const ADULT = 18;

/** The phenotypic criterion of weight loss, in its two spans of time. */
const isLossCriterion = ({ id }: CutOff): boolean => id.startsWith('glim-weight-loss-');

/** The earliest comparable weight of the last six months, and the earliest of all where that is further back: never the heaviest, which would be chosen by its error. */
const earlierWeights = (visits: readonly SeriesVisit[], latest: SeriesVisit): readonly SeriesVisit[] => {
  const months = (visit: SeriesVisit): number => daysBetween(visit.date, latest.date) / DAYS_PER_MONTH;
  const earlier = visits.filter((visit) => visit.date < latest.date);
  return [earlier.find((visit) => months(visit) <= MONTHS), earlier.find((visit) => months(visit) > MONTHS)].filter(
    (visit) => visit !== undefined,
  );
};

/**
 * A weight loss of the size of the consensus' phenotypic criterion, more than the weight's own error, whether meant or
 * not: the caller asks that first. Of two spans the one with the larger loss.
 */
export const weightLoss = (
  series: ContactSeries,
  weight: Thresholds,
  cutOffs: readonly CutOff[],
): WeightLossReason | undefined => {
  const visits = usableVisits(series);
  const latest = visits.at(-1);
  if (latest === undefined || latest.date !== series.visits.at(-1)?.date) return undefined;
  const who = { sex: series.sex ?? 'F', ageYears: series.ageYears ?? ADULT } as const;
  const found = earlierWeights(visits, latest).flatMap((from): WeightLossReason[] => {
    const lsc = weight.lsc(from.k, latest.k, from.value);
    if (beyondThreshold(from.value, latest.value, lsc) !== 'down') return [];
    const percent = (100 * (from.value - latest.value)) / from.value;
    const monthsApart = daysBetween(from.date, latest.date) / DAYS_PER_MONTH;
    const question = { ...who, quantity: 'weight_loss', monthsApart, lossIntended: false } as const;
    const [cutOff] = cutOffsFor({ ...question, chosen: new Set(cutOffs.map(({ id }) => id)) }, cutOffs).filter(
      isLossCriterion,
    );
    const classed = cutOff === undefined ? undefined : classify(cutOff, percent, who);
    if (classed?.interval.criterion !== 'met') return [];
    return [
      {
        rule: 'weight-loss',
        percent,
        weightFrom: from.value,
        weightTo: latest.value,
        lsc,
        from: from.date,
        to: latest.date,
        cutOff: classed.cutOffId,
        words: classed.words,
      },
    ];
  });
  return found.sort((a, b) => b.percent - a.percent)[0];
};
