import { citationLine } from '../measures/citation';
import { equationNotation } from '../measures/equation-notation';
import type { Equation } from '../measures/equation';
import { PUBLISHED_EQUATIONS } from '../measures/equations/published-equations';
import { DOCS_VERIFICATION } from './docs-verification';
import { docsTable } from './docs-table';

const population = ({ population: { description, ageYears, ageFrom, bmi } }: Equation): string =>
  [
    description,
    ageYears === undefined ? '' : `${String(ageYears[0])}–${String(ageYears[1])} years`,
    ageFrom === undefined ? '' : `from ${String(ageFrom)} years`,
    bmi === undefined ? '' : `BMI ${String(bmi[0])}–${String(bmi[1])}`,
  ]
    .filter((text) => text !== '')
    .join(', ');

const measurement = ({ electrodePath, posture, frequencyKhz }: Equation): string =>
  electrodePath === null
    ? 'no impedance'
    : [electrodePath, posture, frequencyKhz === null ? null : `${String(frequencyKhz)} kHz`]
        .filter((part) => part !== null)
        .join(', ');

const fit = ({ fit: { r, r2, see, words, fromMemory }, unit }: Equation): string =>
  [
    r === undefined ? '' : `r ${String(r)}`,
    r2 === undefined ? '' : `R² ${String(r2)}`,
    see === undefined ? '' : `SEE ${String(see)} ${unit}`,
    words ?? '',
    fromMemory === true ? '(from memory)' : '',
  ]
    .filter((text) => text !== '')
    .join(', ');

/** Every equation of the catalogue, with for whom it was made and how far it was verified. */
export const docsEquations = (): string =>
  docsTable(
    ['id', 'name', 'for', 'unit', 'equation', 'measured', 'reference', 'made for', 'fit', 'source', 'verification'],
    PUBLISHED_EQUATIONS.map((equation) => [
      `\`${equation.id}\``,
      equation.name,
      equation.quantity,
      equation.unit,
      equationNotation(equation),
      measurement(equation),
      equation.referenceMethod,
      population(equation),
      fit(equation),
      citationLine(equation.citation),
      DOCS_VERIFICATION[equation.verification],
    ]),
  );
