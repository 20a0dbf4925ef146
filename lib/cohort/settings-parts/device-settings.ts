import { z } from 'zod';
import { parseIsoDate } from '../../core/iso-date';

const isoDate = z.string().refine((text) => parseIsoDate(text) !== undefined, 'not a date YYYY-MM-DD');

/** What the clinic knows of its devices. */
export const deviceSettingsSchema = z.strictObject({
  /** Days on which a device began to measure differently (service, repair): visits before and after are not compared. */
  steps: z
    .array(z.strictObject({ device: z.string().min(1), on: isoDate, reason: z.string(), initials: z.string() }))
    .default([]),
});
