import type { Row } from '../engine/types';
import type { BivariateSample } from '../stats/bivariate';
import { confidenceFactor } from '../stats/confidence-factor';
import { covarianceFromSums } from '../stats/covariance-from-sums';
import { ellipse } from '../stats/ellipse';
import { hotellingPaired } from '../stats/hotelling-paired';
import { hotellingTwoSample } from '../stats/hotelling-two-sample';
import { hotellingUnequal } from '../stats/hotelling-unequal';
import { predictionFactor } from '../stats/prediction-factor';
import type { CohortModel } from './model';
import type { Ask } from './question';
import {
  groupSumsQuery,
  pairedSumsQuery,
  referenceSumsQuery,
  vectorPointsQuery,
  vectorsLeftOutQuery,
  vectorWaysQuery,
} from './sql/vectors-sql';
import type { CohortFilter } from './types/filter';
import type {
  MeasuredAs,
  VectorAnalysis,
  VectorBetween,
  VectorGroup,
  VectorPaired,
  VectorReference,
} from './types/vector-analysis';

type Sex = 'F' | 'M';

/** Below this many people of one sex the clinic's own reference is provisional. */
const FIRM_REFERENCE = 30;

const at = (row: Row, name: string): number => Number(row[name] ?? 0);

interface Summed {
  readonly n: number;
  readonly mean: readonly [number, number];
  readonly sample: BivariateSample | undefined;
}

const summed = (row: Row): Summed => {
  const mean = [at(row, 'mx'), at(row, 'my')] as const;
  const n = at(row, 'n');
  return {
    n,
    mean,
    sample: covarianceFromSums({ n, mean, sxx: at(row, 'sxx'), sxy: at(row, 'sxy'), syy: at(row, 'syy') }),
  };
};

const measuredAs = (row: Row): MeasuredAs => ({
  posture: row['posture'] === 'standing' || row['posture'] === 'lying' ? row['posture'] : null,
  electrodePath: row['electrode_path'] === '' ? null : String(row['electrode_path']),
});

const groupOf = (row: Row, ways: readonly Row[]): VectorGroup => {
  const { n, mean, sample } = summed(row);
  const { cov } = sample ?? {};
  const confidence =
    cov === undefined ? undefined : ellipse({ mean, cov, factor: n < 3 ? undefined : confidenceFactor(n, 0.95) });
  return {
    program: String(row['program']),
    sex: row['sex'] as Sex,
    n,
    mean,
    cov:
      cov === undefined
        ? null
        : [
            [cov.xx, cov.xy],
            [cov.xy, cov.yy],
          ],
    confidence95: confidence ?? null,
    ways: ways
      .filter((way) => way['program'] === row['program'] && way['sex'] === row['sex'])
      .map((way) => ({ ...measuredAs(way), n: at(way, 'n') })),
  };
};

const pairedOf = (row: Row): VectorPaired => {
  const { n, mean, sample } = summed(row);
  const test = sample === undefined ? undefined : hotellingPaired(sample);
  return {
    program: String(row['program']),
    n,
    mean,
    t2: test?.t2 ?? null,
    f: test?.f ?? null,
    df1: 2,
    df2: test?.df2 ?? null,
    p: test?.p ?? null,
  };
};

const betweenOf = (a: Row, b: Row): VectorBetween => {
  const [first, second] = [summed(a), summed(b)];
  const both = first.sample !== undefined && second.sample !== undefined;
  const pooled = both ? hotellingTwoSample(first.sample, second.sample) : undefined;
  const unequal = both ? hotellingUnequal(first.sample, second.sample) : undefined;
  return {
    a: String(a['program']),
    b: String(b['program']),
    sex: a['sex'] as Sex,
    nA: first.n,
    nB: second.n,
    t2: pooled?.t2 ?? null,
    f: pooled?.f ?? null,
    df1: 2,
    df2: pooled?.df2 ?? null,
    p: pooled?.p ?? null,
    t2Unequal: unequal?.t2 ?? null,
    fUnequal: unequal?.f ?? null,
    df2Unequal: unequal?.df2 ?? null,
    pUnequal: unequal?.p ?? null,
    mahalanobisD: pooled?.mahalanobisD ?? null,
  };
};

const referenceOf = (row: Row, otherWays: number): VectorReference => {
  const { n, mean, sample } = summed(row);
  const ellipses = ([0.5, 0.75, 0.95] as const).flatMap((level) => {
    const drawn =
      sample === undefined ? undefined : ellipse({ mean, cov: sample.cov, factor: predictionFactor(n, level) });
    return drawn === undefined ? [] : [{ level, ellipse: drawn }];
  });
  return { sex: row['sex'] as Sex, ...measuredAs(row), n, provisional: n < FIRM_REFERENCE, otherWays, mean, ellipses };
};

const keyOf = (row: Row): string => `${String(row['posture'])}\n${String(row['electrode_path'])}`;

/** Of the references of one sex, that of the way in which most of the people shown were measured; else the largest. */
const fittingReference = (sex: Sex, references: readonly Row[], ways: readonly Row[]): readonly VectorReference[] => {
  const shown = new Map<string, number>();
  for (const way of ways) if (way['sex'] === sex) shown.set(keyOf(way), (shown.get(keyOf(way)) ?? 0) + at(way, 'n'));
  const own = references
    .filter((row) => row['sex'] === sex)
    .sort((a, b) => (shown.get(keyOf(b)) ?? 0) - (shown.get(keyOf(a)) ?? 0) || at(b, 'n') - at(a, 'n'));
  const [first, ...others] = own;
  return first === undefined
    ? []
    : [
        referenceOf(
          first,
          others.reduce((sum, row) => sum + at(row, 'n'), 0),
        ),
      ];
};

/** Vectors of the clients' latest visits, their groups, the tests between and within them, and the own reference. */
export const vectorsOf = async (
  ask: Ask,
  model: CohortModel,
  filter: CohortFilter,
  signal?: AbortSignal,
): Promise<VectorAnalysis> => {
  const groups = await ask(groupSumsQuery(model), filter, { signal });
  const paired = await ask(pairedSumsQuery(model), filter, { signal });
  const reference = await ask(referenceSumsQuery(model), filter, { signal });
  const points = await ask(vectorPointsQuery(model), filter, { signal });
  const ways = await ask(vectorWaysQuery(model), filter, { signal });
  const [leftOut] = await ask(vectorsLeftOutQuery(model), filter, { signal });
  const counted = leftOut ?? {};
  return {
    groups: groups.map((row) => groupOf(row, ways)),
    paired: paired.map(pairedOf),
    between: groups.flatMap((a, index) =>
      groups.slice(index + 1).flatMap((b) => (a['sex'] === b['sex'] ? [betweenOf(a, b)] : [])),
    ),
    reference: (['F', 'M'] as const).flatMap((sex) => fittingReference(sex, reference, ways)),
    leftOut: {
      noVector: at(counted, 'no_vector'),
      noSex: at(counted, 'no_sex'),
      otherFrequency: at(counted, 'other_frequency'),
      stopped: at(counted, 'stopped'),
    },
    points: points.map((row) => ({
      clientKey: at(row, 'client_key'),
      client: String(row['client_id']),
      program: String(row['program']),
      sex: row['sex'] as Sex,
      date: String(row['visit_date']),
      rh: at(row, 'x'),
      xch: at(row, 'y'),
      phaseAngle: at(row, 'phase_angle'),
    })),
  };
};
