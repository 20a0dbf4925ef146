import type {
  ContactLists,
  MeasureAgainRow,
  TalkToReason,
  TalkToRow,
  WeightLossReason,
} from '../cohort/types/contact-lists';
import { fileReason } from './document-rows';

const lossPart = (loss: WeightLossReason) => ({
  percent: loss.percent,
  weight_from: loss.weightFrom,
  weight_to: loss.weightTo,
  lsc: loss.lsc,
  from: loss.from,
  to: loss.to,
  cut_off: loss.cutOff,
});

const reasonPart = (reason: TalkToReason) => {
  switch (reason.rule) {
    case 'lean-change':
      return { rule: reason.rule, sight: reason.sight, excess: reason.excess, lsc: reason.lsc };
    case 'lean-slope':
      return {
        rule: reason.rule,
        per_month: reason.perMonth,
        threshold: reason.threshold,
        level: 99,
        visits: reason.visits,
        from: reason.from,
        to: reason.to,
      };
    case 'lean-share':
      return {
        rule: reason.rule,
        share_percent: reason.sharePercent,
        interval_percent: reason.intervalPercent,
        limit_percent: reason.limitPercent,
        weight_change: reason.weightChange,
        loss_percent: reason.lossPercent,
      };
    case 'weight-loss':
      return { rule: reason.rule, ...lossPart(reason) };
  }
};

const talkToPart = (row: TalkToRow) => ({
  client: row.client,
  program: row.program,
  week: row.weekOfProgram,
  measure: row.change.measure,
  from: row.change.from,
  to: row.change.to,
  change: row.change.change,
  expected: row.expected,
  excess: row.excess,
  lsc: row.change.lsc,
  tier: row.change.tier,
  seen_at_two_visits: row.seenAtTwoVisits,
  fits: row.fits,
  rules: row.reasons.map(reasonPart),
  best_of_earlier: row.best,
  asked: row.asked === null ? null : lossPart(row.asked),
});

const againPart = (row: MeasureAgainRow) => ({
  client: row.client,
  program: row.program,
  baseline: row.baseline,
  latest: row.latest,
  why: row.why,
  reasons: row.reasons.map(fileReason),
  other_baseline: row.otherBaseline,
});

/** The document's part on the contact lists, as the screens show them before any call. */
export const contactsPart = (lists: ContactLists) => ({
  checked: lists.checked,
  by_error_alone: lists.byErrorAlone,
  rules: lists.rules.map(({ rule, checked, listed, byErrorAlone }) => ({
    rule,
    checked,
    listed,
    by_error_alone: byErrorAlone,
  })),
  talk_to: lists.talkTo.map(talkToPart),
  measure_again: lists.measureAgain.map(againPart),
  weight_questions: lists.weightQuestions.map(({ client, program, loss }) => ({ client, program, ...lossPart(loss) })),
  status: lists.status.map(({ client, program, date, measure, value, cutOff, equation }) => ({
    client,
    program,
    date,
    measure,
    value,
    cut_off: cutOff,
    equation,
  })),
});
