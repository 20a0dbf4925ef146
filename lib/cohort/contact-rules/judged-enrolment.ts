import type { AgainReason } from '../types/contact-lists';
import type { ContactSeries } from './contact-series';
import type { Candidate } from './lean-candidate';
import { AGAIN_ORDER } from './measure-again';
import type { FoundReasons } from './talk-to-reasons';

/** One open enrolment of a client, and what the rules make of it. */
export interface JudgedEnrolment {
  readonly clientKey: number;
  readonly candidate: Candidate | undefined;
  readonly lean: ContactSeries | undefined;
  readonly weight: ContactSeries | undefined;
  readonly found: FoundReasons;
  /** Why the latest visit does not answer against this enrolment's baseline, where it does not. */
  readonly why: AgainReason | undefined;
}

/** Whether an enrolment puts its client on Talk to: it gives a reason, and nothing has to be measured again first. */
export const isTalkedAbout = ({ found, why }: JudgedEnrolment): boolean =>
  found.reasons.length > 0 && (why === undefined || why === 'other-baseline');

/** Less water comes before any reason of another program; a reason before the other doubts about the latest visit. */
const standingOf = (one: JudgedEnrolment): number => {
  if (one.why === 'fits-less-water') return 0;
  if (isTalkedAbout(one)) return 1;
  return one.why === undefined ? 2 + AGAIN_ORDER.length : 2 + AGAIN_ORDER.indexOf(one.why);
};

const excessInThresholds = ({ candidate }: JudgedEnrolment): number =>
  candidate === undefined ? 0 : Math.abs(candidate.contact.excess) / (candidate.change.lsc ?? Infinity);

const isStronger = (one: JudgedEnrolment, than: JudgedEnrolment): boolean => {
  const [a, b] = [standingOf(one), standingOf(than)];
  if (a !== b || a !== 1) return a < b;
  const byChange = (judged: JudgedEnrolment): boolean => judged.found.reasons[0]?.rule === 'lean-change';
  return byChange(one) === byChange(than) ? excessInThresholds(one) > excessInThresholds(than) : byChange(one);
};

/**
 * Which of a client's open enrolments stands for the client: one row a client. `enrolments` are in the order in which
 * they began, the last first; where none says more than another, the one that began last stands.
 */
export const leadingEnrolment = (enrolments: readonly [JudgedEnrolment, ...JudgedEnrolment[]]): JudgedEnrolment =>
  enrolments.reduce((lead, one) => (isStronger(one, lead) ? one : lead));

interface Series {
  readonly lean: ReadonlyMap<number, ContactSeries>;
  readonly weight: ReadonlyMap<number, ContactSeries>;
}

type Judge = (
  candidate: Candidate | undefined,
  lean: ContactSeries | undefined,
  weight: ContactSeries | undefined,
) => Pick<JudgedEnrolment, 'found' | 'why'>;

interface OpenEnrolment {
  readonly clientKey: number;
  readonly client: string;
  readonly candidate: Candidate | undefined;
  readonly lean: ContactSeries | undefined;
  readonly weight: ContactSeries | undefined;
  readonly start: string;
  readonly lossIntended: boolean | null;
}

const openEnrolments = (
  candidates: ReadonlyMap<number, Candidate>,
  { lean, weight }: Series,
): readonly OpenEnrolment[] =>
  [...new Set([...candidates.keys(), ...lean.keys(), ...weight.keys()])].flatMap((enrolment) => {
    const candidate = candidates.get(enrolment);
    const one = { candidate, lean: lean.get(enrolment), weight: weight.get(enrolment) };
    const series = one.weight ?? one.lean;
    const who = series ?? candidate?.change;
    if (who === undefined) return [];
    const start = series === undefined ? (candidate?.row['program_start'] ?? '') : (series.programStart ?? '');
    const lossIntended = series?.lossIntended ?? null;
    return [{ ...one, clientKey: who.clientKey, client: who.client, start: String(start), lossIntended }];
  });

/**
 * A client's open enrolments as they are judged, the last to begin first. Where one program means weight to be lost,
 * the loss is meant whatever another says, and a program that says nothing of weight is not judged: it would find fault
 * with what the other expects.
 */
const judgedTogether = (enrolments: readonly OpenEnrolment[]): readonly OpenEnrolment[] => {
  const said = enrolments.map(({ lossIntended }) => lossIntended);
  if (!said.includes(true)) return enrolments;
  return enrolments
    .filter(({ lossIntended }) => lossIntended !== null)
    .map((one) => (one.weight === undefined ? one : { ...one, weight: { ...one.weight, lossIntended: true } }));
};

/** Every client with an open enrolment, judged by each of them, the last to begin first; clients by id. */
export const judgedByClient = (
  candidates: ReadonlyMap<number, Candidate>,
  series: Series,
  judge: Judge,
): readonly (readonly [JudgedEnrolment, ...JudgedEnrolment[]])[] => {
  const byClient = new Map<number, OpenEnrolment[]>();
  for (const one of openEnrolments(candidates, series))
    byClient.set(one.clientKey, [...(byClient.get(one.clientKey) ?? []), one]);
  const lastToBegin = (a: OpenEnrolment, b: OpenEnrolment): number =>
    Number(a.start < b.start) - Number(a.start > b.start);
  return [...byClient.values()]
    .sort(([a], [b]) => ((a?.client ?? '') < (b?.client ?? '') ? -1 : 1))
    .flatMap((enrolments) => {
      const [first, ...others] = judgedTogether(enrolments.sort(lastToBegin)).map((one): JudgedEnrolment => ({
        ...one,
        ...judge(one.candidate, one.lean, one.weight),
      }));
      return first === undefined ? [] : [[first, ...others] as const];
    });
};
