import { MEASURES } from '../measures/catalogue';
import type { Equation, Verification } from '../measures/equation';
import { docsTable } from './docs-table';

const VERIFICATION: Readonly<Record<Verification, string>> = {
  definition: 'a definition',
  'read-in-abstract': 'read in the paper’s abstract or first page',
  'read-in-secondary-text': 'read in a later text that quotes it',
  'from-memory': 'from memory, not verified',
};

const population = ({ population: { description, ageYears, bmi } }: Equation): string =>
  [
    description,
    ageYears === undefined ? '' : `${String(ageYears[0])}–${String(ageYears[1])} years`,
    bmi === undefined ? '' : `BMI ${String(bmi[0])}–${String(bmi[1])}`,
  ]
    .filter((text) => text !== '')
    .join(', ');

/** The values that lists, files and the command line know: id, name, unit, formula, source, and for whom an equation was made. */
export const docsMeasures = (): string =>
  docsTable(
    ['id', 'name', 'unit (UCUM)', 'formula', 'source', 'verification', 'electrode path, posture', 'made for'],
    MEASURES.map(({ id, name, unit, notation, source, verification, recordedAs, equation }) => [
      `\`${id}\``,
      name,
      unit,
      recordedAs === undefined ? notation : `\`${recordedAs}\``,
      source,
      recordedAs === undefined ? VERIFICATION[verification] : 'as recorded',
      equation === undefined
        ? ''
        : `${equation.electrodePath}, ${equation.posture}, ${String(equation.frequencyKhz)} kHz`,
      equation === undefined ? '' : population(equation),
    ]),
  );
