import type { MethodsWords } from '../../core/messages/en/methods-paragraph';
import {
  BLAND_ALTMAN_1986,
  BLAND_ALTMAN_1999,
  FAST_WEIGHT_LOSS_2023,
  KRISHNAMOORTHY_YU_2004,
  PICCOLI_1994,
} from '../../measures/citations';
import type { Cite } from './citing';
import { describedEquations, reportsComposition, reportsVectors, shownAgreements } from './methods-facts';
import type { MethodsInput } from './methods-input';

/** The statistics that the report shows. */
export const statisticsSentences = (input: MethodsInput, words: MethodsWords, cite: Cite): readonly string[] => {
  const agreements = shownAgreements(input).map(({ computed, n }) => ({
    name: input.catalogue.measure(computed).name,
    n,
  }));
  return [
    ...(input.meanChanges ? [words.meanChanges] : []),
    ...(reportsVectors(input)
      ? [words.vectors({ cite: cite(PICCOLI_1994), citeUnequal: cite(KRISHNAMOORTHY_YU_2004) })]
      : []),
    ...(agreements.length === 0
      ? []
      : [words.agreements({ all: agreements, cite: cite(BLAND_ALTMAN_1986, BLAND_ALTMAN_1999) })]),
  ];
};

/** What a reader must not conclude. */
export const cautionSentences = (input: MethodsInput, words: MethodsWords, cite: Cite): readonly string[] => {
  const equations = describedEquations(input);
  const { posture } = input.summary;
  const lying =
    posture === 'standing' || posture === 'mixed' ? equations.filter((equation) => equation.posture === 'lying') : [];
  const own = equations.flatMap(({ name, cautions }) =>
    cautions.map((caution) => words.equationCaution({ name, caution })),
  );
  return [
    words.caution,
    ...(reportsComposition(input)
      ? [words.waterOrMuscle, words.fastWeightLoss({ cite: cite(FAST_WEIGHT_LOSS_2023) })]
      : []),
    ...(lying.length === 0 ? [] : [words.lyingEquation({ names: lying.map(({ name }) => name) })]),
    ...(input.meanChanges ? [words.notEffect] : []),
    ...new Set(own),
  ];
};
