import type { Cohort } from '../cohort/types/cohort';
import type { Settings } from '../cohort/settings';
import type { AppError } from '../core/app-error';
import type { LongStep } from '../core/progress';
import type { Result } from '../core/result';
import type { Mapping } from '../import/mapping';
import type { ImportPlan, ReadTable, RowRef } from '../import/plan';
import type { StorageRoom } from '../storage/clinic-store';
import type {
  BackupEntry,
  Correction,
  ExportEntry,
  ImportRecord,
  LogEntry,
  Mark,
  Note,
  SetAside,
} from './clinic-state';

/** A file as the person gave it. Nothing of it is in memory until it is read. */
export interface GivenFile {
  /** With its path inside a folder, where a folder was given. */
  readonly name: string;
  readonly blob: Blob;
}

/** A kept clinic, in a list. */
export interface ClinicRef {
  readonly id: string;
  readonly kind: 'demo' | 'own';
  readonly name: string;
  readonly invented: boolean;
  readonly sealed: boolean;
}

/** What an import changed, beside what stood before. */
export interface ImportDifference {
  readonly visits: number;
  readonly newClients: number;
  /** Clients whose comparison changed its result. */
  readonly changedResults: number;
  readonly toTalkTo: number;
  readonly newToTalkTo: readonly { readonly clientKey: number; readonly client: string }[];
}

/** How the open clinic is kept: for the home screen and Settings. */
export interface KeepingState {
  /** Whether this tab may write; a reader follows what the writer does. */
  readonly writer: boolean;
  readonly lastBackup: BackupEntry | null;
  /** Changes since the last backup. */
  readonly changesSinceBackup: number;
  readonly sealed: boolean;
  readonly room: StorageRoom;
  /** The workspace file in a shared folder, where there is one. */
  readonly shared: { readonly name: string; readonly at: string; readonly lastWriter: string } | null;
  /** Kept until this day; null where no retention was set. */
  readonly keepUntil: string | null;
  /** Past the retention date. */
  readonly overdue: boolean;
}

/** What an open clinic offers to the screens. A new object is made for every data version. */
export interface Session {
  readonly clinic: ClinicRef;
  readonly settings: Settings;
  /** Short hash of the data and settings, for headers, captions and printouts. */
  readonly dataVersion: string;
  readonly files: readonly { readonly name: string; readonly importedOn: string; readonly rows: number }[];
  /** Rows set aside until a question is answered. */
  readonly waiting: number;
  readonly cohort: Cohort;
  /** What the files' import found: shown on Import. */
  readonly plan: ImportPlan;
  readonly imports: readonly ImportRecord[];
  readonly corrections: readonly Correction[];
  readonly setAside: readonly SetAside[];
  readonly notes: readonly Note[];
  readonly marks: readonly Mark[];
  readonly mappings: readonly Mapping[];
  readonly log: readonly LogEntry[];
  readonly exports: readonly ExportEntry[];
  readonly backups: readonly BackupEntry[];
  readonly retentionMonths: number | null;
  readonly erasures: readonly { readonly at: string; readonly initials: string; readonly backups: readonly string[] }[];
  /** What undo would take back and redo bring again; null where there is nothing. */
  readonly undoes: LogEntry | null;
  readonly redoes: LogEntry | null;
  /** After an import, once. */
  readonly difference: ImportDifference | null;
  readonly keeping: KeepingState;
}

/** What was read of the given files; `files[i].tables` stand for one file, or an error does. */
export interface ReadFiles {
  readonly files: readonly {
    readonly name: string;
    readonly sha256: string;
    readonly bytes: number;
    readonly tables: readonly ReadTable[];
    readonly error: AppError | null;
  }[];
}

/** What a person decided about the given files so far. */
export interface ImportDraft {
  readonly given: readonly GivenFile[];
  readonly read: ReadFiles;
  /** Used tables with their mapping, in the order file, table. */
  readonly tables: readonly { readonly file: number; readonly table: string; readonly mapping: Mapping }[];
  readonly settings: Settings;
  /** Where the files go: an own clinic's id, or `new`. */
  readonly into: string;
}

export type Outcome = Promise<Result<Session, AppError>>;

/** A file made for a person: the screens hand it over, the clinic lists it. */
export interface MadeBlob {
  readonly name: string;
  readonly blob: Blob;
}

/** What a shared workspace file holds against the open clinic. */
export interface MergePreview {
  readonly lastWriter: string;
  readonly writtenAt: string;
  /** What would come in and what would go out: counts by kind. */
  readonly incoming: Readonly<Record<string, number>>;
  readonly outgoing: Readonly<Record<string, number>>;
  /** Places that both sides changed: one has to be chosen. */
  readonly conflicts: readonly {
    readonly path: string;
    readonly mine: string;
    readonly theirs: string;
    readonly base: string;
  }[];
}

/** What can be done with clinics; the app holds one of these. Every act is signed with the initials set by `setInitials`. */
export interface Workspace {
  /**
   * The clinic that was open last; the demo clinic at first start. Error codes that name a state rather than a mishap:
   * `locked` (sealed, no key), `empty_clinic` (no file: import, undo and redo work), `no_clinic` (none is kept).
   */
  open(step?: LongStep): Outcome;
  clinics(): Promise<Result<readonly ClinicRef[], AppError>>;
  switchTo(id: string): Outcome;
  /** Deletes a clinic with its files from this browser; the demo too. Opens the demo, or an empty start without it. */
  deleteClinic(id: string): Outcome;
  renameClinic(name: string): Outcome;
  /** Puts the demo back (after it was deleted or changed), with or without condition columns. */
  openDemo(options?: { readonly withoutConditions?: boolean }): Outcome;
  setInitials(initials: string): void;

  /** Reads, profiles and suggests for an own clinic's id, or `new`; changes nothing. */
  read(given: readonly GivenFile[], into: string, step?: LongStep): Promise<Result<ReadFiles, AppError>>;
  /** One table of a given file again, with another line as its header. */
  readAgain(given: GivenFile, table: string, headerLine: number, step?: LongStep): Promise<Result<ReadTable, AppError>>;
  /** The questions that a mapping leaves open for a read table, and its columns' suggestions for what is not mapped yet. */
  questionsOf(table: ReadTable, mapping: Mapping): ReadTable['questions'];
  /** Judges; changes nothing. The plan covers what the clinic would hold with these files. */
  plan(draft: ImportDraft, step?: LongStep): Promise<Result<ImportPlan, AppError>>;
  /** Keeps the files of the plan; refuses when files or clinic are not those of the plan any more. */
  commit(plan: ImportPlan, draft: ImportDraft, step?: LongStep): Outcome;
  /** Takes one import out again; works too where the clinic does not open because a file of that import is damaged. */
  removeImport(id: string): Outcome;
  /** The imports whose kept files are missing or damaged: what `file_missing` is about. */
  damagedImports(): Promise<readonly { readonly importId: string; readonly file: string }[]>;

  saveSettings(settings: Settings): Outcome;
  correct(
    changes: readonly { readonly row: RowRef; readonly column: string; readonly from: string; readonly to: string }[],
    reason: string,
  ): Outcome;
  removeCorrection(id: string): Outcome;
  setAsideRows(rows: readonly RowRef[], reason: string): Outcome;
  bringBack(id: string): Outcome;
  writeNote(client: string, text: string): Outcome;
  /** Sets a client's mark of one kind; an empty value takes it away. */
  writeMark(client: string, kind: string, value: string): Outcome;
  forgetMapping(header: readonly string[]): Outcome;
  setRetention(months: number | null): Outcome;
  undo(): Outcome;
  redo(): Outcome;

  /** The rows of the open clinic's files as they stand for one client (canonical columns, corrections applied). */
  rowsOf(client: string): Promise<
    readonly {
      readonly row: RowRef;
      readonly file: string;
      readonly status: string;
      readonly cells: Readonly<Record<string, string>>;
    }[]
  >;
  /** Every row that was not accepted or changed, as CSV text that can be corrected and imported again. */
  reportOf(plan: ImportPlan): Promise<MadeBlob>;
  /** All accepted rows in canonical columns, with the kept unknown columns, corrections marked. */
  exportRows(): Promise<MadeBlob>;
  /** Notes an export in the clinic's list, with hash and initials. */
  noteExport(what: string, made: MadeBlob, rows: number): Outcome;
  /** Everything about one person, as one file. */
  everythingAbout(client: string): Promise<Result<MadeBlob, AppError>>;
  /** Removes a person from files, state and history for good. */
  erase(client: string): Outcome;

  backUp(
    passphrase: string | null,
    step?: LongStep,
  ): Promise<Result<{ readonly made: MadeBlob; readonly session: Session }, AppError>>;
  /** Whether a backup is sealed. */
  isSealed(file: Blob): Promise<boolean>;
  /** Puts a backup in the place of the open clinic (or beside it); the state before is kept and can be brought back by undo. */
  restore(
    file: Blob,
    options: { readonly passphrase: string | null; readonly as: 'replace' | 'new' },
    step?: LongStep,
  ): Outcome;

  /** The workspace file for a shared folder: what the open clinic holds, for others to open. */
  saveShared(
    passphrase: string | null,
    step?: LongStep,
  ): Promise<Result<{ readonly made: MadeBlob; readonly session: Session }, AppError>>;
  previewMerge(file: Blob, passphrase: string | null): Promise<Result<MergePreview, AppError>>;
  /** Merges a workspace file into the open clinic; `choices` by path, for the conflicts. */
  merge(
    file: Blob,
    options: {
      readonly name: string;
      readonly passphrase: string | null;
      readonly choices: Readonly<Record<string, 'mine' | 'theirs'>>;
    },
    step?: LongStep,
  ): Outcome;

  /** Seals (or unseals, with null) the open clinic at rest. */
  setPassphrase(passphrase: string | null, step?: LongStep): Outcome;
  /** Forgets the key of a sealed clinic until it is unlocked. */
  lock(): Promise<void>;
  unlock(passphrase: string): Outcome;

  /** Called when the session on screen is no longer that of the clinic (another tab, a database that broke down); `open` gives the new one. */
  onChangedElsewhere(listener: () => void): () => void;
  /** Makes this tab the writer; the other becomes a reader. */
  takeOver(): Outcome;
  /** Asks the browser not to clear the storage by itself. */
  persist(): Promise<boolean>;
}
