import { currentChange } from '../../../lib/workspace/current-change';
import type { ClientDetail } from '../../../lib/cohort/types/client-detail';
import type { Wording } from '../contact/change-phrase';
import { ruleReasons, stoppingReasons } from '../contact/reason-groups';

/**
 * How one client's indices changed from baseline to latest, in a sentence; no number where the two are not compared. The
 * client is named where the screen is not the client's own.
 */
export const pathFinding = (detail: ClientDetail, wording: Wording, naming: 'named' | 'unnamed'): string => {
  const { messages, formatters, guardsOf } = wording;
  const words = messages.indices;
  const client = naming === 'named' ? detail.client : null;
  if (!detail.visits.some(({ values }) => values.ffmi !== undefined)) return words.pathMissing;
  const ffmi = currentChange(detail, 'ffmi');
  const fmi = currentChange(detail, 'fmi');
  if (ffmi === undefined) return words.pathSingle({ client });
  const listed = (reasons: typeof ffmi.reasons): string =>
    reasons.length === 0
      ? messages.contact.noReason
      : formatters.list(reasons.map((reason) => messages.reasons.short[reason]));
  if (ffmi.result === null)
    return words.pathGuarded({ client, reasons: listed(stoppingReasons(ffmi.reasons, guardsOf('ffmi'))) });
  if (ffmi.result === 'cannot-compare')
    return words.pathCannot({ client, date: formatters.date(ffmi.from), reasons: listed(ruleReasons(ffmi.reasons)) });
  const part = ({ measure, change, result }: typeof ffmi) => ({
    change: wording.valueWords(measure).change(change),
    outcome: result === null || result === 'cannot-compare' ? null : words.pathOutcome[result],
  });
  return words.pathFinding({
    client,
    from: formatters.dateShort(ffmi.from),
    to: formatters.dateShort(ffmi.to),
    ffmi: part(ffmi),
    fmi: fmi === undefined || fmi.result === null || fmi.result === 'cannot-compare' ? null : part(fmi),
  });
};
