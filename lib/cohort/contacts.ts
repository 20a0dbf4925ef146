import { daysBetween, type IsoDate } from '../core/iso-date';
import { changesOf } from './changes';
import { bestOfEarlier } from './contact-rules/best-of-earlier';
import { numberIn, STRIP_LENGTH, type ContactContext } from './contact-rules/contact-context';
import { contactSeriesFrom, seriesGroup, type ContactSeries } from './contact-rules/contact-series';
import {
  isTalkedAbout,
  judgedByClient,
  leadingEnrolment,
  type JudgedEnrolment,
} from './contact-rules/judged-enrolment';
import { candidateFrom, stripsByEnrolment } from './contact-rules/lean-candidate';
import { againRow, byWhy, whyAgain } from './contact-rules/measure-again';
import { byErrorAlone, countOf } from './contact-rules/rule-counts';
import { statusFindings, type StatusValue } from './contact-rules/status-findings';
import { ruleBook, talkToReasons, type RuleBooks } from './contact-rules/talk-to-reasons';
import { cutOffsInForce } from './cut-offs-in-force';
import type { CohortModel } from './model';
import type { Ask } from './question';
import { masksFor } from './rules-in-force';
import type { Settings } from './settings';
import { TALK_TO_RULES } from './settings-parts/contact-settings';
import { contactSeriesQuery } from './sql/contact-series-sql';
import { contactCandidatesQuery, stripQuery } from './sql/contacts-sql';
import type { ChangeRow } from './types/change-row';
import type { ContactLists, ContactRow, TalkToRow } from './types/contact-lists';
import type { CohortFilter } from './types/filter';

/** Whether a program means people to lose weight; null: nobody said. */
const lossMeantBy = ({ programs }: Settings, program: string): boolean | null => {
  const intended = programs.find(({ name }) => name === program)?.intended.weight ?? null;
  return intended === null ? null : intended === 'loss';
};

/** The levels in force that published cut-offs are about. */
const statusValues = ({ catalogue }: CohortModel): readonly StatusValue[] =>
  (['ffmi', 'asmi'] as const).flatMap((quantity) => {
    const equation = catalogue.follows(quantity) ? catalogue.measure(quantity).equation : undefined;
    return equation === undefined ? [] : [{ quantity, equation }];
  });

const seriesOf = async (
  ask: Ask,
  filter: CohortFilter,
  { model, settings }: ContactContext,
  signal?: AbortSignal,
): Promise<{
  readonly lean: ReadonlyMap<number, ContactSeries>;
  readonly weight: ReadonlyMap<number, ContactSeries>;
}> => {
  const meant = (program: string): boolean | null => lossMeantBy(settings, program);
  const of = async (id: 'weight' | CohortModel['lean']) =>
    contactSeriesFrom(await ask(contactSeriesQuery(model.catalogue.measure(id), model), filter, { signal }), meant);
  return { lean: await of(model.lean), weight: await of('weight') };
};

const strengthOf = (row: TalkToRow): number => {
  const [first] = row.reasons;
  if (first?.rule !== 'lean-change') return 2;
  return first.sight === 'confirmed' ? 0 : 1;
};

const byStrength = (a: TalkToRow, b: TalkToRow): number => {
  const size = (row: ContactRow): number => Math.abs(row.excess) / (row.change.lsc ?? 1);
  return strengthOf(a) - strengthOf(b) || size(b) - size(a) || (a.client < b.client ? -1 : 1);
};

/** A row that only the weight stands for: the lean value cannot be read at this client. */
const weightRow = (series: ContactSeries, change: ChangeRow, asOf: IsoDate): ContactRow => ({
  clientKey: series.clientKey,
  client: series.client,
  program: series.program,
  weekOfProgram: series.programStart === null ? null : Math.floor(daysBetween(series.programStart, asOf) / 7),
  change,
  expected: 0,
  excess: change.change,
  withoutWeight: null,
  phaseAngle: null,
  seenAtTwoVisits: false,
  fits: 'cannot-tell',
  strip: series.visits.map(({ date, value, usable }) => ({ date, value, comparable: usable })).slice(-STRIP_LENGTH),
});

/**
 * Talk to and Measure again: clients of an open program, last visit at most six weeks before as-of. Every open program
 * of a client is judged, the one that says most stands for the client. Talk to holds who
 * gives a rule a reason, one row a client; who stands in Measure again is not in Talk to, unless only the baseline is at
 * fault and the comparable visits after it give a reason. Confirmed before first sight, then by excess in units of its
 * threshold; rows of other rules follow.
 */
export const contactsOf = async (
  ask: Ask,
  filter: CohortFilter,
  context: ContactContext,
  signal?: AbortSignal,
): Promise<ContactLists> => {
  const { model, settings, errors, asOf } = context;
  const rows = await ask(contactCandidatesQuery(model), filter, { signal });
  const strips = stripsByEnrolment(
    await ask(stripQuery(model), filter, { signal }),
    filter.comparable === 'strict' ? 1 : filter.comparable === 'caution' ? 2 : 3,
  );
  const series = await seriesOf(ask, filter, context, signal);
  const cutOffs = cutOffsInForce(settings);
  const everyone = ruleBook(settings, model.lean, errors, cutOffs, null);
  const ofGroups = new Map(
    [...new Set(errors.groups.flatMap(({ group }) => group ?? []))].map((group) => [
      group,
      ruleBook(settings, model.lean, errors, cutOffs, group),
    ]),
  );
  const books: RuleBooks = (group) => ofGroups.get(group ?? '') ?? everyone;
  const candidates = new Map(
    rows.map((row) => [numberIn(row, 'enrolment_no'), candidateFrom(row, context, strips)] as const),
  );
  const graded = masksFor(model.masks, model.catalogue.measure(model.lean));
  const judged = judgedByClient(candidates, series, (candidate, lean, weight) => {
    const found = talkToReasons(candidate?.evidence, { lean, weight }, books);
    const why = candidate === undefined ? undefined : whyAgain(candidate, graded, settings.contacts.nearFactor, found);
    return { found, why };
  });
  const leads = judged.map(leadingEnrolment);
  const again = leads.flatMap((lead) =>
    lead.why === undefined || lead.candidate === undefined || isTalkedAbout(lead)
      ? []
      : [againRow(lead.candidate, lead.why)],
  );
  const talked = leads.filter(isTalkedAbout);
  const isLean = ({ found }: JudgedEnrolment): boolean => found.reasons.some(({ rule }) => rule !== 'weight-loss');
  const weights = talked.every(isLean)
    ? []
    : await changesOf(ask, model, filter, {
        purpose: 'baseline-latest',
        measure: model.catalogue.measure('weight'),
        signal,
      });
  const talkTo = talked
    .flatMap((lead): TalkToRow[] => {
      const { candidate, weight, found } = lead;
      const change = weights.findLast((row) => row.clientKey === lead.clientKey && row.program === weight?.program);
      const contact = isLean(lead)
        ? candidate?.contact
        : weight !== undefined && change !== undefined
          ? weightRow(weight, change, asOf)
          : undefined;
      if (contact === undefined) return [];
      const lean = isLean(lead) ? lead.lean : undefined;
      const own = lean === undefined ? undefined : books(seriesGroup(lean)).lean;
      const best = lean === undefined || own === undefined ? null : bestOfEarlier(lean, own, filter.level);
      return [{ ...contact, list: 'talk-to', reasons: found.reasons, best, asked: found.asked }];
    })
    .sort(byStrength);
  const checked = leads.flatMap(({ candidate }) => {
    const change = candidate?.change;
    return change === undefined || !change.admitted || change.result === null || change.result === 'no-threshold'
      ? []
      : [change];
  });
  const rowKeys = new Set(talkTo.map(({ clientKey }) => clientKey));
  return {
    asOf,
    talkTo,
    measureAgain: [...again].sort(byWhy),
    checked: checked.length,
    byErrorAlone: byErrorAlone(checked, context, filter.level),
    rules: TALK_TO_RULES.filter(everyone.isOn).map((rule) =>
      countOf(
        rule,
        leads.map(({ found }) => found),
        talkTo,
        filter.level,
      ),
    ),
    weightQuestions: judged.flatMap((enrolments) => {
      const asking = enrolments.find(({ found, weight }) => found.asked !== null && weight !== undefined);
      const loss = asking?.found.asked ?? null;
      if (asking?.weight === undefined || loss === null || rowKeys.has(asking.clientKey)) return [];
      const { clientKey, client, program } = asking.weight;
      return [{ clientKey, client, program, loss }];
    }),
    status: leads.flatMap(({ lean }) => (lean === undefined ? [] : statusFindings(lean, statusValues(model), cutOffs))),
  };
};
