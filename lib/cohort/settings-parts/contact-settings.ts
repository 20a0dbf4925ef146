import { z } from 'zod';

/** How the contact lists are made. */
export const contactSettingsSchema = z.strictObject({
  /** How many people the clinic can call in a week. */
  callsPerWeek: z.number().int().positive().optional(),
});
