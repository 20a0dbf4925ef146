import { catalogueFor, DEFAULT_CATALOGUE, DEFAULT_EQUATIONS } from '../measures/catalogue';
import { PUBLISHED_EQUATIONS } from '../measures/equations/published-equations';
import type { Measure } from '../measures/measure';
import { DOCS_VERIFICATION } from './docs-verification';
import { docsTable } from './docs-table';

/** Each quantity computed by some equation, so that every value of the catalogue stands in the table. */
const EVERY_MEASURE: readonly Measure[] = catalogueFor({
  ...DEFAULT_EQUATIONS,
  ...Object.fromEntries(
    (['asm', 'tbw', 'ecw'] as const).map((quantity) => [
      quantity,
      PUBLISHED_EQUATIONS.find((equation) => equation.quantity === quantity) ?? null,
    ]),
  ),
  geometryCorrected: true,
}).measures;

/** The values that lists, files and the command line know: id, name, unit, formula, source and how far it was read. */
export const docsMeasures = (): string =>
  docsTable(
    ['id', 'name', 'unit (UCUM)', 'formula', 'source', 'verification', 'followed'],
    EVERY_MEASURE.map(({ id, name, unit, notation, source, verification, recordedAs, equation }) => {
      const followed = DEFAULT_CATALOGUE.follows(id);
      return [
        `\`${id}\``,
        name,
        unit,
        recordedAs === undefined
          ? followed || equation === undefined
            ? notation
            : 'the chosen equation'
          : `\`${recordedAs}\``,
        followed || equation === undefined ? source : 'the chosen equation',
        recordedAs !== undefined
          ? 'as recorded'
          : followed || equation === undefined
            ? DOCS_VERIFICATION[verification]
            : '',
        followed ? 'always' : 'when a clinic chooses it',
      ];
    }),
  );
