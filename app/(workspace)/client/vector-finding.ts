import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import type { Wording } from '../contact/change-phrase';
import { ruleReasons } from '../contact/reason-groups';

/** Whether the vector moved by more than its own error, in a sentence. */
export const vectorFinding = ({ vector }: ClientDetail, { messages, formatters }: Wording): string => {
  const words = messages.clientVector;
  const { change, vectors } = vector;
  if (vectors.length === 0) return words.none;
  if (change === null) return words.single;
  switch (change.result) {
    case 'beyond':
      return words.beyond;
    case 'within':
      return words.within;
    case 'cannot-compare':
      return words.cannot({
        reasons: formatters.list(ruleReasons(change.reasons).map((reason) => messages.reasons.short[reason])),
      });
    case 'no-threshold':
      return words.noThreshold;
    case null:
      return words.stopped;
  }
};

/** What the vector's judgement stands on. */
export const vectorCaption = ({ vector }: ClientDetail, { messages, formatters }: Wording): string => {
  const words = messages.clientVector;
  const { change, error } = vector;
  const isJudged = change?.result === 'beyond' || change?.result === 'within';
  return [
    ...(isJudged && error !== null && change.squared !== null && change.threshold !== null
      ? [
          words.error({
            d2: formatters.number(change.squared, 1),
            threshold: formatters.number(change.threshold, 1),
            df: error.df,
            people: error.people,
          }),
          words.apart,
          ...(error.provisional ? [words.provisional] : []),
        ]
      : []),
    words.notJoined,
  ].join(' ');
};
