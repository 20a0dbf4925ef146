import type { ErrorStudy } from '../../../lib/cohort/types/error-study';
import type { PrecisionRow } from '../../../lib/cohort/types/precision-row';
import type { Formatters } from '../../../lib/core/formatters';
import type { Messages } from '../../../lib/core/messages/en';
import type { AgreementData } from '../../../lib/figures/agreement/spec';
import type { ErrorBarsData } from '../../../lib/figures/error-bars/spec';
import type { Measure } from '../../../lib/measures/measure';

type Words = Messages['errorStudy'];

/** Second − first visit of each person against the mean of the week, with the mean difference and the threshold. */
export const differenceFigure = (
  study: ErrorStudy,
  measure: Measure,
  row: PrecisionRow | undefined,
  words: Words,
  f: Formatters,
): AgreementData => ({
  unit: measure.unit,
  digits: measure.decimals + 1,
  meanTitle: words.meanTitle({ value: measure.name }),
  differenceTitle: words.differenceTitle,
  points: study.clusters.map(({ key, client, from, mean, difference }) => ({
    key,
    label: `${client}, ${f.dateShort(from)}`,
    first: mean + difference / 2,
    second: mean - difference / 2,
  })),
  ...(row === undefined || row.lsc === null || row.form === 'log' || study.drift === null
    ? {}
    : { agreement: { bias: study.drift.mean, limits: [-row.lsc, row.lsc] as const }, lineNames: words.lines }),
});

/** PE of each quarter with its range. */
export const quartersFigure = (study: ErrorStudy, measure: Measure, words: Words): ErrorBarsData => ({
  title: words.pe,
  values: study.quarters.map(({ quarter, people, df, pe, interval }) => ({
    id: quarter,
    label: words.quarter({ quarter, people }),
    unit: measure.unit,
    digits: measure.decimals + 1,
    estimate: pe,
    low: interval[0],
    high: interval[1],
    note: words.groups.note({ df }),
  })),
});
