import type { FigureWords } from '../figure-context';
import type { FigureTable } from '../figure-table';
import type { ChangeTermsSpec } from './spec';

/** The text alternative: the change and its parts. */
export const describeChangeTerms = (spec: ChangeTermsSpec, words: FigureWords): string =>
  spec.message ??
  `${words.changeTerms({ title: spec.title, change: spec.change.valueLabel })} ${spec.terms
    .map((term) => words.term({ label: term.label, value: term.valueLabel }))
    .join('; ')}.`;

/** One row per part, the change last. */
export const tableChangeTerms = (spec: ChangeTermsSpec, words: FigureWords): FigureTable => ({
  columns: [
    { title: words.columnPart, align: 'start' },
    { title: spec.title, align: 'end' },
  ],
  rows: spec.message === undefined ? [...spec.terms, spec.change].map((term) => [term.label, term.valueLabel]) : [],
});
