import { FORMULAS } from '../measures/formulas';
import { docsTable } from './docs-table';
import { DOCS_VERIFICATION } from './docs-verification';

/** The formulas beside the values that are followed: calculators of the screen Methods. */
export const docsFormulas = (): string =>
  docsTable(
    ['id', 'name', 'unit', 'formula', 'source', 'verification'],
    FORMULAS.map(({ id, name, unit, sign, notation, source, verification }) => [
      `\`${id}\``,
      name,
      unit,
      `${sign} = ${notation}`,
      source,
      DOCS_VERIFICATION[verification],
    ]),
  );
