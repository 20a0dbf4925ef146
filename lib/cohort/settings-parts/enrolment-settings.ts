import { z } from 'zod';
import { parseIsoDate } from '../../core/iso-date';

const isoDate = z.string().refine((text) => parseIsoDate(text) !== undefined, 'not a date YYYY-MM-DD');

/** Why an enrolment ended, as the visit export words it. */
export const END_REASONS = ['finished', 'moved', 'declined', 'medical', 'operated', 'died', 'other'] as const;

/**
 * What the clinic says of one enrolment, beside its files or against them: a client who is in a program, or that and why
 * it ended. One per client, program and start; it goes before what the files say of the same enrolment.
 */
export const enrolmentSchema = z.strictObject({
  client: z.string().min(1),
  program: z.string().min(1),
  start: isoDate.nullable(),
  end: isoDate.nullable().default(null),
  endReason: z.enum(END_REASONS).nullable().default(null),
  initials: z.string().default(''),
});

export type KeptEnrolment = z.infer<typeof enrolmentSchema>;
export type EndReason = (typeof END_REASONS)[number];
