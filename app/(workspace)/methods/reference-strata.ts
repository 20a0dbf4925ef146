import type { Formatters } from '../../../lib/core/formatters';
import type { Messages } from '../../../lib/core/messages/en';
import {
  REFERENCE_PERCENTILES,
  type ReferenceFigures,
  type ReferenceSet,
  type ReferenceStratum,
} from '../../../lib/measures/references/reference-set';
import { plainNumber } from './entry-words';

/** A group of a reference population: cells in the order of the columns. */
export interface StrataTable {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

const agesOf = ({ ageFrom, ageBelow }: ReferenceStratum, words: Messages['methodsEntries']['reference']): string =>
  ageBelow === undefined ? words.agesOpen({ from: ageFrom }) : words.agesBelow({ from: ageFrom, to: ageBelow });

/** The percentiles of the indices by sex and age; undefined where a reference gives none. */
export const percentileTable = (
  reference: ReferenceSet,
  messages: Messages,
  f: Formatters,
): StrataTable | undefined => {
  if (reference.kind !== 'indices') return undefined;
  const words = messages.methodsEntries.reference;
  const rows = reference.strata.flatMap((one) =>
    (['ffmi', 'fmi'] as const).flatMap((index) => {
      const { percentiles } = one[index];
      if (percentiles === undefined) return [];
      const who = [messages.methodsEntries.sexes[one.sex], agesOf(one, words)];
      return [[...who, `${messages.measures[index].short}, kg/m²`, ...percentiles.map((value) => f.number(value, 1))]];
    }),
  );
  if (rows.length === 0) return undefined;
  return {
    columns: [words.sex, words.ages, words.value, ...REFERENCE_PERCENTILES.map((p) => words.percentile({ p }))],
    rows,
  };
};

/** The figures of a reference population by sex and age, as text. */
export const strataTable = (reference: ReferenceSet, messages: Messages, f: Formatters): StrataTable => {
  const words = messages.methodsEntries.reference;
  const who = (stratum: ReferenceStratum): readonly string[] => [
    messages.methodsEntries.sexes[stratum.sex],
    agesOf(stratum, words),
    stratum.n === undefined ? '' : f.number(stratum.n),
  ];
  const figures = ({ mean, sd }: ReferenceFigures): string =>
    words.meanSd({ mean: f.number(mean, 1), sd: f.number(sd, 1) });
  const r = (value: number | undefined): string => (value === undefined ? '' : f.number(value, 2));
  const head = [words.sex, words.ages, words.n];
  switch (reference.kind) {
    case 'vector':
      return {
        columns: [
          ...head,
          words.mean({ value: `${messages.measures.r_h.short}, Ω/m` }),
          words.mean({ value: `${messages.measures.xc_h.short}, Ω/m` }),
          words.correlation,
        ],
        rows: reference.strata.map((one) => [...who(one), figures(one.rh), figures(one.xch), r(one.r)]),
      };
    case 'indices':
      return {
        columns: [
          ...head,
          words.mean({ value: `${messages.measures.ffmi.short}, kg/m²` }),
          words.mean({ value: `${messages.measures.fmi.short}, kg/m²` }),
          words.correlation,
        ],
        rows: reference.strata.map((one) => [...who(one), figures(one.ffmi), figures(one.fmi), r(one.r)]),
      };
    case 'index-medians':
      return {
        columns: [
          ...head,
          words.median({ value: `${messages.measures.ffmi.short}, kg/m²` }),
          words.median({ value: `${messages.measures.fmi.short}, kg/m²` }),
        ],
        rows: reference.strata.map((one) => [...who(one), f.number(one.ffmi, 1), f.number(one.fmi, 1)]),
      };
    case 'phase-angle':
      return {
        columns: [...head, words.mean({ value: `${messages.measures.phase_angle.short}, °` })],
        rows: reference.strata.map((one) => [
          ...who(one),
          one.spread.kind === 'sd'
            ? words.meanSd({ mean: plainNumber(one.mean, f), sd: plainNumber(one.spread.sd, f) })
            : words.meanInterval({
                mean: plainNumber(one.mean, f),
                low: plainNumber(one.spread.low, f),
                high: plainNumber(one.spread.high, f),
              }),
        ]),
      };
  }
};
