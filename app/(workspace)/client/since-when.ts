import type { ChangeRow, Reason } from '../../../lib/cohort/types/change-row';
import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import type { MeasureId } from '../../../lib/measures/measure-id';
import type { Wording } from '../contact/change-phrase';
import { meantSentence } from '../contact/meant-sentence';
import { ruleReasons, stoppingReasons } from '../contact/reason-groups';
import { currentChange, lastStep } from '../../../lib/workspace/current-change';

const phrase = (reasons: readonly Reason[], { messages, formatters }: Wording): string =>
  reasons.length === 0
    ? messages.contact.noReason
    : formatters.list(reasons.map((reason) => messages.reasons.short[reason]));

const sinceBaseline = (row: ChangeRow, wording: Wording): string => {
  const { formatters, valueWords } = wording;
  const sentences = wording.messages.client.sinceBaseline;
  const words = valueWords(row.measure);
  const value = words.title;
  const date = formatters.date(row.from);
  if (row.result === null)
    return sentences.guarded({
      value,
      reasons: phrase(stoppingReasons(row.reasons, wording.guardsOf(row.measure)), wording),
    });
  const change = words.change(row.change);
  const [amount, lsc] = words.amounts(row.change, row.lsc ?? 0);
  switch (row.result) {
    case 'up':
    case 'down':
      return sentences[row.result]({ value, amount, date, lsc });
    case 'within':
      return sentences.within({ value, change, date, lsc });
    case 'cannot-compare':
      return sentences.cannot({ value, date, reasons: phrase(ruleReasons(row.reasons), wording) });
    case 'no-threshold':
      return sentences.noThreshold({ value, change, date });
  }
};

/** How much of a change beyond error follows from weight alone, where it goes the same way. */
const weightPart = (row: ChangeRow, { messages, valueWords }: Wording): string[] => {
  if (row.terms === null || (row.result !== 'up' && row.result !== 'down')) return [];
  const words = valueWords(row.measure);
  const sameWay = Math.sign(row.terms.weight) === Math.sign(row.change);
  if (!sameWay || words.amount(row.terms.weight) === words.amount(0)) return [];
  return [messages.client.weightPart({ part: words.amount(row.terms.weight), change: words.amount(row.change) })];
};

const sinceBefore = (row: ChangeRow, wording: Wording): string => {
  const { formatters, valueWords } = wording;
  const sentences = wording.messages.client.sinceBefore;
  const date = formatters.date(row.from);
  const change = valueWords(row.measure).change(row.change);
  if (row.result === null) return sentences.guarded({ date });
  switch (row.result) {
    case 'up':
    case 'down':
    case 'within':
      return sentences[row.result]({ change, date });
    case 'cannot-compare':
      return sentences.cannot({ date, reasons: phrase(ruleReasons(row.reasons), wording) });
    case 'no-threshold':
      return sentences.noThreshold({ change, date });
  }
};

/** What the client's other programs say that had not ended at the latest visit: each judges from its own baseline. */
const inOtherPrograms = (detail: ClientDetail, row: ChangeRow, wording: Wording): string[] => {
  const running = new Set(
    detail.enrolments.filter(({ end }) => end === null || end >= row.to).map(({ program }) => program),
  );
  return detail.latestChanges
    .filter(({ measure, program }) => measure === row.measure && program !== row.program && running.has(program))
    .map((other) =>
      wording.messages.client.inProgram({ program: other.program, finding: sinceBaseline(other, wording) }),
    );
};

/** Since when? The finding from baseline to latest, then what the last step adds. */
export const sinceWhen = (
  detail: ClientDetail,
  measure: MeasureId,
  wording: Wording,
): { readonly finding: string; readonly more: readonly string[] } => {
  const row = currentChange(detail, measure);
  if (row === undefined) {
    return {
      finding: wording.messages.client.sinceBaseline.none({ value: wording.valueWords(measure).title }),
      more: [],
    };
  }
  const step = lastStep(detail, measure);
  const more = step === undefined || (step.from === row.from && step.to === row.to) ? [] : [sinceBefore(step, wording)];
  const own = detail.enrolments.findLast(({ program }) => program === row.program)?.weightIntended ?? null;
  const meant = meantSentence(row, wording, own);
  return {
    finding: sinceBaseline(row, wording),
    more: [...meant, ...weightPart(row, wording), ...more, ...inOtherPrograms(detail, row, wording)],
  };
};
