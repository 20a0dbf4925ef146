import type { Drift, ErrorStudy, LargestVariance } from '../../../lib/cohort/types/error-study';
import type { Formatters } from '../../../lib/core/formatters';
import type { Messages } from '../../../lib/core/messages/en';
import type { Measure } from '../../../lib/measures/measure';

export interface StudyWording {
  readonly words: Messages['errorStudy'];
  readonly reasons: Messages['reasons'];
  readonly formatters: Formatters;
  readonly measure: Measure;
}

const driftSentences = (kind: 'visit' | 'reading', drift: Drift | null, wording: StudyWording): readonly string[] => {
  const { words, formatters, measure } = wording;
  if (drift === null || drift.interval === null) return [];
  const write = (value: number): string => formatters.change(value, measure.unit, measure.decimals + 1);
  const [low, high] = drift.interval;
  return [
    words.drift({
      kind,
      mean: `${write(drift.mean)}\u00A0${formatters.unit(measure.unit)}`.trim(),
      low: write(low),
      high: write(high),
      n: drift.n,
    }),
    drift.excludesZero && drift.peWithoutDrift !== null
      ? words.driftSays({
          higher: drift.mean > 0,
          without: formatters.quantity(drift.peWithoutDrift, measure.unit, measure.decimals + 1),
        })
      : words.noDrift,
  ];
};

const largestSentence = (
  kind: 'between' | 'repositioning',
  largest: LargestVariance | null,
  { words, formatters }: StudyWording,
): readonly string[] =>
  largest === null
    ? []
    : [
        words.outlier({
          kind: words.outlierKind[kind],
          client: largest.client,
          date: formatters.dateShort(largest.on),
          c: formatters.number(largest.c, 3),
          limit: formatters.number(largest.limit, 3),
          beyond: largest.beyond,
        }),
      ];

/** What the study of one value stands on: who counts, who was left out and why, the drift, the largest variances. */
export const studySentences = (study: ErrorStudy, wording: StudyWording): readonly string[] => {
  const { words, reasons, formatters } = wording;
  const { leftOut } = study;
  const why = leftOut.reasons.map(({ reason, visits }) =>
    words.reason({ reason: reason === 'program_started' ? words.programStarted : reasons.short[reason], n: visits }),
  );
  return [
    study.clusters.length === 0
      ? words.none
      : words.people({ clusters: study.clusters.length, visits: leftOut.visits }),
    ...(study.routineClusters === 0 ? [] : [words.routine({ n: study.routineClusters })]),
    leftOut.notComparable === 0
      ? words.nothingLeftOut
      : words.leftOut({ n: leftOut.notComparable, reasons: formatters.list(why) }),
    ...(leftOut.alone === 0 ? [] : [words.alone({ n: leftOut.alone })]),
    ...driftSentences('visit', study.drift, wording),
    ...driftSentences('reading', study.repositioningDrift, wording),
    ...largestSentence('between', study.largest.between, wording),
    ...largestSentence('repositioning', study.largest.repositioning, wording),
  ];
};
