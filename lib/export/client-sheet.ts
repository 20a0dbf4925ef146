import { newestChange } from '../cohort/newest-change';
import { judgedMeasureOf } from '../cohort/judged-measure';
import type { ChangeRow } from '../cohort/types/change-row';
import type { ClientDetail, ClientVisit } from '../cohort/types/client-detail';
import type { Formatters } from '../core/formatters';
import type { IsoDate } from '../core/iso-date';
import type { clientPages } from '../core/messages/en/client-pages';
import type { Verification } from '../measures/equation';
import { RULE_IDS, type RuleId } from '../measures/comparability-rule';
import { MEASURE_FACTS } from '../measures/measure-facts';
import type { AnyMeasureId, MeasureId } from '../measures/measure-id';

type Words = ReturnType<typeof clientPages>['plain'];

/** What the page reads of a client. */
type SheetClient = Pick<ClientDetail, 'visits' | 'latestChanges'>;

export interface SheetSection {
  readonly heading: string;
  readonly paragraphs: readonly string[];
  /** As a list. */
  readonly points?: readonly string[];
}

/** The page for the client: plain words, no name, no program, no class of anything. */
export interface ClientSheet {
  readonly title: string;
  readonly sections: readonly SheetSection[];
  /** The goal was kept and is left off, because it may speak of weight or fat. */
  readonly goalLeftOff: boolean;
  readonly foot: string;
}

export interface SheetOptions {
  /** The clinic's lean value. */
  readonly lean: MeasureId;
  /** How far the way in which a value comes about was checked. */
  readonly verificationOf: (measure: AnyMeasureId) => Verification;
  /** No weight or fat, and nothing that lets either be worked out. */
  readonly hidden: boolean;
  readonly goal: string | undefined;
  readonly nextVisit: IsoDate | undefined;
}

const SPEAKS_OF_WEIGHT =
  /\d|weigh|\bfat|\bkg\b|kilo|pound|\blbs?\b|stone|\bslim|\bthin|\bdress size|\bclothes|\bbelly|\bwaist|\bbmi\b|lose|gain/i;

const followed = ({ visits }: SheetClient): readonly ClientVisit[] =>
  visits.filter(({ purpose }) => purpose === '' || purpose === 'routine' || purpose === 'repeat');

const isRule = (reason: string): reason is RuleId => RULE_IDS.some((rule) => rule === reason);

/** Why two days cannot be compared, in plain words. */
const notSame = (row: ChangeRow, words: Words): readonly string[] => {
  const rules = row.reasons.filter(isRule);
  return rules.length === 0
    ? [words.unknownSame]
    : [words.notSame({ what: [...new Set(rules.map((rule) => words.notTheSame[rule]))] })];
};

const measured = (row: ChangeRow, words: Words, f: Formatters, hidden: boolean): readonly string[] => {
  const { unit, decimals } = MEASURE_FACTS[row.measure];
  const size = (value: number, digits = decimals): string => f.quantity(Math.abs(value), unit, digits);
  const date = f.date(row.from);
  const lsc = row.lsc ?? 0;
  // One more decimal where the change and the wobble would read the same and are not.
  const digits = size(row.change) === size(lsc) && Math.abs(row.change) !== lsc ? decimals + 1 : decimals;
  switch (row.result) {
    case null:
      return [MEASURE_FACTS[row.measure].group.startsWith('composition') ? words.notJudgedLean : words.notJudged];
    case 'cannot-compare':
      return [words.cannot({ date }), ...notSame(row, words)];
    case 'no-threshold':
      return [words.noThreshold];
    case 'up':
      return hidden
        ? [words.signalUp({ date })]
        : [
            words.since({ then: size(row.valueFrom), date }),
            words.up({ amount: size(row.change, digits), lsc: size(lsc, digits) }),
          ];
    case 'down':
      return hidden
        ? [words.signalDown({ date })]
        : [
            words.since({ then: size(row.valueFrom), date }),
            words.down({ amount: size(row.change, digits), lsc: size(lsc, digits) }),
          ];
    case 'within':
      return hidden
        ? [words.signalWithin({ date })]
        : [words.since({ then: size(row.valueFrom), date }), words.within({ lsc: size(lsc) })];
  }
};

const explained = ({ result, reasons }: ChangeRow, words: Words): readonly string[] => [
  ...((result === 'up' || result === 'down') && reasons.includes('mostly_weight_term') ? [words.withWeight] : []),
  ...(result === 'down' && reasons.includes('fits_less_water') ? [words.maybeWater] : []),
];

/** A number that rests on an equation from memory, or on the clinic's own, says so. */
const ruleFrom = (verification: Verification, words: Words): readonly string[] =>
  verification === 'from-memory' || verification === 'entered-by-clinic' ? [words.ruleFrom[verification]] : [];

const paragraphOf = (row: ChangeRow, { hidden, verificationOf }: SheetOptions, words: Words, f: Formatters): string => {
  const { unit, decimals } = MEASURE_FACTS[row.measure];
  const now = f.quantity(row.valueTo, unit, decimals);
  const isStopped = row.result === null;
  const begins =
    row.measure === 'phase_angle' || row.measure === 'phase_angle_exported'
      ? [words.signal]
      : isStopped
        ? []
        : row.measure === 'weight'
          ? [words.weight({ now })]
          : [words.lean({ now }), ...ruleFrom(verificationOf(row.measure), words)];
  return [...begins, ...measured(row, words, f, hidden), ...(hidden ? [] : explained(row, words))].join(' ');
};

const changesOf = (detail: SheetClient, { lean, hidden }: SheetOptions): readonly ChangeRow[] => {
  const ids: readonly MeasureId[] = hidden
    ? [judgedMeasureOf(detail.latestChanges, 'phase_angle')]
    : ['weight', judgedMeasureOf(detail.latestChanges, lean)];
  const rows = ids.flatMap((id) => newestChange(detail.latestChanges.filter(({ measure }) => measure === id)) ?? []);
  // Where not even weight is judged, one sentence says so.
  return rows[0]?.result === null ? rows.slice(0, 1) : rows;
};

/** What a client is handed: what was measured, what changed by more than error, what to do the same, when to come again. */
export const clientSheet = (detail: SheetClient, options: SheetOptions, words: Words, f: Formatters): ClientSheet => {
  const { hidden, goal, nextVisit } = options;
  const visits = followed(detail);
  const last = visits.at(-1);
  const changes = changesOf(detail, options);
  const hasCurrent = last?.values.r !== undefined;
  const paragraphs = [...new Set(changes.map((row) => paragraphOf(row, options, words, f)))];
  const goalLeftOff = goal !== undefined && hidden && SPEAKS_OF_WEIGHT.test(goal);
  const posture = last?.posture ?? '';
  return {
    title: words.title,
    goalLeftOff,
    sections: [
      ...(goal === undefined || goalLeftOff ? [] : [{ heading: words.goal, paragraphs: [`“${goal}”`] }]),
      {
        heading: words.measured,
        paragraphs: [
          [
            ...(last === undefined ? [] : [words.onDate({ date: f.date(last.date) })]),
            ...(hidden || last?.values.weight === undefined ? [] : [words.weighed]),
            hasCurrent ? words.current : words.noCurrent,
          ].join(' '),
        ],
      },
      {
        heading: words.changed,
        paragraphs: changes.length === 0 ? [words.single] : [words.wobble, ...paragraphs],
      },
      {
        heading: words.next,
        paragraphs: [[words.sameWay, words.posture[posture] ?? ''].filter((text) => text !== '').join(' ')],
        points: words.rules,
      },
      {
        heading: words.visit,
        paragraphs: nextVisit === undefined ? [] : [words.planned({ date: f.date(nextVisit) })],
      },
    ],
    foot: words.foot,
  };
};
