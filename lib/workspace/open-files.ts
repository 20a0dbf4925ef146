import { createCohort } from '../cohort/create-cohort';
import type { Settings } from '../cohort/settings';
import type { Cohort } from '../cohort/types/cohort';
import type { AppError } from '../core/app-error';
import type { IsoDate } from '../core/iso-date';
import { ok, type Result } from '../core/result';
import type { Engine } from '../engine/types';
import { commitReadings } from '../import/commit-readings';
import type { ImportInput, JudgeOptions } from '../import/import-input';
import type { ImportPlan } from '../import/plan';
import { importAnswers } from './import-answers';

export interface OpenOptions extends Partial<Omit<JudgeOptions, 'answers' | 'prefix' | 'today'>> {
  readonly today: IsoDate;
  /** Default: the latest accepted visit's date. */
  readonly asOf?: IsoDate;
}

/** What opening files leads to; without a usable row there is a plan and no cohort. */
export interface OpenedFiles {
  readonly plan: ImportPlan;
  readonly cohort: Cohort | undefined;
}

/** Imports tables into an engine and builds the pipeline on them: what the screens and the command line both start from. */
export const openFiles = async (
  engine: Engine,
  inputs: readonly ImportInput[],
  settings: Settings,
  options: OpenOptions,
): Promise<Result<OpenedFiles, AppError>> => {
  const { asOf, ...rest } = options;
  const plan = await commitReadings(engine, inputs, {
    corrections: [],
    setAside: [],
    erased: null,
    ...rest,
    answers: importAnswers(settings),
  });
  if (!plan.ok) return plan;
  const until = asOf ?? plan.value.lastVisit;
  if (until === null || plan.value.firstVisit === null || until < plan.value.firstVisit) {
    return ok({ plan: plan.value, cohort: undefined });
  }
  options.signal?.throwIfAborted();
  options.onProgress?.({ step: 'building', file: '', bytes: 0, totalBytes: null, rows: plan.value.accepted });
  return ok({ plan: plan.value, cohort: await createCohort(engine, settings, until) });
};

/** The plan of files none of which could be read, each with its own reason. */
export const planOfFailedFiles = (failedFiles: ImportPlan['failedFiles'], today: IsoDate): ImportPlan => ({
  files: [],
  failedFiles,
  today,
  rows: 0,
  accepted: 0,
  held: 0,
  duplicates: 0,
  refused: 0,
  setAside: 0,
  erased: 0,
  warnings: 0,
  corrected: 0,
  enrolments: 0,
  findings: [],
  findingCount: 0,
  people: [],
  readings: [],
  missingConditions: [],
  clients: 0,
  firstVisit: null,
  lastVisit: null,
  precisionVisits: 0,
  hasImpedance: false,
  fingerprint: '',
});
