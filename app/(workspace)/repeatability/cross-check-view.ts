import type { CrossCheck, CrossCheckValue } from '../../../lib/cohort/types/cross-check';
import type { Formatters } from '../../../lib/core/formatters';
import type { Messages } from '../../../lib/core/messages/en';
import type { AgreementData } from '../../../lib/figures/agreement/spec';
import { MEASURE_FACTS } from '../../../lib/measures/measure-facts';

type Words = Messages['devices']['crossCheck'];

/** Difference and limits of one value, in a sentence; undefined for fewer than three people. */
export const crossCheckSentence = (
  { measure, agreement }: CrossCheckValue,
  name: string,
  words: Words,
  f: Formatters,
): string | undefined => {
  if (agreement === undefined) return undefined;
  const { unit, decimals } = MEASURE_FACTS[measure];
  const write = (value: number): string => f.change(value, unit, decimals + 1);
  const label = f.unit(unit);
  return words.bias({
    value: name,
    bias: label === '' || label === '°' ? `${write(agreement.bias)}${label}` : `${write(agreement.bias)}\u00A0${label}`,
    low: write(agreement.biasInterval[0]),
    high: write(agreement.biasInterval[1]),
    lower: write(agreement.limits[0]),
    upper: write(agreement.limits[1]),
    n: agreement.n,
  });
};

/** The figure of one value: second device minus first against the mean of both. */
export const crossCheckFigure = (
  value: CrossCheckValue,
  devices: Pick<CrossCheck, 'first' | 'second'>,
  words: Words,
  f: Formatters,
): AgreementData => ({
  unit: MEASURE_FACTS[value.measure].unit,
  digits: MEASURE_FACTS[value.measure].decimals + 1,
  meanTitle: words.meanTitle,
  differenceTitle: words.pair(devices),
  points: value.points.map(({ clientKey, client, date, first, second }) => ({
    key: String(clientKey),
    label: `${client}, ${f.dateShort(date)}`,
    first: second,
    second: first,
  })),
  ...(value.agreement === undefined ? {} : { agreement: value.agreement }),
});

/** The mean difference of a converted value; undefined where too few were measured. */
export const biasOf = (check: CrossCheck, measure: 'r' | 'xc' | 'weight'): number | undefined =>
  check.values.find((value) => value.measure === measure)?.agreement?.bias;
