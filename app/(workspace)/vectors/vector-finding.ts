import type { VectorAnalysis, VectorGroup, VectorReference } from '../../../lib/cohort/types/vector-analysis';
import type { vectors } from '../../../lib/core/messages/en/vectors';
import { scaledDistance } from './scaled-distance';

type Words = ReturnType<typeof vectors>;

/** Share of the reference's mean from which a difference is put into words. */
const WORTH_A_WORD = 0.02;

const comparedWith = (value: number, reference: number): 'lower' | 'higher' | null => {
  if (Math.abs(value - reference) < WORTH_A_WORD * reference) return null;
  return value < reference ? 'lower' : 'higher';
};

const standsClear = (group: VectorGroup, reference: VectorReference): boolean =>
  group.confidence95 !== null && scaledDistance(group.confidence95, reference.mean) > 1;

/**
 * What one sex's figure shows, as a sentence: the program whose mean vector lies furthest from the clinic's own baseline,
 * among those whose confidence ellipse leaves the baseline's mean outside. Descriptive; the tests stand in the table.
 */
export const vectorFinding = (analysis: VectorAnalysis, sex: 'F' | 'M', words: Words): string => {
  const n = analysis.points.filter((point) => point.sex === sex).length;
  if (n === 0) return words.noPoints({ sex });
  const reference = analysis.reference.find((one) => one.sex === sex);
  const outer = reference?.ellipses.find((one) => one.level === 0.95)?.ellipse;
  if (reference === undefined || outer === undefined) return words.findingPlain({ sex, n });
  const clear = analysis.groups
    .filter((group) => group.sex === sex && standsClear(group, reference))
    .map((group) => ({ group, distance: scaledDistance(outer, group.mean) }))
    .sort((a, b) => b.distance - a.distance);
  const [furthest] = clear;
  if (furthest === undefined) return words.findingNear({ sex });
  return words.findingFar({
    sex,
    program: furthest.group.program,
    resistance: comparedWith(furthest.group.mean[0], reference.mean[0]),
    reactance: comparedWith(furthest.group.mean[1], reference.mean[1]),
  });
};
