import { createCohort } from '../cohort/create-cohort';
import type { Settings } from '../cohort/settings';
import type { Cohort } from '../cohort/types/cohort';
import type { AppError } from '../core/app-error';
import type { IsoDate } from '../core/iso-date';
import { workspaceErrors } from '../core/messages/en/workspace-errors';
import { err, ok, type Result } from '../core/result';
import type { Engine } from '../engine/types';
import { commitReadings } from '../import/commit-readings';
import { readFile } from '../import/read-file';
import type { ImportPlan } from '../import/plan';
import { importAnswers } from './import-answers';
import type { GivenFile } from './session';

export interface OpenOptions {
  readonly today: IsoDate;
  /** Default: the latest accepted visit's date. */
  readonly asOf?: IsoDate;
  readonly acceptQuestions?: boolean;
  readonly ignoredColumns?: ReadonlySet<string>;
}

/** What opening files leads to; without a usable row there is a plan and no cohort. */
export interface OpenedFiles {
  readonly plan: ImportPlan;
  readonly cohort: Cohort | undefined;
}

/** Imports files into an engine and builds the pipeline on them: what the screens and the command line both start from. */
export const openFiles = async (
  engine: Engine,
  files: readonly GivenFile[],
  settings: Settings,
  options: OpenOptions,
): Promise<Result<OpenedFiles, AppError>> => {
  const { asOf, ...rest } = options;
  const plan = await commitReadings(engine, files, { ...rest, answers: importAnswers(settings) });
  if (!plan.ok) return plan;
  const until = asOf ?? plan.value.lastVisit;
  if (until === null || plan.value.firstVisit === null || until < plan.value.firstVisit) {
    return ok({ plan: plan.value, cohort: undefined });
  }
  return ok({ plan: plan.value, cohort: await createCohort(engine, settings, until) });
};

/** The error of a clinic that holds no usable visit. */
export const nothingUsable = (): Result<never, AppError> => err(workspaceErrors.nothingUsable);

/** The plan of files none of which could be read, each with its own reason. */
export const planOfFailedFiles = (files: readonly GivenFile[], today: IsoDate): ImportPlan => ({
  files: [],
  failedFiles: files.flatMap(({ name, bytes }) => {
    const read = readFile(name, bytes);
    return read.ok ? [] : [{ name, error: read.error }];
  }),
  today,
  rows: 0,
  accepted: 0,
  held: 0,
  duplicates: 0,
  refused: 0,
  warnings: 0,
  findings: [],
  clients: 0,
  firstVisit: null,
  lastVisit: null,
});
