import { z } from 'zod';
import { parseIsoDate } from '../../core/iso-date';

const isoDate = z.string().refine((text) => parseIsoDate(text) !== undefined, 'not a date YYYY-MM-DD');
const device = z.string().min(1);

const stepSchema = z.strictObject({ device, on: isoDate, reason: z.string(), initials: z.string() });

/** A measurement of something that should not change. */
const logEntrySchema = z.strictObject({
  device,
  on: isoDate,
  /** A test body of resistors and capacitors, or one member of staff measured again and again. */
  kind: z.enum(['phantom', 'volunteer']),
  /** Ω at 50 kHz. */
  r: z.number().positive(),
  xc: z.number().nullable(),
  initials: z.string(),
});

/**
 * A cross-check of two devices that a person accepted: second − first, as it was then. Devices by the names that visits
 * have after steps. Readings of the second are converted by subtracting, of the first by adding.
 */
const conversionSchema = z.strictObject({
  first: device,
  second: device,
  on: isoDate,
  initials: z.string(),
  people: z.number().int().min(1),
  /** Ω, Ω, kg. */
  r: z.number(),
  xc: z.number(),
  weight: z.number(),
});

/** What the clinic knows of its devices. */
export const deviceSettingsSchema = z.strictObject({
  /** Days on which a device began to measure differently (service, repair): visits before and after are not compared. */
  steps: z.array(stepSchema).default([]),
  log: z.array(logEntrySchema).default([]),
  conversions: z.array(conversionSchema).default([]),
});

export type DeviceStep = z.infer<typeof stepSchema>;
export type DeviceLogEntry = z.infer<typeof logEntrySchema>;
export type DeviceConversion = z.infer<typeof conversionSchema>;
