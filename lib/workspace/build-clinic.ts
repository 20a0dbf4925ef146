import type { Cohort } from '../cohort/types/cohort';
import type { AppError } from '../core/app-error';
import type { IsoDate } from '../core/iso-date';
import type { LongStep } from '../core/progress';
import { err, ok, type Result } from '../core/result';
import { sameValue } from '../core/same-value';
import { sha256 } from '../core/sha256';
import { workspaceErrors } from '../core/messages/en/workspace-errors';
import type { Engine } from '../engine/types';
import type { ImportInput } from '../import/import-input';
import type { ImportPlan } from '../import/plan';
import { sha256OfBlob } from '../storage/sha256-of-blob';
import { clinicInputs, type BlobOf } from './clinic-inputs';
import type { ClinicBody } from './clinic-state';
import { DEMO_FILE, DEMO_ID, DEMO_TODAY, ignoredColumns, loadDemo } from './demo-clinic';
import { erasedPeople } from './erased-people';
import { openFiles } from './open-files';
import type { WorkspaceParts } from './workspace-parts';

/** What a clinic's files and settings lead to. */
export interface BuiltClinic {
  readonly plan: ImportPlan;
  readonly cohort: Cohort;
  /** Short hash of the data and settings. */
  readonly dataVersion: string;
}

/** The day as of which a clinic's files are judged: that of its newest import. */
export const clinicToday = (body: ClinicBody, today: IsoDate): IsoDate => {
  if (body.kind === 'demo') return DEMO_TODAY;
  const days = body.state.imports.map((entry) => entry.on);
  return (days.sort().at(-1) ?? today) as IsoDate;
};

/** Everything of a clinic that decides its rows and numbers. */
const dataOf = (body: ClinicBody) => ({
  settings: {
    ...body.state.settings,
    clinic: null,
    words: null,
    contacts: { ...body.state.settings.contacts, callsPerWeek: null },
  },
  imports: body.state.imports,
  corrections: body.state.corrections.map(({ row, column, to }) => [row, column, to]),
  setAside: body.state.setAside.map(({ row }) => row),
  erased: body.tombstones.map((stone) => stone.hmac),
  withoutConditions: body.withoutConditions,
});

/** Whether two bodies of a clinic show the same rows and numbers. */
export const sameData = (first: ClinicBody, second: ClinicBody): boolean => sameValue(dataOf(first), dataOf(second));

const versionOf = async (plan: ImportPlan, body: ClinicBody): Promise<string> => {
  const { imports: _, ...rest } = dataOf(body);
  const text = JSON.stringify([plan.files.map((file) => [file.sha256, file.mapping]), rest]);
  return (await sha256(new TextEncoder().encode(text))).slice(0, 6);
};

/** The tables of a clinic's kept files; those of the demo come from the site. */
export const bodyInputs = async (
  parts: Pick<WorkspaceParts, 'demo'>,
  body: ClinicBody,
  blobOf: BlobOf,
  step: LongStep,
): Promise<Result<readonly ImportInput[], AppError>> => {
  if (body.kind === 'own') return clinicInputs(body.state.imports, blobOf, false, step);
  const demo = await loadDemo(parts);
  if (!demo.ok) return demo;
  const { visits } = demo.value;
  const file = { name: DEMO_FILE, sha256: await sha256OfBlob(visits, step.signal), bytes: visits.size, tables: [] };
  const record = { id: DEMO_ID, on: DEMO_TODAY, initials: '', files: [file] };
  return clinicInputs([record], () => Promise.resolve(visits), false, step);
};

/** How a clinic's rows are judged, apart from its files. */
export const judgeOptions = (body: ClinicBody, today: IsoDate) => ({
  today,
  corrections: body.state.corrections,
  setAside: body.state.setAside.map(({ row }) => row),
  erased: erasedPeople(body),
  ignoredColumns: ignoredColumns(body),
});

/**
 * Fills the engine with what a clinic's body describes. Fails with `empty_clinic` where it holds no file, with
 * `nothing_usable` where no row of its files can be used. The tables of the clinic that was open are gone in any case.
 */
export const buildClinic = async (
  parts: Pick<WorkspaceParts, 'demo' | 'today'>,
  startEngine: () => Promise<Engine>,
  body: ClinicBody,
  blobOf: BlobOf,
  step: LongStep,
): Promise<Result<BuiltClinic, AppError>> => {
  const inputs = await bodyInputs(parts, body, blobOf, step);
  if (!inputs.ok) return inputs;
  if (inputs.value.length === 0) return err(workspaceErrors.emptyClinic);
  const opened = await openFiles(await startEngine(), inputs.value, body.state.settings, {
    ...judgeOptions(body, clinicToday(body, parts.today())),
    ...step,
  });
  if (!opened.ok) return opened;
  const { plan, cohort } = opened.value;
  if (cohort === undefined) return err(workspaceErrors.nothingUsable);
  return ok({ plan, cohort, dataVersion: await versionOf(plan, body) });
};
