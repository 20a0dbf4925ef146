import type { AppError } from '../core/app-error';
import type { Result } from '../core/result';
import type { Cohort } from '../cohort/types/cohort';
import type { Settings } from '../cohort/settings';
import type { ImportPlan } from '../import/plan';

export interface ClinicRef {
  readonly id: 'demo' | 'own';
  readonly name: string;
  readonly invented: boolean;
}

/** A file as the person gave it. */
export interface GivenFile {
  readonly name: string;
  readonly bytes: Uint8Array;
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
}

/** What can be done with clinics; the app holds one of these. */
export interface Workspace {
  /** The clinic that was open last; the demo clinic at first start. */
  open(): Promise<Result<Session, AppError>>;
  /** Reads and judges; changes nothing. The plan covers what the clinic would hold with these files. */
  plan(files: readonly GivenFile[], settings: Settings): Promise<Result<ImportPlan, AppError>>;
  /** Keeps the files of the last plan in the own clinic (starting it if the demo was open), with these settings. */
  commit(plan: ImportPlan, settings: Settings): Promise<Result<Session, AppError>>;
  /** Changes the settings of the open clinic. */
  saveSettings(settings: Settings): Promise<Result<Session, AppError>>;
  /** Opens the demo clinic, or the own one where there is one. */
  switchTo(clinic: 'demo' | 'own'): Promise<Result<Session, AppError>>;
  /** Whether an own clinic is kept. */
  hasOwn(): Promise<boolean>;
  /** The demo as most first files look: without any condition column. */
  openDemoWithoutConditions(): Promise<Result<Session, AppError>>;
}
