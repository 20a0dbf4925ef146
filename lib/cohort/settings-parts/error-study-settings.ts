import { z } from 'zod';
import { parseIsoDate } from '../../core/iso-date';
import { MEASURE_IDS } from '../../measures/measure-id';

const isoDate = z.string().refine((text) => parseIsoDate(text) !== undefined, 'not a date YYYY-MM-DD');

/** A person's decision to judge a value by its logarithm, as it was taken. */
const logFormSchema = z.strictObject({
  measure: z.enum(MEASURE_IDS),
  on: isoDate,
  initials: z.string(),
  /** SD of ln of one reading when it was accepted: a record, not what is computed with. */
  sdOfLogs: z.number().positive(),
});

/** By what the error of a group may stand for its own pairs. */
export const ERROR_GROUPINGS = ['device', 'site', 'program', 'operator'] as const;

/** How the clinic's error study is read. */
export const errorStudySettingsSchema = z.strictObject({
  /** Visits of no study count as between-day clusters too. */
  includeRoutine: z.boolean().default(false),
  /** Values whose error is relative. Stays until a person takes it back, whatever later data say. */
  logForm: z.array(logFormSchema).default([]),
  /** Thresholds from the one-sided 95 % upper limit of the precision error. */
  cautious: z.boolean().default(false),
  /** Whose error judges a pair: everyone's, or that of the group both its visits lie in, where the group has enough of its own. */
  errorFrom: z.enum(['everyone', ...ERROR_GROUPINGS]).default('everyone'),
});

export type ErrorGrouping = (typeof ERROR_GROUPINGS)[number];
export type LogForm = z.infer<typeof logFormSchema>;
