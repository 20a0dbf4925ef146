import { settingsSchema } from '../cohort/settings';
import type { AppError } from '../core/app-error';
import type { IsoDate } from '../core/iso-date';
import { workspaceErrors } from '../core/messages/en/workspace-errors';
import { err, ok, type Result } from '../core/result';
import { CONDITION_COLUMNS } from '../import/columns';
import type { ClinicBody, LogEntry } from './clinic-state';
import { newClinic } from './new-clinic';
import type { WorkspaceParts } from './workspace-parts';

export const DEMO_ID = 'demo';

/** The day on which the demo clinic stands still. */
export const DEMO_TODAY = '2026-01-02' as IsoDate;

export const DEMO_FILE = 'visits.csv';

const HIDDEN: ReadonlySet<string> = new Set([...CONDITION_COLUMNS, 'menstrual_phase']);

/** Columns of a clinic's files that are not read. */
export const ignoredColumns = (body: ClinicBody): ReadonlySet<string> =>
  body.withoutConditions ? HIDDEN : new Set<string>();

/** The demo clinic's files from the site; `demo_missing` where it does not give them. */
export const loadDemo = async (
  parts: Pick<WorkspaceParts, 'demo'>,
): Promise<Result<{ readonly visits: Blob; readonly settings: unknown }, AppError>> => {
  try {
    return ok(await parts.demo());
  } catch {
    return err(workspaceErrors.demoMissing);
  }
};

/** The demo clinic as it is before anybody changed it; without conditions it has no written procedure either. */
export const demoClinic = (settings: unknown, started: LogEntry, withoutConditions: boolean): ClinicBody => {
  const parsed = settingsSchema.parse(settings);
  const body = newClinic('demo', withoutConditions ? { ...parsed, procedures: [] } : parsed, started);
  return { ...body, withoutConditions };
};
