import { z } from 'zod';
import { settingsSchema } from '../cohort/settings';

const importedFileSchema = z.object({
  name: z.string(),
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  bytes: z.number(),
  rows: z.number(),
  /** The day of the import: no visit may lie after it. */
  importedOn: z.string(),
});

/** What version 1 kept of a browser's clinics: which files, in which order, with which settings, and which was open last. */
export const manifestSchema = z.object({
  version: z.number(),
  revision: z.number(),
  open: z.enum(['demo', 'own']),
  demo: z.object({ settings: settingsSchema.optional(), withoutConditions: z.boolean() }),
  own: z.object({ settings: settingsSchema, files: z.array(importedFileSchema) }).optional(),
});

export type ImportedFile = z.infer<typeof importedFileSchema>;
