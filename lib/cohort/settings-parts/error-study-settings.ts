import { z } from 'zod';

/** How the clinic's error study is read. */
export const errorStudySettingsSchema = z.strictObject({
  /** Visits of no study count as between-day clusters too. */
  includeRoutine: z.boolean().default(false),
});
