import type { VectorAnalysis } from '../../../lib/cohort/types/vector-analysis';
import type { vectors } from '../../../lib/core/messages/en/vectors';

type Words = ReturnType<typeof vectors>;

/** What must be known of how the people of one sex were measured: nothing where all were measured alike. */
export const measuredWays = (analysis: VectorAnalysis, sex: 'F' | 'M', words: Words): readonly string[] => {
  const groups = analysis.groups.filter((group) => group.sex === sex);
  const ways = new Map<string, number>();
  for (const { ways: own } of groups)
    for (const { posture, electrodePath, n } of own) {
      const way = words.way({ posture, path: electrodePath });
      ways.set(way, (ways.get(way) ?? 0) + n);
    }
  const reference = analysis.reference.find((one) => one.sex === sex);
  return [
    ...(ways.size < 2
      ? []
      : [
          words.mixedWays({
            ways: [...ways].sort(([, a], [, b]) => b - a).map(([way, n]) => ({ way, n })),
            programs: groups.filter(({ ways: own }) => own.length > 1).map(({ program }) => program),
          }),
        ]),
    ...(reference === undefined || reference.otherWays === 0
      ? []
      : [
          words.referenceWay({
            way: words.way({ posture: reference.posture, path: reference.electrodePath }),
            otherWays: reference.otherWays,
          }),
        ]),
  ];
};
