import type { Formatters } from '../../../lib/core/formatters';
import type { Messages } from '../../../lib/core/messages/en';
import type { ReferenceFigures, ReferenceSet, ReferenceStratum } from '../../../lib/measures/references/reference-set';
import { plainNumber } from './entry-words';

/** A group of a reference population: cells in the order of the columns. */
export interface StrataTable {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** The figures of a reference population by sex and age, as text. */
export const strataTable = (reference: ReferenceSet, messages: Messages, f: Formatters): StrataTable => {
  const words = messages.methodsEntries.reference;
  const who = ({ sex, ageFrom, ageBelow, n }: ReferenceStratum): readonly string[] => [
    messages.methodsEntries.sexes[sex],
    ageBelow === undefined ? words.agesOpen({ from: ageFrom }) : words.agesBelow({ from: ageFrom, to: ageBelow }),
    n === undefined ? '' : f.number(n),
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
