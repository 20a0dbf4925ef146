import type { StatusFinding, TalkToReason, TalkToRow, WeightLossReason } from '../../../lib/cohort/types/contact-lists';
import { PUBLISHED_CUT_OFFS } from '../../../lib/measures/cut-offs/published-cut-offs';
import { cutOffName } from '../../_state/cut-off-name';
import type { Wording } from './change-phrase';

/** A weight loss of which nobody said whether it was meant, as a question. */
export const weightQuestion = (loss: WeightLossReason, { messages, formatters }: Wording): string =>
  messages.contact.lossAsked({
    percent: formatters.percent(loss.percent / 100, 1),
    from: formatters.date(loss.from),
    to: formatters.date(loss.to),
  });

/** A level at a published limit: whose limit, with its mark, and what that says. */
export const statusSentence = (
  { measure, value, date, cutOff, words }: Omit<StatusFinding, 'clientKey' | 'client' | 'program' | 'equation'>,
  { messages, formatters, valueWords }: Pick<Wording, 'messages' | 'formatters' | 'valueWords'>,
): string => {
  const applied = PUBLISHED_CUT_OFFS.find(({ id }) => id === cutOff);
  return messages.contact.statusRow({
    value: valueWords(measure).title,
    amount: valueWords(measure).amount(value),
    date: formatters.date(date),
    cutOff: applied === undefined ? cutOff : cutOffName(applied, messages.methods.mark),
    words,
  });
};

/** What one rule says of a client; the change from baseline is said by the row itself. */
export const reasonSentence = (reason: TalkToReason, row: TalkToRow, wording: Wording): readonly string[] => {
  const { messages, formatters, valueWords } = wording;
  const words = messages.contact;
  const percent = (value: number, digits = 0): string => formatters.percent(value / 100, digits);
  switch (reason.rule) {
    case 'lean-change':
      return [];
    case 'lean-slope': {
      const { title, measure } = valueWords(row.change.measure);
      const perMonth = (value: number): string =>
        formatters.quantity(Math.abs(value), measure.unit, measure.decimals + 1);
      return [
        words.slope({
          value: title,
          rate: perMonth(reason.perMonth),
          threshold: perMonth(reason.threshold),
          visits: reason.visits,
          since: formatters.date(reason.from),
        }),
      ];
    }
    case 'lean-share':
      return [
        words.share({
          loss: valueWords('weight').amount(reason.weightChange),
          lossPercent: percent(reason.lossPercent),
          share: percent(reason.sharePercent),
          low: percent(reason.intervalPercent[0]),
          high: percent(reason.intervalPercent[1]),
          limit: percent(reason.limitPercent),
        }),
      ];
    case 'weight-loss':
      return [
        words.loss({
          percent: percent(reason.percent, 1),
          from: formatters.date(reason.from),
          to: formatters.date(reason.to),
          lsc: valueWords('weight').amount(reason.lsc),
          words: reason.words,
        }),
      ];
  }
};
