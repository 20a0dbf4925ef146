import type { FigureWords } from '../figure-context';
import type { FigureTable } from '../figure-table';
import type { AgreementSpec } from './spec';

/** The text alternative: how many people, bias and limits. */
export const describeAgreement = (spec: AgreementSpec, words: FigureWords): string =>
  spec.message ??
  [
    words.agreement({ title: spec.y.title, n: spec.points.length }),
    spec.lines.length === 0 ? words.agreementTooFew : `${spec.lines.map(({ text }) => text).join('; ')}.`,
  ].join(' ');

/** One row per person: mean and difference. */
export const tableAgreement = (spec: AgreementSpec, words: FigureWords): FigureTable => ({
  columns: [
    { title: words.columnPoint, align: 'start' },
    { title: spec.x.title, align: 'end' },
    { title: spec.y.title, align: 'end' },
  ],
  rows: spec.points.map(({ label, meanText, differenceText }) => [label, meanText, differenceText]),
});
