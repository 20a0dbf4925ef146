import type { CrossCheck } from '../cohort/types/cross-check';
import type { Drift, ErrorStudy, LargestVariance } from '../cohort/types/error-study';

const driftPart = (drift: Drift | null) =>
  drift === null
    ? null
    : {
        n: drift.n,
        mean: drift.mean,
        ci: drift.interval,
        excludes_zero: drift.excludesZero,
        pe_without_drift: drift.peWithoutDrift,
      };

const largestPart = (largest: LargestVariance | null) =>
  largest === null
    ? null
    : {
        client: largest.client,
        date: largest.on,
        of: largest.of,
        among: largest.among,
        c: largest.c,
        limit: largest.limit,
        beyond: largest.beyond,
      };

/** What the error study says of one value, in the command line's document. */
export const errorStudyPart = (study: ErrorStudy) => ({
  measure: study.measure,
  clusters: study.clusters.length,
  routine_clusters: study.routineClusters,
  left_out: {
    visits: study.leftOut.visits,
    not_comparable: study.leftOut.notComparable,
    alone: study.leftOut.alone,
    reasons: Object.fromEntries(
      study.leftOut.reasons.map(({ reason, visits }) => [reason === 'pregnancy' ? 'no_estimate' : reason, visits]),
    ),
  },
  drift: driftPart(study.drift),
  drift_repositioning: driftPart(study.repositioningDrift),
  outliers: {
    between: largestPart(study.largest.between),
    repositioning: largestPart(study.largest.repositioning),
  },
  groups: study.groups.map(({ by, name, kind, people, df, pe, interval, enough }) => ({
    by,
    name,
    kind,
    clients: people,
    df,
    pe,
    ci: interval,
    own_30_df: enough,
  })),
  quarters: study.quarters.map(({ quarter, people, df, pe, interval }) => ({
    quarter,
    clients: people,
    df,
    pe,
    ci: interval,
  })),
  log_form: {
    tau: study.logForm.test?.kendall.tau ?? null,
    z: study.logForm.test?.kendall.z ?? null,
    p: study.logForm.test?.kendall.oneSidedP ?? null,
    ratio: study.logForm.test?.ratio ?? null,
    suggested: study.logForm.test?.suggested ?? false,
    accepted: study.logForm.accepted?.on ?? null,
    sd_of_logs: study.logForm.sdOfLogs,
  },
  rms_cv_percent: study.rmsCv,
});

/** Two devices measured against each other, in the command line's document: second minus first. */
export const crossCheckPart = (check: CrossCheck) => ({
  first: check.first,
  second: check.second,
  clients: check.people,
  left_out: check.leftOut,
  enough: check.enough,
  accepted: check.accepted?.on ?? null,
  values: check.values.map(({ measure, agreement }) => ({
    measure,
    n: agreement?.n ?? null,
    bias: agreement?.bias ?? null,
    ci: agreement?.biasInterval ?? null,
    limits: agreement?.limits ?? null,
    se_limit: agreement?.limitSe ?? null,
  })),
});
