import type { Level } from '../../../lib/cohort/types/filter';
import type { TalkToRow } from '../../../lib/cohort/types/contact-lists';
import { reasonSentence, weightQuestion } from './reason-sentence';
import { meantSentence } from './meant-sentence';
import { careSentences } from './care-sentences';
import { againstPhrase, changePhrase, type Wording } from './change-phrase';

/** One client's paragraph on *Talk to*, in its parts. */
export interface TalkToSentences {
  /** What changed, against what. */
  readonly finding: string;
  /** What other rules say of the same client. */
  readonly also: readonly string[];
  readonly howSure: string;
  readonly couldExplain: string;
  readonly next: string;
}

const weightSentence = (row: TalkToRow, { messages, valueWords }: Wording): string[] => {
  const { terms, change, measure } = row.change;
  if (terms === null) return [];
  const words = valueWords(measure);
  const part = words.amount(terms.weight);
  const isNothing = part === words.amount(0);
  const sameWay = Math.sign(terms.weight) === Math.sign(change);
  const said = isNothing
    ? messages.contact.weightNothing
    : sameWay
      ? messages.contact.weightPart({ part, change: words.amount(change) })
      : messages.contact.weightOpposed({ part: words.change(terms.weight) });
  const left = row.withoutWeight;
  if (left === null) return [`${said}.`];
  const amount = words.change(left.change);
  const rest =
    left.lsc === null
      ? messages.contact.leftUnknown({ left: amount })
      : Math.abs(left.change) >= left.lsc
        ? messages.contact.leftBeyond({ left: amount, lsc: words.amount(left.lsc) })
        : messages.contact.leftWithin({ left: amount, lsc: words.amount(left.lsc) });
  return [`${said}; ${rest}`];
};

const bestSentence = ({ best, change }: TalkToRow, { messages, formatters, valueWords }: Wording): string[] => {
  if (best === null) return [];
  const words = valueWords(change.measure);
  const [size, threshold] = words.amounts(best.change, best.threshold);
  const sign = best.change < 0 ? '−' : '+';
  return [
    messages.contact.best({
      n: best.earlier,
      date: formatters.date(best.date),
      change: `${sign}${size}`,
      threshold,
      beyond: -best.change >= best.threshold,
    }),
  ];
};

const fitsSentence = (row: TalkToRow, { messages, valueWords }: Wording): string[] => {
  const phase = row.phaseAngle;
  if (phase?.lsc === null || phase === null) return [];
  const words = valueWords('phase_angle');
  return [messages.contact.fits[row.fits]({ phase: words.change(phase.change), lsc: words.amount(phase.lsc) })];
};

/** What changed · against what · how sure · what could explain it · what to do next. */
export const talkToSentences = (row: TalkToRow, level: Level, wording: Wording): TalkToSentences => {
  const { messages, valueWords } = wording;
  const { change } = row;
  const words = valueWords(change.measure);
  const expected =
    words.amount(row.expected) === words.amount(0)
      ? []
      : [messages.contact.expected({ expected: words.change(row.expected), excess: words.change(row.excess) })];
  const visits = row.seenAtTwoVisits ? messages.contact.seenTwice : messages.contact.seenOnce;
  const isByChange = row.reasons.some(({ rule }) => rule === 'lean-change');
  const sentences = row.reasons.flatMap((reason) => reasonSentence(reason, row, wording));
  const [finding = '', ...also] = isByChange
    ? [`${changePhrase(change, wording)}: ${againstPhrase(change, wording)}.`, ...sentences]
    : sentences;
  const asked = row.asked === null ? [] : [weightQuestion(row.asked, wording)];
  if (change.measure === 'weight') {
    return { finding, also: [...also, ...asked], howSure: '', couldExplain: '', next: messages.contact.nextWeight };
  }
  return {
    finding,
    also: [...also, ...asked],
    howSure: messages.contact.howSure({
      visits: `${visits}, ${messages.contact.readings({ from: change.kFrom, to: change.kTo })}`,
      tier: messages.reasons.tier[change.tier],
      level,
      comparable: messages.common.comparable[change.comparable],
    }),
    couldExplain: [
      ...meantSentence(change, wording),
      ...expected,
      ...weightSentence(row, wording),
      ...fitsSentence(row, wording),
      ...bestSentence(row, wording),
      ...careSentences(change, wording, true),
    ].join(' '),
    next: row.seenAtTwoVisits ? messages.contact.nextTalkTwice : messages.contact.nextTalkOnce,
  };
};
