import { z } from 'zod';
import { comparabilitySchema } from './comparability-schema';
import { vectorsSchema } from './vectors-schema';

const number = z.number();
const nullable = z.number().nullable();
const interval = z.tuple([number, number]).nullable();
const precision = z.strictObject({
  measure: z.string(),
  tier: number,
  clients: number,
  s_w: nullable,
  df_w: number,
  s_b: nullable,
  m: nullable,
  df_m: number,
  h: nullable,
  factor: nullable,
  pe: nullable,
  ci: interval,
  lsc: nullable,
  lsc_range: interval,
  changed_per_100: interval,
  form: z.enum(['sd', 'log']),
  provisional: z.boolean(),
});
const finding = z.strictObject({
  file: z.string(),
  line: number,
  column: z.string(),
  value: z.string(),
  code: z.string(),
  message: z.string(),
});

const drift = z
  .strictObject({ n: number, mean: number, ci: interval, excludes_zero: z.boolean(), pe_without_drift: nullable })
  .nullable();
const largest = z
  .strictObject({
    client: z.string(),
    date: z.string(),
    of: number,
    among: number,
    c: number,
    limit: number,
    beyond: z.boolean(),
  })
  .nullable();
const weightLoss = {
  percent: number,
  weight_from: number,
  weight_to: number,
  lsc: number,
  from: z.string(),
  to: z.string(),
  cut_off: z.string(),
};
const contactRule = z.discriminatedUnion('rule', [
  z.strictObject({
    rule: z.literal('lean-change'),
    sight: z.enum(['first', 'confirmed']),
    excess: number,
    lsc: number,
  }),
  z.strictObject({
    rule: z.literal('lean-slope'),
    per_month: number,
    threshold: number,
    level: z.literal(99),
    visits: number,
    from: z.string(),
    to: z.string(),
  }),
  z.strictObject({
    rule: z.literal('lean-share'),
    share_percent: number,
    interval_percent: z.tuple([number, number]),
    limit_percent: number,
    weight_change: number,
    loss_percent: number,
  }),
  z.strictObject({ rule: z.literal('weight-loss'), ...weightLoss }),
]);

/** Every field of the document, and no other. */
export const documentSchema = z.strictObject({
  import: z.strictObject({
    files: z.array(
      z.strictObject({
        file: z.string(),
        rows: number,
        format: z.string(),
        sha256: z.string(),
        encoding: z.string(),
        kept_not_used: z.array(z.string()),
      }),
    ),
    today: z.string(),
    rows: number,
    accepted: number,
    held: number,
    duplicates: number,
    refused_rows: number,
    set_aside: number,
    enrolments: number,
    refused: z.array(finding),
    questions: z.array(finding),
    people: z.array(
      z.union([
        z.strictObject({
          kind: z.literal('similar-ids'),
          ids: z.array(z.strictObject({ id: z.string(), visits: number })),
          why: z.enum(['spelling', 'name-and-birth']),
        }),
        z.strictObject({
          kind: z.literal('birth-dates'),
          client: z.string(),
          dates: z.array(z.strictObject({ date: z.string(), visits: number })),
        }),
        z.strictObject({
          kind: z.literal('sexes'),
          client: z.string(),
          sexes: z.array(z.strictObject({ sex: z.string(), visits: number })),
        }),
        z.strictObject({
          kind: z.literal('heights'),
          client: z.string(),
          medianCm: number,
          heights: z.array(z.strictObject({ cm: number, visits: number, firstDate: z.string() })),
        }),
      ]),
    ),
    readings: z.array(
      z.strictObject({
        kind: z.enum(['same-figures', 'same-number']),
        key: z.string(),
        client: z.string(),
        visit_date: z.string(),
        rows: z.array(z.strictObject({ file: z.string(), line: number })),
      }),
    ),
    missing_conditions: z.array(
      z.strictObject({
        site: z.string().nullable(),
        from: z.string(),
        to: z.string(),
        visits: number,
        columns: z.array(z.string()),
        left_out_of_procedure: z.boolean(),
      }),
    ),
    warnings: z.array(finding),
  }),
  as_of: z.string().nullable(),
  level: z.union([z.literal(80), z.literal(90), z.literal(95)]),
  setting: z.enum(['strict', 'caution', 'all']),
  review_visit: z.enum(['closest', 'closest-comparable', 'first-in-window']),
  methods: z.array(
    z.strictObject({
      measure: z.string(),
      unit: z.string(),
      formula: z.string(),
      equation: z.string().nullable(),
      equation_version: nullable,
      source: z.string(),
      verification: z.string(),
    }),
  ),
  equation_fits: z.array(
    z.strictObject({
      quantity: z.string(),
      equation: z.string(),
      visits: number,
      inside: number,
      outside: z.record(z.string(), number),
    }),
  ),
  comparability: comparabilitySchema.nullable(),
  precision: z.array(precision),
  error_from: z.strictObject({
    by: z.enum(['everyone', 'device', 'site', 'program', 'operator']),
    groups: z.array(precision.extend({ group: z.string().nullable() })),
  }),
  error_study: z.array(
    z.strictObject({
      measure: z.string(),
      clusters: number,
      routine_clusters: number,
      left_out: z.strictObject({
        visits: number,
        not_comparable: number,
        alone: number,
        reasons: z.record(z.string(), number),
      }),
      drift: drift,
      drift_repositioning: drift,
      outliers: z.strictObject({ between: largest, repositioning: largest }),
      groups: z.array(
        z.strictObject({
          by: z.enum(['device', 'operator', 'site', 'program']),
          name: z.string().nullable(),
          kind: z.enum(['between', 'repositioning']),
          clients: number,
          df: number,
          pe: number,
          ci: z.tuple([number, number]),
          own_30_df: z.boolean(),
        }),
      ),
      quarters: z.array(
        z.strictObject({ quarter: z.string(), clients: number, df: number, pe: number, ci: z.tuple([number, number]) }),
      ),
      log_form: z.strictObject({
        tau: nullable,
        z: nullable,
        p: nullable,
        ratio: nullable,
        suggested: z.boolean(),
        accepted: z.string().nullable(),
        sd_of_logs: nullable,
      }),
      rms_cv_percent: nullable,
    }),
  ),
  crosscheck: z.array(
    z.strictObject({
      first: z.string(),
      second: z.string(),
      clients: number,
      left_out: number,
      enough: z.boolean(),
      accepted: z.string().nullable(),
      values: z.array(
        z.strictObject({
          measure: z.string(),
          n: nullable,
          bias: nullable,
          ci: interval,
          limits: interval,
          se_limit: nullable,
        }),
      ),
    }),
  ),
  changes: z.array(
    z.strictObject({
      client: z.string(),
      program: z.string(),
      measure: z.string(),
      purpose: z.enum(['consecutive', 'baseline-latest', 'baseline-review']),
      review_week: nullable,
      from: z.string(),
      to: z.string(),
      k_from: number,
      k_to: number,
      value_from: number,
      value_to: number,
      change: number,
      lsc: nullable,
      tier: number,
      error_group: z.string().nullable(),
      comparable: z.enum(['comparable', 'by-procedure', 'caution', 'no']),
      result: z.enum(['up', 'down', 'within', 'cannot-compare', 'no-threshold']).nullable(),
      guard: z.enum(['none', 'note', 'hold', 'stop']),
      reasons: z.array(z.string()),
      noted: z.array(z.string()),
      terms: z
        .strictObject({ weight: number, resistance: number, reactance: number, height: number, age: number })
        .nullable(),
    }),
  ),
  programs: z.array(
    z.strictObject({
      program: z.string(),
      measure: z.string(),
      purpose: z.enum(['consecutive', 'baseline-latest']),
      n_clients: number,
      n_pairs: number,
      n_comparable: number,
      n_sharing_a_visit: number,
      mean: nullable,
      sd: nullable,
      ci: interval,
      up: number,
      down: number,
      within: number,
      cannot_compare: number,
      no_threshold: number,
      held: number,
      stopped: number,
      by_error: z
        .strictObject({
          p_up: number,
          p_down: number,
          p_up_against_down: number,
          slope: nullable,
          spread: z.strictObject({ f: number, p: number, true_sd: number }).nullable(),
        })
        .nullable(),
      as_meant: z.strictObject({ n: number, of: number }).nullable(),
    }),
  ),
  reviews: z.array(
    z.strictObject({
      program: z.string(),
      measure: z.string(),
      week: number,
      window_weeks: number,
      n_due: number,
      n_seen: number,
      n_pairs: number,
      n_comparable: number,
      n_seen_early: number,
      n_not_yet: number,
      n_ended_before: number,
      passed_over: number,
      actual_day: z.tuple([number, number, number]).nullable(),
    }),
  ),
  due: z
    .strictObject({
      monday: z.string(),
      invite: z.array(
        z.strictObject({
          client: z.string(),
          program: z.string(),
          week: number,
          due: z.string(),
          when: z.enum(['overdue', 'this-week', 'next-week']),
          window_to: z.string().nullable(),
          missed_since: z.string().nullable(),
          last: z.string().nullable(),
          twice: z.enum(['near-threshold', 'unexpected']).nullable(),
        }),
      ),
      not_seen: z.array(
        z.strictObject({
          client: z.string(),
          program: z.string(),
          last: z.string().nullable(),
          missed_since: z.string(),
        }),
      ),
    })
    .nullable(),
  vectors: vectorsSchema,
  contacts: z
    .strictObject({
      checked: number,
      by_error_alone: z.strictObject({ about: number, from: number, to: number }).nullable(),
      rules: z.array(z.strictObject({ rule: z.string(), checked: number, listed: number, by_error_alone: nullable })),
      talk_to: z.array(
        z.strictObject({
          client: z.string(),
          program: z.string(),
          week: nullable,
          measure: z.string(),
          from: z.string(),
          to: z.string(),
          change: number,
          expected: number,
          excess: number,
          lsc: nullable,
          tier: number,
          seen_at_two_visits: z.boolean(),
          fits: z.enum(['water', 'cell-mass', 'cannot-tell']),
          rules: z.array(contactRule).min(1),
          best_of_earlier: z
            .strictObject({ date: z.string(), change: number, threshold: number, earlier: number })
            .nullable(),
          asked: z.strictObject(weightLoss).nullable(),
        }),
      ),
      measure_again: z.array(
        z.strictObject({
          client: z.string(),
          program: z.string(),
          baseline: z.string(),
          latest: z.string(),
          why: z.enum(['cannot-compare', 'other-baseline', 'fits-less-water', 'near-threshold', 'caution']),
          reasons: z.array(z.string()),
          other_baseline: z.string().nullable(),
        }),
      ),
      weight_questions: z.array(z.strictObject({ client: z.string(), program: z.string(), ...weightLoss })),
      status: z.array(
        z.strictObject({
          client: z.string(),
          program: z.string(),
          date: z.string(),
          measure: z.enum(['ffmi', 'asmi']),
          value: number,
          cut_off: z.string(),
          equation: z.string(),
        }),
      ),
    })
    .nullable(),
});
