import { z } from 'zod';
import { MEASURE_IDS } from '../../measures/measure-id';

const measureId = z.enum(MEASURE_IDS);

/** What a program means to do to people's weight; null = nobody said. */
export const WEIGHT_INTENTIONS = ['loss', 'gain', 'neither'] as const;
/** What a program means to do to the clinic's lean value; null = nobody said. */
export const LEAN_INTENTIONS = ['up', 'hold'] as const;

/**
 * What a program lets expect of a value in one phase: in the value's unit per kilogram of weight change, per month
 * (30.4375 days), or both. Without weeks it is the whole program; `toWeek` null = to the end of it.
 */
const expectedChangeSchema = z.strictObject({
  measure: measureId,
  fromWeek: z.number().min(0).default(0),
  toWeek: z.number().positive().nullable().default(null),
  perKgWeightChange: z.number().default(0),
  perMonth: z.number().default(0),
});

/** A planned review: a time after the start with a window on either side of it, in weeks. */
const reviewSchema = z.strictObject({ week: z.number().positive(), windowWeeks: z.number().positive() });

/** A program as the clinic runs it: planned visits, planned reviews with their windows, what it lets expect. Weeks count from the start. */
export const programSchema = z.strictObject({
  name: z.string().min(1),
  plannedVisitWeeks: z.array(z.number().min(0)).default([]),
  reviews: z.array(reviewSchema).default([]),
  intended: z
    .strictObject({
      weight: z.enum(WEIGHT_INTENTIONS).nullable().default(null),
      lean: z.enum(LEAN_INTENTIONS).nullable().default(null),
    })
    .prefault({}),
  expectedChange: z.array(expectedChangeSchema).default([]),
});

export type ProgramSettings = z.infer<typeof programSchema>;
export type PlannedReview = z.infer<typeof reviewSchema>;
export type ExpectedChange = z.infer<typeof expectedChangeSchema>;
export type WeightIntention = (typeof WEIGHT_INTENTIONS)[number];
