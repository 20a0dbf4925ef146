import { z } from 'zod';
import { MEASURE_IDS } from '../../measures/measure-id';

const measureId = z.enum(MEASURE_IDS);

/** A program as the clinic runs it: planned visits, planned reviews with their windows, what it lets expect. Weeks count from the start. */
export const programSchema = z.strictObject({
  name: z.string().min(1),
  plannedVisitWeeks: z.array(z.number().min(0)).default([]),
  reviews: z.array(z.strictObject({ week: z.number().positive(), windowWeeks: z.number().positive() })).default([]),
  /** What the program lets expect: kilograms (or the value's unit) per kilogram of weight change. */
  expectedChange: z.array(z.strictObject({ measure: measureId, perKgWeightChange: z.number() })).default([]),
});
