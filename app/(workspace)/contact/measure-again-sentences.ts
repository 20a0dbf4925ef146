import type { MeasureAgainRow } from '../../../lib/cohort/types/contact-lists';
import { againstPhrase, changePhrase, type Wording } from './change-phrase';
import { careSentences } from './care-sentences';
import { ruleReasons } from './reason-groups';

/** One client's paragraph on *Measure again*, in its parts. */
export interface MeasureAgainSentences {
  readonly finding: string;
  readonly more: string;
  readonly next: string;
}

/** Why the latest visit does not answer, and what would. */
export const measureAgainSentences = (row: MeasureAgainRow, wording: Wording): MeasureAgainSentences => {
  const { messages, formatters } = wording;
  const words = messages.contact;
  const rules = ruleReasons(row.reasons);
  const reasons =
    rules.length === 0 ? words.noReason : formatters.list(rules.map((reason) => messages.reasons.short[reason]));
  const dates = { latest: formatters.date(row.latest), baseline: formatters.date(row.baseline) };
  const change = row.change === null ? '' : changePhrase(row.change, wording);
  const beyond = row.change === null ? '' : againstPhrase(row.change, wording, row.why === 'near-threshold');
  const finding = words.why[row.why]({ ...dates, reasons, change, beyond });
  const more = [
    ...(row.otherBaseline === null ? [] : [words.otherBaseline({ date: formatters.date(row.otherBaseline) })]),
    ...(row.change === null ? [] : careSentences(row.change, wording, false)),
  ].join(' ');
  return { finding, more, next: words.nextAgain[row.why]({ baseline: dates.baseline }) };
};
