import type { ChangeRow, Reason } from '../../../lib/cohort/types/change-row';
import type { Wording } from './change-phrase';
import { ruleReasons } from './reason-groups';

/** Cautions of a change that the rest of a row does not say already. */
const SAID: readonly Reason[] = [
  'converted_device',
  'fast_weight_loss',
  'age_outside_equation',
  'sex_outside_equation',
  'bmi_outside_equation',
];

/**
 * What has to be known before a listed change is read: what differs or is not known where a wider setting lets the pair
 * in (`withRules`: not where the row says it as its finding), cautions, and whose error judges it where groups have
 * errors of their own.
 */
export const careSentences = (
  change: Pick<ChangeRow, 'reasons' | 'errorGroup' | 'lsc'>,
  wording: Pick<Wording, 'messages' | 'formatters' | 'errorFrom'>,
  withRules: boolean,
): readonly string[] => {
  const { messages, formatters, errorFrom } = wording;
  const isSaid = (reason: Reason): boolean => SAID.includes(reason);
  const rules = withRules ? ruleReasons(change.reasons).filter((reason) => !isSaid(reason)) : [];
  const reasons = [...rules, ...change.reasons.filter(isSaid)];
  const what = formatters.list(reasons.map((reason) => messages.reasons.short[reason]));
  return [
    ...(reasons.length === 0 ? [] : [messages.contact.withCare({ what })]),
    ...(errorFrom === 'everyone' || change.lsc === null
      ? []
      : [messages.client.errorOf({ group: change.errorGroup, by: errorFrom })]),
  ];
};
