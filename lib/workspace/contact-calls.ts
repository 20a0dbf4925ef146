import { TALK_TO_RULES, type TalkToRule } from '../cohort/settings-parts/contact-settings';
import type { TalkToRow } from '../cohort/types/contact-lists';
import { parseIsoDate, type IsoDate } from '../core/iso-date';
import type { Mark } from './clinic-state';

/** What may come of a call. */
export const CALL_OUTCOMES = ['confirmed', 'explained', 'not-reached', 'not-useful'] as const;
export type CallOutcome = (typeof CALL_OUTCOMES)[number];

/** A call about a row of Talk to: which visit it was about and which rules had listed it. */
export interface ContactCall {
  readonly client: string;
  readonly visit: IsoDate;
  readonly outcome: CallOutcome;
  readonly rules: readonly TalkToRule[];
  readonly initials: string;
  /** Instant of the entry. */
  readonly at: string;
}

const KIND = 'talk-to ';

/** A mark's kind for a call: one a visit, so that what came of earlier calls stays. */
export const callKind = (visit: IsoDate): string => `${KIND}${visit}`;

/** A mark's value for a call: the outcome, then the rules that had listed the row. */
export const callValue = (outcome: CallOutcome, row: TalkToRow): string =>
  [outcome, ...new Set(row.reasons.map(({ rule }) => rule))].join(' ');

/** The calls among a clinic's marks; marks of other kinds, and what cannot be read, are left out. */
export const callsIn = (marks: readonly Mark[]): readonly ContactCall[] =>
  marks.flatMap(({ client, kind, value, initials, at }): ContactCall[] => {
    const visit = kind.startsWith(KIND) ? parseIsoDate(kind.slice(KIND.length)) : undefined;
    const [word, ...rest] = value.split(' ');
    const outcome = CALL_OUTCOMES.find((candidate) => candidate === word);
    if (visit === undefined || outcome === undefined) return [];
    const rules = TALK_TO_RULES.filter((rule) => rest.includes(rule));
    return [{ client, visit, outcome, rules, initials, at }];
  });

/** Talk to by what came of calls. */
export interface TalkToState {
  /** Rows to call, in their order. */
  readonly open: readonly TalkToRow[];
  /** Tried without an answer, by client: the row stays. */
  readonly tried: ReadonlyMap<string, ContactCall>;
  /** Rows that rest until the client's next visit. */
  readonly spoken: readonly { readonly row: TalkToRow; readonly call: ContactCall }[];
}

/** A row rests once somebody was spoken to about its visit, until there is a later visit. Who was not reached stays on the list. */
export const talkToState = (rows: readonly TalkToRow[], calls: readonly ContactCall[]): TalkToState => {
  const about = (row: TalkToRow): ContactCall | undefined =>
    calls.findLast(({ client, visit }) => client === row.client && visit >= row.change.to);
  const open: TalkToRow[] = [];
  const tried = new Map<string, ContactCall>();
  const spoken: { row: TalkToRow; call: ContactCall }[] = [];
  for (const row of rows) {
    const call = about(row);
    if (call !== undefined && call.outcome !== 'not-reached') spoken.push({ row, call });
    else {
      open.push(row);
      if (call !== undefined) tried.set(row.client, call);
    }
  }
  return { open, tried, spoken };
};

/** What came of the calls that one rule led to. */
export interface RuleYield {
  readonly rule: TalkToRule;
  readonly called: number;
  readonly outcomes: Readonly<Record<CallOutcome, number>>;
  /** Of five or more people spoken to, more than half were not useful: another setting is offered. */
  readonly mostlyNotUseful: boolean;
}

const ENOUGH_CALLS = 5;

/** The yield of each rule that led to a call. */
export const callYield = (calls: readonly ContactCall[]): readonly RuleYield[] =>
  TALK_TO_RULES.flatMap((rule): RuleYield[] => {
    const own = calls.filter(({ rules }) => rules.includes(rule));
    if (own.length === 0) return [];
    const of = (outcome: CallOutcome): number => own.filter((call) => call.outcome === outcome).length;
    const spoken = own.length - of('not-reached');
    return [
      {
        rule,
        called: own.length,
        outcomes: {
          confirmed: of('confirmed'),
          explained: of('explained'),
          'not-reached': of('not-reached'),
          'not-useful': of('not-useful'),
        },
        mostlyNotUseful: spoken >= ENOUGH_CALLS && 2 * of('not-useful') > spoken,
      },
    ];
  });
