import { z } from 'zod';

/** The newest container that this app writes. */
export const BACKUP_VERSION = 1;
export const BACKUP_FORMAT = 'driftline-clinic';
export const HEAD_NAME = 'driftline.json';
export const CLINIC_NAME = 'clinic.json';

/** The end of a backup: the zip's comment with the SHA-256 of every byte before it. */
export const trailer = (sha256: string): string => `${BACKUP_FORMAT} sha256 ${sha256}`;
export const TRAILER_BYTES = trailer('0'.repeat(64)).length;

const entrySchema = z.strictObject({
  name: z.string(),
  bytes: z.number().int().min(0),
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
});

/** The first entry of a backup. */
export const backupHeadSchema = z.strictObject({
  format: z.literal(BACKUP_FORMAT),
  version: z.literal(BACKUP_VERSION),
  madeAt: z.string(),
  /** What the maker counted, for a person to compare (files, rows, clients …). */
  counts: z.record(z.string(), z.number()),
  /** All other entries in their order: clinic.json, then the files. */
  entries: z.array(entrySchema).min(1),
});

export type BackupHead = z.infer<typeof backupHeadSchema>;

/** Only what tells a backup of a newer app from something else. */
export const anyVersionSchema = z.looseObject({ format: z.literal(BACKUP_FORMAT), version: z.number() });

export const blobEntryName = (sha256: string): string => `blobs/${sha256}`;
