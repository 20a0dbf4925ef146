import { z } from 'zod';
import { settingsSchema } from '../cohort/settings';
import { mappingSchema } from '../import/mapping';

const instant = z.string();
const sha256 = z.string().regex(/^[0-9a-f]{64}$/);
export const rowRefSchema = z.strictObject({ source: z.string(), line: z.number(), part: z.number() });

const importedFileSchema = z.strictObject({
  name: z.string(),
  sha256,
  bytes: z.number(),
  /** The tables of the file that are used, each with its mapping; '' = the file's only table. */
  tables: z.array(z.strictObject({ table: z.string(), mapping: mappingSchema, rows: z.number() })),
  /** The file was written anew without the rows of an erased person; `sha256` is the hash of the new bytes. */
  rewrittenAt: instant.optional(),
  /** Hash of the file as it was given, where it was written anew: it is known again by it. */
  givenAs: sha256.optional(),
});

/** The hash by which a file is known again, whether or not it was written anew. */
export const contentOf = (file: { readonly sha256: string; readonly givenAs?: string | undefined }): string =>
  file.givenAs ?? file.sha256;

/** One import: the files that came together. */
const importSchema = z.strictObject({
  id: z.string(),
  /** The day of the import: no visit may lie after it. */
  on: z.string(),
  initials: z.string(),
  files: z.array(importedFileSchema),
});

/** A cell that the clinic corrected; the file stays as it was. */
const correctionSchema = z.strictObject({
  id: z.string(),
  row: rowRefSchema,
  column: z.string(),
  /** The canonical cell before, and what it is read as now. */
  from: z.string(),
  to: z.string(),
  reason: z.string(),
  initials: z.string(),
  at: instant,
});

/** A row that the clinic left out, with its reason. */
const setAsideSchema = z.strictObject({
  id: z.string(),
  row: rowRefSchema,
  reason: z.string(),
  initials: z.string(),
  at: instant,
});

/** A note about a client, written by the clinic. */
const noteSchema = z.strictObject({
  id: z.string(),
  client: z.string(),
  text: z.string(),
  initials: z.string(),
  at: instant,
});

/** A mark on a client's row of a list (what came of a call …). */
const markSchema = z.strictObject({
  id: z.string(),
  client: z.string(),
  kind: z.string(),
  value: z.string(),
  initials: z.string(),
  at: instant,
});

/** All that decides what a clinic shows: it is what undo goes back over. */
export const clinicStateSchema = z.strictObject({
  settings: settingsSchema,
  imports: z.array(importSchema).default([]),
  /** Mappings remembered for their header. */
  mappings: z.array(mappingSchema).default([]),
  corrections: z.array(correctionSchema).default([]),
  setAside: z.array(setAsideSchema).default([]),
  notes: z.array(noteSchema).default([]),
  marks: z.array(markSchema).default([]),
  /** Files may be kept until this many months after the last visit; null = no date was set. */
  retentionMonths: z.number().int().positive().nullable().default(null),
});

/** What was done: words come from the catalogue by the code; the details hold counts, dates and names of files, never of people. */
export const logEntrySchema = z.strictObject({
  at: instant,
  initials: z.string(),
  code: z.enum([
    'started',
    'imported',
    'import-removed',
    'mapping-changed',
    'settings-changed',
    'answered',
    'corrected',
    'correction-removed',
    'set-aside',
    'set-aside-removed',
    'note-written',
    'mark-written',
    'undone',
    'redone',
    'erased',
    'exported',
    'backed-up',
    'restored',
    'merged',
    'shared-saved',
    'sealed',
    'unsealed',
    'passphrase-changed',
    'retention-set',
    'renamed',
    'taken-over',
  ]),
  details: z.record(z.string(), z.union([z.string(), z.number()])).default({}),
});

const exportSchema = z.strictObject({
  at: instant,
  initials: z.string(),
  what: z.string(),
  name: z.string(),
  rows: z.number(),
  sha256,
});

const backupSchema = z.strictObject({
  at: instant,
  initials: z.string(),
  name: z.string(),
  sha256,
  sealed: z.boolean(),
  bytes: z.number(),
  /** Rows of the clinic that counted then; null where they could not be shown, or were not noted. */
  rows: z.number().nullable().default(null),
});

/** A person who was erased, as a keyed hash: a later import leaves the rows out and says so. */
const tombstoneSchema = z.strictObject({
  hmac: z.string(),
  at: instant,
  initials: z.string(),
  /** Names of the backups made before, and of the workspace file: they may still hold the person. */
  backups: z.array(z.string()),
  /** The hash's key, base64, where it is not the clinic's own: the tombstone came with a file of another clinic. */
  key: z.string().optional(),
});

/** A clinic's manifest body: its state, the way back and forth, and what was done. */
export const clinicBodySchema = z.strictObject({
  version: z.literal(2),
  kind: z.enum(['demo', 'own']),
  state: clinicStateSchema,
  past: z.array(z.strictObject({ state: clinicStateSchema, undoes: logEntrySchema })).default([]),
  future: z.array(z.strictObject({ state: clinicStateSchema, redoes: logEntrySchema })).default([]),
  log: z.array(logEntrySchema).default([]),
  exports: z.array(exportSchema).default([]),
  backups: z.array(backupSchema).default([]),
  tombstones: z.array(tombstoneSchema).default([]),
  /** Random key of the tombstones' hashes, base64; made with the clinic. */
  tombstoneKey: z.string().default(''),
  /** The state in common with the workspace file in a shared folder, as it was last opened or saved. */
  shared: z
    .strictObject({
      name: z.string(),
      at: instant,
      lastWriter: z.string(),
      base: clinicStateSchema,
      /** Opaque names of the saved files that this clinic holds all of; `base` is the state of the last. */
      versions: z.array(z.string()).default([]),
    })
    .nullable()
    .default(null),
  /** The demo as most first files look: condition columns are not read. */
  withoutConditions: z.boolean().default(false),
});

export type ClinicState = z.infer<typeof clinicStateSchema>;
export type ClinicBody = z.infer<typeof clinicBodySchema>;
export type ImportRecord = z.infer<typeof importSchema>;
export type ImportedFile = z.infer<typeof importedFileSchema>;
export type Correction = z.infer<typeof correctionSchema>;
export type SetAside = z.infer<typeof setAsideSchema>;
export type Note = z.infer<typeof noteSchema>;
export type Mark = z.infer<typeof markSchema>;
export type LogEntry = z.infer<typeof logEntrySchema>;
export type ExportEntry = z.infer<typeof exportSchema>;
export type BackupEntry = z.infer<typeof backupSchema>;
export type Tombstone = z.infer<typeof tombstoneSchema>;

/** The newest body that this app writes. */
export const BODY_VERSION = 2;
