import { isExported } from '../../cohort/is-exported';
import type { MethodsWords } from '../../core/messages/en/methods-paragraph';
import { MARINI_2013, SARAGAT_2014, SCHUTZ_2002 } from '../../measures/citations';
import type { Measure } from '../../measures/measure';
import type { Cite } from './citing';
import { reportedMeasures } from './methods-facts';
import type { MethodsInput } from './methods-input';

const CORRECTED: readonly Measure['id'][] = ['r_specific', 'xc_specific'];
const INDICES: readonly Measure['id'][] = ['ffmi', 'fmi'];

const withNotation = ({ id, name, notation, equation }: Measure) => ({
  name,
  notation: equation?.quantity === id ? '' : notation,
});

/** Which values are reported and how each is got. */
export const valueSentences = (input: MethodsInput, words: MethodsWords, cite: Cite): readonly string[] => {
  const measures = reportedMeasures(input);
  const names = (held: readonly Measure[]): readonly string[] => held.map(({ name }) => name);
  const exported = measures.filter(isExported);
  const recorded = measures.filter((measure) => measure.recordedAs !== undefined && !isExported(measure));
  const fromEquations = measures.filter(({ equation }) => equation !== undefined);
  const corrected = measures.filter(({ id }) => CORRECTED.includes(id));
  const others = [...exported, ...recorded, ...fromEquations, ...corrected];
  const defined = measures.filter((measure) => !others.includes(measure));
  const indexWorks = fromEquations.some(({ id }) => INDICES.includes(id)) ? [SCHUTZ_2002] : [];
  return [
    ...(recorded.length === 0 ? [] : [words.asRecorded({ names: names(recorded) })]),
    ...(defined.length === 0 ? [] : [words.byDefinition({ all: defined.map(withNotation) })]),
    ...(exported.length === 0 ? [] : [words.exported({ names: names(exported) })]),
    ...(fromEquations.length === 0
      ? []
      : [words.fromEquations({ all: fromEquations.map(withNotation), cite: cite(...indexWorks) })]),
    ...(corrected.length === 0
      ? []
      : [words.geometryCorrected({ all: corrected.map(withNotation), cite: cite(MARINI_2013, SARAGAT_2014) })]),
  ];
};
