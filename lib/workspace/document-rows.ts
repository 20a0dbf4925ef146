import type { Settings } from '../cohort/settings';
import type { EquationFit } from '../cohort/types/methods';
import type { Measure } from '../measures/measure';
import type { MeasureId } from '../measures/measure-id';
import type { ChangeRow, Reason } from '../cohort/types/change-row';
import type { PrecisionRow } from '../cohort/types/precision-row';
import type { ProgramRow } from '../cohort/types/program-row';
import type { DueLists } from '../cohort/types/due-lists';
import type { ReviewCounts } from '../cohort/types/reviews';
import type { VectorAnalysis } from '../cohort/types/vector-analysis';
import type { Finding, ImportPlan } from '../import/plan';

const findingRow = (finding: Finding) => ({
  file: finding.file,
  line: finding.line,
  column: finding.column,
  value: finding.value,
  code: finding.code,
  message: `${finding.message} ${finding.remedy}`,
});

const findingsOf = (plan: ImportPlan, kind: Finding['kind']) =>
  plan.findings.filter((finding) => finding.kind === kind).map(findingRow);

/** The document's part on the import. `rows` = accepted + held + duplicates + refused_rows + set_aside; enrolments are among the accepted. */
export const importPart = (plan: ImportPlan) => ({
  files: plan.files.map((file) => ({
    file: file.name,
    rows: file.rows,
    format: file.format,
    sha256: file.sha256,
    encoding: file.encoding,
    kept_not_used: file.unknownColumns,
  })),
  today: plan.today,
  rows: plan.rows,
  accepted: plan.accepted,
  held: plan.held,
  duplicates: plan.duplicates,
  refused_rows: plan.refused,
  set_aside: plan.setAside,
  enrolments: plan.enrolments,
  refused: [
    ...plan.failedFiles.map(({ name, error }) => ({
      file: name,
      line: 0,
      column: '',
      value: '',
      code: error.code,
      message: `${error.message} ${error.remedy}`,
    })),
    ...findingsOf(plan, 'refused'),
  ],
  questions: findingsOf(plan, 'question'),
  people: plan.people,
  readings: plan.readings.map(({ kind, key, client, visitDate, rows }) => ({
    kind,
    key,
    client,
    visit_date: visitDate,
    rows: rows.map(({ file, line }) => ({ file, line })),
  })),
  missing_conditions: plan.missingConditions.map(({ declaredBy, ...missing }) => ({
    ...missing,
    left_out_of_procedure: declaredBy !== null,
  })),
  warnings: findingsOf(plan, 'warning'),
});

/** One value's error, symbols as in the description of the computation. */
export const precisionPart = (row: PrecisionRow) => ({
  measure: row.measure,
  tier: row.tier,
  clients: row.clients,
  s_w: row.sw,
  df_w: row.dfWithin,
  s_b: row.sb,
  m: row.m,
  df_m: row.dfBetween,
  h: row.h,
  factor: row.factor,
  pe: row.pe,
  ci: row.peInterval,
  lsc: row.lsc,
  lsc_range: row.lscInterval,
  changed_per_100: row.changedPer100,
  form: row.form,
  provisional: row.provisional,
});

/** Whose error judges pairs: everyone's, or by which groups, with the errors that groups have of their own. */
export const errorFromPart = (by: Settings['errorStudy']['errorFrom'], groups: readonly PrecisionRow[]) => ({
  by,
  groups: groups.map((row) => ({ group: row.group ?? null, ...precisionPart(row) })),
});

/** Where a value comes from: formula, equation with its version, source and how far that was read. */
export const methodPart = ({ id, unit, notation, source, verification, equation }: Measure) => ({
  measure: id,
  unit,
  formula: notation,
  equation: equation?.id ?? null,
  equation_version: equation?.version ?? null,
  source,
  verification,
});

/** How many visits with a computed value lie in the group that the equation was made for, and what the others miss. */
export const equationFitPart = ({ quantity, equation, visits, inside, outside }: EquationFit) => ({
  quantity,
  equation: equation.id,
  visits,
  inside,
  outside: Object.fromEntries(outside.map(({ code, visits: n }) => [code, n])),
});

/** A pregnancy is never named in a file that leaves the clinic's screen: its stop has a neutral code there. */
export const fileReason = (reason: Reason): string => (reason === 'pregnancy' ? 'no_estimate' : reason);

export const changePart = (row: ChangeRow) => ({
  client: row.client,
  program: row.program,
  measure: row.measure,
  purpose: row.purpose,
  review_week: row.reviewWeek,
  from: row.from,
  to: row.to,
  k_from: row.kFrom,
  k_to: row.kTo,
  value_from: row.valueFrom,
  value_to: row.valueTo,
  change: row.change,
  lsc: row.lsc,
  tier: row.tier,
  error_group: row.errorGroup,
  comparable: row.comparable,
  result: row.result,
  guard: row.guard,
  reasons: row.reasons.map(fileReason),
  noted: row.noted,
  terms: row.terms,
});

export const programPart = (row: ProgramRow) => ({
  program: row.program,
  measure: row.measure,
  purpose: row.purpose,
  n_clients: row.nClients,
  n_pairs: row.nPairs,
  n_comparable: row.nComparable,
  n_sharing_a_visit: row.nSharing,
  mean: row.mean,
  sd: row.sd,
  ci: row.interval,
  up: row.up,
  down: row.down,
  within: row.within,
  cannot_compare: row.cannotCompare,
  no_threshold: row.noThreshold,
  held: row.held,
  stopped: row.stopped,
  by_error:
    row.byError === null
      ? null
      : {
          p_up: row.byError.pUp,
          p_down: row.byError.pDown,
          p_up_against_down: row.byError.pUpAgainstDown,
          slope: row.byError.slope,
          spread:
            row.byError.spread === null
              ? null
              : { f: row.byError.spread.f, p: row.byError.spread.p, true_sd: row.byError.spread.trueSd },
        },
  as_meant: row.asMeant,
});

/** One planned review of one program for one value: seen of those due. `actual_day` is [Q1, median, Q3]. */
export const reviewPart = (measure: MeasureId, row: ReviewCounts) => ({
  program: row.program,
  measure,
  week: row.week,
  window_weeks: row.windowWeeks,
  n_due: row.due,
  n_seen: row.seen,
  n_pairs: row.pairs,
  n_comparable: row.comparable,
  n_seen_early: row.seenEarly,
  n_not_yet: row.notYet,
  n_ended_before: row.endedBefore,
  passed_over: row.passedOver,
  actual_day: row.actualDay === null ? null : [row.actualDay.q1, row.actualDay.median, row.actualDay.q3],
});

/** Whom to invite and who is not seen since: ids and days, no names. */
export const duePart = ({ monday, invite, notSeen }: DueLists) => ({
  monday,
  invite: invite.map((row) => ({
    client: row.client,
    program: row.program,
    week: row.week,
    due: row.due,
    when: row.when,
    window_to: row.windowTo,
    missed_since: row.missedSince,
    last: row.last?.date ?? null,
    twice: row.twice,
  })),
  not_seen: notSeen.map((row) => ({
    client: row.client,
    program: row.program,
    last: row.last,
    missed_since: row.missedSince,
  })),
});

export const vectorsPart = (vectors: VectorAnalysis) => ({
  left_out: {
    no_vector: vectors.leftOut.noVector,
    no_sex: vectors.leftOut.noSex,
    other_frequency: vectors.leftOut.otherFrequency,
    stopped: vectors.leftOut.stopped,
  },
  groups: vectors.groups.map((group) => ({
    program: group.program,
    sex: group.sex,
    n: group.n,
    mean: group.mean,
    cov: group.cov,
    confidence95:
      group.confidence95 === null
        ? null
        : {
            cx: group.confidence95.cx,
            cy: group.confidence95.cy,
            a: group.confidence95.a,
            b: group.confidence95.b,
            angle_deg: group.confidence95.angleDeg,
          },
    ways: group.ways.map(({ posture, electrodePath, n }) => ({ posture, electrode_path: electrodePath, n })),
  })),
  paired: vectors.paired,
  between: vectors.between.map((pair) => ({
    a: pair.a,
    b: pair.b,
    sex: pair.sex,
    n_a: pair.nA,
    n_b: pair.nB,
    t2: pair.t2,
    f: pair.f,
    df1: pair.df1,
    df2: pair.df2,
    p: pair.p,
    t2_u: pair.t2Unequal,
    f_u: pair.fUnequal,
    df2_u: pair.df2Unequal,
    p_u: pair.pUnequal,
    mahalanobis_d: pair.mahalanobisD,
  })),
});
