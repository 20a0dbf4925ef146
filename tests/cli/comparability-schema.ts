import { z } from 'zod';

const number = z.number();
const nullable = z.number().nullable();

/** Which visits may be compared: rules in force, settings side by side, completeness of the record. */
export const comparabilitySchema = z.strictObject({
  opening_setting: z.enum(['strict', 'caution', 'all']),
  by_procedure: z.strictObject({ visits: z.number(), pairs: z.number() }),
  rules: z.array(
    z.strictObject({
      rule: z.string(),
      grade: z.enum(['no', 'caution', 'note', 'off']),
      limit: nullable,
      default_grade: z.enum(['no', 'caution', 'note', 'off']),
      default_limit: nullable,
      only_exported: z.boolean(),
      by_procedure: z.boolean(),
    }),
  ),
  settings: z.array(
    z.strictObject({
      measure: z.string(),
      purpose: z.enum(['consecutive', 'baseline-latest']),
      setting: z.enum(['strict', 'caution', 'all']),
      n_pairs: number,
      n_comparable: number,
      up: number,
      down: number,
      within: number,
      cannot_compare: number,
      no_threshold: number,
      held: number,
      stopped: number,
    }),
  ),
  coverage: z.record(
    z.enum(['site', 'operator', 'month']),
    z.array(
      z.strictObject({
        group: z.string().nullable(),
        rule: z.string(),
        readings: number,
        met: number,
        not_met: number,
        by_procedure: number,
        unknown: number,
        not_recorded: number,
      }),
    ),
  ),
});
