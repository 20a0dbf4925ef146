import type { IsoDate } from '../core/iso-date';
import type { Row } from '../engine/types';
import type { Measure } from '../measures/measure';
import { cochranC } from '../stats/cochran-c';
import { cochranCLimit } from '../stats/cochran-c-limit';
import { meanInterval } from '../stats/mean-interval';
import { rmsCv } from '../stats/rms-cv';
import { suggestsLogForm } from '../stats/suggests-log-form';
import type { CohortModel } from './model';
import { sdOfLogs } from './precision';
import type { Ask } from './question';
import { masksFor } from './rules-in-force';
import { logSumsQuery } from './sql/log-sums-sql';
import { replicateFactsQuery, replicateGroupsQuery, studyRowsQuery } from './sql/study-rows-sql';
import { studyClusters } from './study-clusters';
import { studyGroups, studyQuarters } from './study-groups';
import type { Drift, ErrorStudy, LargestVariance, StudyCluster } from './types/error-study';
import type { CohortFilter } from './types/filter';
import type { PrecisionRow } from './types/precision-row';

const driftFrom = (n: number, mean: number, squares: number): Drift | null => {
  if (n === 0) return null;
  const sd = n > 1 ? Math.sqrt(squares / (n - 1)) : 0;
  const interval = meanInterval({ n, mean, sd }) ?? null;
  return {
    n,
    mean,
    interval,
    excludesZero: interval !== null && (interval[0] > 0 || interval[1] < 0),
    peWithoutDrift: n > 1 ? sd / Math.SQRT2 : null,
  };
};

const driftOf = (clusters: readonly StudyCluster[]): Drift | null => {
  const n = clusters.length;
  const mean = clusters.reduce((total, { difference }) => total + difference, 0) / n;
  return driftFrom(
    n,
    mean,
    clusters.reduce((total, { difference }) => total + (difference - mean) ** 2, 0),
  );
};

const replicateDrift = (facts: readonly Row[]): Drift | null => {
  const total = (name: string): number => facts.reduce((sum, row) => sum + Number(row[name] ?? 0), 0);
  return driftFrom(total('steps'), Number(facts[0]?.['mean_step'] ?? 0), total('step_squares'));
};

/** Cochran's C needs variances of equal size: those of the commonest number of visits. */
const largestCluster = (clusters: readonly StudyCluster[]): LargestVariance | null => {
  const sizes = new Map<number, number>();
  for (const { visits } of clusters) sizes.set(visits, (sizes.get(visits) ?? 0) + 1);
  const [size] = [...sizes].sort((a, b) => b[1] - a[1] || a[0] - b[0])[0] ?? [0];
  const same = clusters.filter(({ visits }) => visits === size);
  const c = cochranC(same.map(({ sd }) => sd * sd));
  const limit = cochranCLimit(same.length, size);
  const [worst] = [...same].sort((a, b) => b.sd - a.sd);
  if (c === undefined || limit === undefined || worst === undefined) return null;
  const { client, clientKey, from } = worst;
  return { client, clientKey, on: from, of: size, among: same.length, c, limit, beyond: c > limit };
};

const largestReplicate = ([row]: readonly Row[]): LargestVariance | null => {
  if (row === undefined) return null;
  const [of, among, sum] = [Number(row['k']), Number(row['visits']), Number(row['variances'])];
  const limit = cochranCLimit(among, of);
  if (limit === undefined || sum <= 0) return null;
  const c = Number(row['largest']) / sum;
  return {
    client: String(row['client_id']),
    clientKey: Number(row['client_key']),
    on: String(row['visit_date']) as IsoDate,
    of,
    among,
    c,
    limit,
    beyond: c > limit,
  };
};

/** What the error study says of one value: its clusters, what was left out, groups, drift, outliers, and whether a log form is suggested. */
export const errorStudyOf = async (
  ask: Ask,
  model: CohortModel,
  question: { readonly measure: Measure; readonly precision: PrecisionRow | undefined },
  filter: CohortFilter,
  signal?: AbortSignal,
): Promise<ErrorStudy> => {
  const { measure, precision } = question;
  const rows = await ask(studyRowsQuery(measure, model), filter, { signal });
  const replicates = await ask(replicateGroupsQuery(measure, model), filter, { signal });
  const facts = await ask(replicateFactsQuery(measure, model), filter, { signal });
  const { clusters, leftOut } = studyClusters(rows, masksFor(model.masks, measure));
  const people = clusters.map(({ visits, mean, sd }) => ({ k: visits, mean, sd }));
  const repositioning = precision?.form === 'sd' ? (precision.sw ?? 0) ** 2 : 0;
  const [logs] = await ask(logSumsQuery(measure, model), filter, { signal });
  const accepted = model.study.logForm.find((one) => one.measure === measure.id) ?? null;
  return {
    measure: measure.id,
    clusters,
    leftOut,
    routineClusters: clusters.filter(({ routine }) => routine).length,
    drift: driftOf(clusters),
    repositioningDrift: replicateDrift(facts),
    largest: { between: largestCluster(clusters), repositioning: largestReplicate(facts) },
    groups: studyGroups(clusters, replicates, repositioning),
    quarters: studyQuarters(clusters, repositioning),
    logForm: { test: suggestsLogForm(people) ?? null, accepted, sdOfLogs: sdOfLogs(measure, logs) },
    rmsCv: rmsCv(people) ?? null,
  };
};
