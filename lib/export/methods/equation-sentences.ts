import type { EquationFit } from '../../cohort/types/methods';
import type { MethodsWords } from '../../core/messages/en/methods-paragraph';
import type { Equation } from '../../measures/equation';
import { equationNotation } from '../../measures/equation-notation';
import type { Cite } from './citing';
import { describedEquations } from './methods-facts';
import type { MethodsInput } from './methods-input';

const usesSex = ({ branches }: Equation): boolean =>
  branches.some(({ terms, dividedBy }) =>
    [...terms, ...(dividedBy?.terms ?? [])].some(({ regressor }) => regressor === 'sex'),
  );

const fitSentence = ({ visits, inside, outside }: EquationFit, words: MethodsWords): string => {
  if (visits === 0) return words.noVisit;
  return outside.length === 0 ? words.groupUnknown({ visits }) : words.inside({ inside, visits });
};

const sentencesOf = (
  equation: Equation,
  fit: EquationFit | undefined,
  words: MethodsWords,
  cite: Cite,
): readonly string[] => {
  const { name, version, unit, quantity, sexCoding, verification, verificationNote } = equation;
  const { population, electrodePath, posture, frequencyKhz } = equation;
  return [
    words.equation({
      quantity: words.quantity[quantity],
      name,
      cite: cite(equation.citation),
      version,
      notation: equationNotation(equation),
      unit,
    }),
    ...(usesSex(equation) ? [sexCoding.M === 1 ? words.sexCoding.maleOne : words.sexCoding.femaleOne] : []),
    words.verification[verification],
    ...(verificationNote === '' ? [] : [verificationNote]),
    words.madeFor({ description: population.description, path: electrodePath, posture, kilohertz: frequencyKhz }),
    ...(fit === undefined ? [] : [fitSentence(fit, words)]),
  ];
};

/** The equations behind the reported values: version, origin, for whom, and how many visits lie in that group. */
export const equationSentences = (input: MethodsInput, words: MethodsWords, cite: Cite): readonly string[] => {
  const equations = describedEquations(input);
  const fitOf = ({ id, version }: Equation): EquationFit | undefined =>
    input.fits.find(({ equation }) => equation.id === id && equation.version === version);
  return [
    ...(equations.length === 0 ? [] : [words.symbols]),
    ...equations.flatMap((equation) => sentencesOf(equation, fitOf(equation), words, cite)),
    ...(equations.some(({ quantity }) => quantity !== 'ree') ? [words.outside[input.settings.outsideEquation]] : []),
  ];
};
