import type { ExportAgreement } from '../../../lib/cohort/types/methods';
import type { Formatters } from '../../../lib/core/formatters';
import type { Messages } from '../../../lib/core/messages/en';
import type { AgreementData } from '../../../lib/figures/agreement/spec';
import { MEASURE_FACTS } from '../../../lib/measures/measure-facts';
import type { DataColumn } from '../../_ui/data-column';

type Words = Messages['methods']['agreement'];
/** A mean of many people is known better than one of them: one more decimal. */
const digitsOf = ({ computed }: ExportAgreement): number => MEASURE_FACTS[computed].decimals + 1;

/** What the differences of one value say, in a sentence; that they are too few where they are. */
export const agreementFinding = (row: ExportAgreement, name: string, words: Words, f: Formatters): string => {
  const { agreement, points } = row;
  if (agreement === undefined) return words.tooFew({ n: points.length, value: name });
  const { unit } = MEASURE_FACTS[row.computed];
  const digits = digitsOf(row);
  const write = (value: number): string => f.change(value, unit, digits);
  const label = f.unit(unit);
  const withUnit = (text: string): string => (label === '°' ? `${text}°` : `${text}\u00A0${label}`);
  return words.finding({
    value: name,
    bias: withUnit(write(agreement.bias)),
    low: write(agreement.biasInterval[0]),
    high: write(agreement.biasInterval[1]),
    lower: write(agreement.limits[0]),
    upper: withUnit(write(agreement.limits[1])),
    n: agreement.n,
  });
};

/** The figure's data of one value. */
export const agreementFigure = (row: ExportAgreement, name: string, words: Words, f: Formatters): AgreementData => ({
  unit: MEASURE_FACTS[row.computed].unit,
  digits: digitsOf(row),
  meanTitle: words.meanTitle({ value: name }),
  differenceTitle: words.differenceTitle,
  points: row.points.map((point) => ({
    key: String(point.clientKey),
    label: `${point.client}, ${f.dateShort(point.date)}`,
    first: point.exported,
    second: point.computed,
  })),
  ...(row.agreement === undefined ? {} : { agreement: row.agreement }),
});

/** The table of every value that exists twice; each row in its own unit. */
export const agreementColumns = (
  words: Words,
  nameOf: (row: ExportAgreement) => string,
  f: Formatters,
): readonly DataColumn<ExportAgreement>[] => {
  const number = (
    id: string,
    title: string,
    value: (row: NonNullable<ExportAgreement['agreement']>) => number,
  ): DataColumn<ExportAgreement> => ({
    id,
    title,
    kind: 'change',
    value: ({ agreement }) => (agreement === undefined ? null : value(agreement)),
    cell: (row) =>
      row.agreement === undefined
        ? undefined
        : f.change(value(row.agreement), MEASURE_FACTS[row.computed].unit, digitsOf(row)),
  });
  return [
    { id: 'value', title: words.columns.value, value: nameOf, width: 'wide' },
    { id: 'unit', title: words.columns.unit, value: (row) => f.unit(MEASURE_FACTS[row.computed].unit) },
    { id: 'n', title: words.columns.n, kind: 'number', value: ({ points }) => points.length },
    number('bias', words.columns.bias, ({ bias }) => bias),
    {
      id: 'interval',
      title: words.columns.interval,
      value: ({ agreement }) =>
        agreement === undefined
          ? null
          : words.range({
              low: agreement.biasInterval[0].toFixed(4),
              high: agreement.biasInterval[1].toFixed(4),
            }),
      cell: (row) => {
        if (row.agreement === undefined) return undefined;
        const write = (value: number): string => f.change(value, MEASURE_FACTS[row.computed].unit, digitsOf(row));
        const [low, high] = row.agreement.biasInterval;
        return words.range({ low: write(low), high: write(high) });
      },
    },
    number('lower', words.columns.lower, ({ limits }) => limits[0]),
    number('upper', words.columns.upper, ({ limits }) => limits[1]),
  ];
};
