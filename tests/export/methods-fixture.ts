import { DEFAULT_SETTINGS, settingsSchema, type Settings } from '../../lib/cohort/settings';
import { equationsInForce } from '../../lib/cohort/equations-in-force';
import type { PrecisionRow } from '../../lib/cohort/types/precision-row';
import type { EquationFit } from '../../lib/cohort/types/methods';
import { createFormatters } from '../../lib/core/formatters';
import { parseIsoDate, type IsoDate } from '../../lib/core/iso-date';
import { methodsParagraph as words } from '../../lib/core/messages/en/methods-paragraph';
import type { MethodsInput } from '../../lib/export/methods/methods-input';
import { methodsParagraph, type MethodsParagraph } from '../../lib/export/methods-paragraph';
import { catalogueFor } from '../../lib/measures/catalogue';
import type { Equation } from '../../lib/measures/equation';
import type { AnyMeasureId } from '../../lib/measures/measure-id';
import { limitsOfAgreement } from '../../lib/stats/limits-of-agreement';

const date = (text: string): IsoDate => {
  const parsed = parseIsoDate(text);
  if (parsed === undefined) throw new Error(text);
  return parsed;
};

/** An own between-day error from 33 people. */
export const ownRow = (measure: AnyMeasureId, changes: Partial<PrecisionRow> = {}): PrecisionRow => ({
  measure,
  tier: 1,
  clients: 33,
  sw: 0.4,
  dfWithin: 90,
  sb: 0.6,
  m: 0.5,
  dfBetween: 41,
  h: 0.5,
  factor: 1.959963984540054,
  pe: 0.7,
  peInterval: [0.6, 0.9],
  lsc: 1.94,
  lscInterval: [1.6, 2.5],
  changedPer100: [2, 12],
  form: 'sd',
  provisional: false,
  twoBetween: 0.72,
  within: 0.16,
  ...changes,
});

export const fit = (equation: Equation, visits: number, inside: number): EquationFit => ({
  quantity: equation.quantity,
  equation,
  visits,
  inside,
  outside: [{ code: 'age_outside_equation', visits: visits - inside }],
});

/** A small clinic's facts; the catalogue follows from the settings. */
export const methodsInput = (
  changes: Partial<MethodsInput> = {},
  methods: Partial<Settings['methods']> = {},
): MethodsInput => {
  const settings = settingsSchema.parse({
    ...DEFAULT_SETTINGS,
    methods: { ...DEFAULT_SETTINGS.methods, ...methods },
  });
  const catalogue = catalogueFor(equationsInForce(settings));
  return {
    softwareVersion: '0.1.0',
    dataVersion: 'ab12cd',
    catalogue,
    settings,
    summary: {
      asOf: date('2026-03-01'),
      firstVisit: date('2024-05-04'),
      clients: 87,
      visits: 312,
      readings: 590,
      visitsSinceMonday: 4,
      usableSinceMonday: 4,
      programs: [],
      sites: [],
      coverage: [
        { rule: 'fasting', recorded: 500, byProcedure: 45, unknown: 45, notRecorded: 0 },
        { rule: 'alcohol', recorded: 0, byProcedure: 0, unknown: 0, notRecorded: 590 },
      ],
      conditionsKnown: true,
      hasImpedance: true,
      knowsBmi: true,
      pairsBySetting: { strict: 40, caution: 52, all: 61 },
      byProcedure: { visits: 45, pairs: 4 },
      openingSetting: 'strict',
      posture: 'lying',
    },
    instrument: null,
    reported: ['weight', 'ffm', 'smm'],
    level: 95,
    comparable: 'strict',
    precision: [ownRow('weight'), ownRow('ffm'), ownRow('smm')],
    fits: [fit(catalogue.equations.ffm, 300, 270)],
    restingEnergy: null,
    meanChanges: false,
    vectors: false,
    agreements: [],
    ...changes,
  };
};

export const agreementOf = (...differences: readonly number[]): MethodsInput['agreements'] => [
  { computed: 'ffm', exported: 'ffm_exported', points: [], agreement: limitsOfAgreement(differences) },
];

const format = createFormatters('en-GB');

export const paragraphOf = (input: MethodsInput): MethodsParagraph => methodsParagraph(input, words(format), format);
