import type { Ellipse, VectorAnalysis, VectorGroup } from '../../../lib/cohort/types/vector-analysis';
import type { Formatters } from '../../../lib/core/formatters';
import type { IsoDate } from '../../../lib/core/iso-date';
import type { vectors } from '../../../lib/core/messages/en/vectors';
import type { VectorGraphData } from '../../../lib/figures/vector-graph/spec';

type Words = ReturnType<typeof vectors>;

const confidenceOf = (group: VectorGroup | undefined): { readonly confidence?: Ellipse } =>
  group === undefined || group.confidence95 === null ? {} : { confidence: group.confidence95 };

/** The vector graph of one sex: points at latest visits, mean vectors, and the clinic's own baseline as reference. */
export const vectorsFigure = (
  analysis: VectorAnalysis,
  sex: 'F' | 'M',
  programNames: readonly string[],
  words: Words,
  f: Formatters,
): VectorGraphData => {
  const reference = analysis.reference.find((one) => one.sex === sex);
  const points = analysis.points.filter((point) => point.sex === sex);
  const programs = [...new Set(points.map((point) => point.program))].sort(
    (a, b) => programNames.indexOf(a) - programNames.indexOf(b),
  );
  return {
    groups: programs.map((program) => {
      const own = points.filter((point) => point.program === program);
      const group = analysis.groups.find((one) => one.program === program && one.sex === sex);
      return {
        id: program,
        label: program,
        shapeIndex: Math.max(0, programNames.indexOf(program)),
        n: own.length,
        points: own.map((point) => ({
          key: String(point.clientKey),
          x: point.rh,
          y: point.xch,
          label: words.pointLabel({
            client: point.client,
            program,
            date: f.dateShort(point.date as IsoDate),
            rh: point.rh,
            xch: point.xch,
            phase: point.phaseAngle,
          }),
        })),
        ...(group === undefined ? {} : { mean: { x: group.mean[0], y: group.mean[1] } }),
        ...confidenceOf(group),
      };
    }),
    ...(reference === undefined
      ? {}
      : {
          referenceLabel: words.referenceLabel({ sex, n: reference.n, provisional: reference.provisional }),
          references: reference.ellipses.map(({ level, ellipse }) => ({ level, ...ellipse })),
        }),
  };
};
