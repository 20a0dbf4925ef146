import { docsCodebook, docsColumns } from './docs-columns';
import { docsEquations } from './docs-equations';
import { docsFormulas } from './docs-formulas';
import { docsMeasures } from './docs-measures';
import { withGenerated, type GeneratedBlock } from './with-generated';

interface DocsPage {
  readonly path: string;
  /** The page with its generated blocks current; what stands around them is kept. */
  readonly current: (page: string) => string;
}

const README: readonly GeneratedBlock[] = [
  { name: 'columns', heading: '## Visit export', text: docsColumns },
  { name: 'measures', heading: '## Values', text: docsMeasures },
  { name: 'equations', heading: '## Equations', text: docsEquations },
  { name: 'formulas', heading: '## Formulas', text: docsFormulas },
];

const CODEBOOK: readonly GeneratedBlock[] = [
  {
    name: 'codebook',
    heading: '# Codebook of the visit export',
    text: () =>
      [
        'One row per reading. Header row, UTF-8, comma, decimal point, dates YYYY-MM-DD. Empty means unknown, never “no”. Generated from',
        'the column catalogue (`npm run docs`); units are UCUM codes.',
        '',
        docsCodebook(),
      ].join('\n'),
  },
];

const page = (path: string, blocks: readonly GeneratedBlock[]): DocsPage => ({
  path,
  current: (text) => blocks.reduce(withGenerated, text),
});

/** The pages that hold generated blocks. */
export const DOCS_PAGES: readonly DocsPage[] = [page('README.md', README), page('sample-data/CODEBOOK.md', CODEBOOK)];
