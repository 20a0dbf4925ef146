import type { Formatters } from '../../../lib/core/formatters';
import type { Messages } from '../../../lib/core/messages/en';
import type { Equation } from '../../../lib/measures/equation';
import type { FormulaUse } from './formula-use';
import type { MethodEntry } from './method-entries';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The name of an entry. */
export const entryName = (entry: MethodEntry, messages: Messages): string => {
  switch (entry.kind) {
    case 'value':
      return capital(messages.measures[entry.measureId].name);
    case 'formula':
      return entry.formula.name;
    case 'equation':
      return entry.equation.name;
    case 'reference':
      return entry.reference.name;
    case 'cut-off':
      return entry.cutOff.name;
  }
};

/** What exactly it is about: the quantity of an equation, reference or cut-off. */
export const entryAbout = (entry: MethodEntry, messages: Messages): string => {
  switch (entry.kind) {
    case 'value':
    case 'formula':
      return messages.methodsEntries.about[entry.about];
    case 'equation':
      return messages.methods.quantity[entry.equation.quantity];
    case 'reference':
      return messages.methodsEntries.reference.kind[entry.reference.kind];
    case 'cut-off':
      return messages.methodsEntries.cutOff.quantity[entry.cutOff.quantity];
  }
};

/** For whom an equation was made: the group in words, ages, body mass index, n, sex. */
export const groupWords = ({ population }: Pick<Equation, 'population'>, messages: Messages, f: Formatters): string => {
  const words = messages.methodsEntries;
  const { description, n, ageYears, ageFrom, bmi, sex, fromMemory } = population;
  const parts = [
    description,
    ...(sex === undefined ? [] : [words.sexes[sex]]),
    ...(ageYears === undefined ? [] : [words.ages({ from: ageYears[0], to: ageYears[1] })]),
    ...(ageFrom === undefined ? [] : [words.agesFrom({ from: ageFrom })]),
    ...(bmi === undefined ? [] : [words.bmi({ from: plainNumber(bmi[0], f), to: plainNumber(bmi[1], f) })]),
    ...(n === undefined || description.includes(String(n)) ? [] : [words.n({ n })]),
  ].join(', ');
  if (fromMemory === undefined || fromMemory.length === 0) return parts;
  return `${parts} (${words.partsFromMemory({ parts: [...new Set(fromMemory.map((part) => words.populationPart[part]))] })})`;
};

/** A figure with as many decimals as it has. */
export const plainNumber = (value: number, f: Formatters): string =>
  f.number(value, Math.min(6, (String(Math.abs(value)).split('.')[1] ?? '').length));

/** For whom an entry was made, short. */
export const entryGroup = (entry: MethodEntry, messages: Messages, f: Formatters): string => {
  switch (entry.kind) {
    case 'value':
      return entry.measure?.equation === undefined ? '' : groupWords(entry.measure.equation, messages, f);
    case 'formula':
      return '';
    case 'equation':
      return groupWords(entry.equation, messages, f);
    case 'reference':
      return entry.reference.kind === 'own-cohort' ? entry.reference.label : entry.reference.population;
    case 'cut-off':
      return entry.cutOff.group ?? '';
  }
};

/** Path, frequency and posture of an equation; that it needs no impedance. */
export const measuredWords = (
  { electrodePath, frequencyKhz, posture }: Pick<Equation, 'electrodePath' | 'frequencyKhz' | 'posture'>,
  messages: Messages,
): string => {
  const words = messages.methodsEntries;
  if (electrodePath === null) return words.noImpedance;
  return [
    words.path({ path: electrodePath }),
    ...(frequencyKhz === null ? [] : [words.khz({ khz: frequencyKhz })]),
    ...(posture === null ? [] : [words.posture[posture]]),
  ].join(', ');
};

/** How well an equation fitted where it was made. */
export const fitWords = ({ fit, unit }: Equation, messages: Messages, f: Formatters): string => {
  const words = messages.methodsEntries;
  const parts = [
    ...(fit.r === undefined ? [] : [`r ${plainNumber(fit.r, f)}`]),
    ...(fit.r2 === undefined ? [] : [`R² ${plainNumber(fit.r2, f)}`]),
    ...(fit.see === undefined ? [] : [words.see({ see: plainNumber(fit.see, f), unit })]),
    ...(fit.words === undefined ? [] : [fit.words]),
  ];
  if (parts.length === 0) return words.fitNone;
  return `${parts.join(', ')}${fit.fromMemory === true ? ` ${words.fitFromMemory}` : ''}`;
};

/** Where a formula is used in the open clinic. */
export const formulaUseWords = (use: FormulaUse, { methodsEntries: words }: Messages): string => {
  switch (use.kind) {
    case 'energy-of-tissue':
      return words.usedForTissue;
    case 'term':
      return words.usedAsTerm({ equations: use.equations.map(({ name }) => name) });
    case 'calculator':
      return words.usedByCalculator;
  }
};
