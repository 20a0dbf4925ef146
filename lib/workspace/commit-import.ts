import type { AppError } from '../core/app-error';
import { workspaceErrors as errors } from '../core/messages/en/workspace-errors';
import type { LongStep } from '../core/progress';
import { err, ok, type Result } from '../core/result';
import { sameValue } from '../core/same-value';
import { fitsHeader } from '../import/fits-header';
import type { ImportPlan } from '../import/plan';
import { sha256OfBlob } from '../storage/sha256-of-blob';
import type { KeptClinic } from './clinic-keeper';
import { contentOf, type ClinicState, type ImportRecord } from './clinic-state';
import { changed } from './history';
import type { DraftImport } from './draft-import';
import { importDifference, standingOf } from './import-difference';
import { keepBlobs, type BlobToKeep } from './keep-blobs';
import { erasedIn } from './take-in';
import { withoutErased } from './without-erased';
import type { ImportDraft, Outcome } from './workspace';
import type { Workbench } from './workbench';

const COUNTS = ['accepted', 'held', 'refused', 'duplicates', 'setAside', 'clients', 'firstVisit', 'lastVisit'] as const;

/** Whether what was built is what was previewed. Rows of erased people are left out of the kept files: they only count less. */
const isAsPlanned = (plan: ImportPlan, built: ImportPlan, doubles: boolean): boolean => {
  if (plan.erased === 0 && !doubles) return plan.fingerprint === built.fingerprint;
  return COUNTS.every((count) => (doubles && count !== 'accepted' && count !== 'held') || plan[count] === built[count]);
};

/** The error where a given file is not what was planned any more, or cannot be read from the disk. */
const changedFile = async ({ record, given }: DraftImport, step: LongStep): Promise<AppError | undefined> => {
  for (const [number, file] of record.files.entries()) {
    const blob = given[number]?.blob;
    const hash = await (blob === undefined ? undefined : sha256OfBlob(blob, step.signal).catch(() => undefined));
    step.signal?.throwIfAborted();
    if (hash !== file.sha256) return errors.fileChanged(file.name);
  }
  return undefined;
};

const stateWith = (state: ClinicState, record: ImportRecord, settings: ClinicState['settings']): ClinicState => {
  const fresh = record.files.flatMap((file) => file.tables.map(({ mapping }) => mapping));
  return {
    ...state,
    settings,
    imports: record.files.length === 0 ? state.imports : [...state.imports, record],
    mappings: [...state.mappings.filter((known) => !fresh.some(({ header }) => fitsHeader(known, header))), ...fresh],
  };
};

/** The files of an import that the clinic does not hold yet under the same mapping. */
const withoutKept = (record: ImportRecord, state: ClinicState): ImportRecord => {
  const kept = state.imports.flatMap((entry) => entry.files);
  const isKept = (file: ImportRecord['files'][number]): boolean =>
    kept.some(
      (other) =>
        contentOf(other) === contentOf(file) &&
        sameValue(
          other.tables.map(({ table, mapping }) => ({ table, mapping })),
          file.tables.map(({ table, mapping }) => ({ table, mapping })),
        ),
    );
  return record.files.every(isKept) ? { ...record, files: [] } : record;
};

/** What a plan was made of. */
export interface PlannedImport {
  readonly plan: ImportPlan;
  /** The clinic as it was when the plan was made. */
  readonly target: KeptClinic;
  readonly draft: DraftImport;
}

interface FilesToKeep {
  readonly record: ImportRecord;
  readonly files: ReadonlyMap<string, BlobToKeep>;
}

/** The files of an import as they are kept: as given, or without the rows of people who were erased. */
const filesToKeep = async (
  { plan, target, draft }: PlannedImport,
  settings: ClinicState['settings'],
  at: string,
  step: LongStep,
): Promise<Result<FilesToKeep, AppError>> => {
  const { record, given } = draft;
  const blobOf = (number: number): Blob => given[number]?.blob ?? new Blob();
  const asGiven = record.files.map((file, number): [string, BlobToKeep] => [
    file.sha256,
    { blob: blobOf(number), name: file.name },
  ]);
  if (plan.erased === 0) return ok({ record, files: new Map(asGiven) });
  const wrong = await changedFile(draft, step);
  if (wrong !== undefined) return err(wrong);
  const without = await withoutErased(
    { ...target.body.state, imports: [record], corrections: [], setAside: [] },
    erasedIn(target.body, { ...target.body.state, settings }),
    (file) => Promise.resolve(blobOf(record.files.indexOf(file))),
    at,
    step,
  );
  if (!without.ok) return without;
  const { blobs, state } = without.value;
  const [anew = record] = state.imports;
  const files = anew.files.map((file, number): [string, BlobToKeep] => [
    file.sha256,
    { blob: blobs.get(file.sha256) ?? blobOf(number), name: file.name },
  ]);
  return ok({ record: anew, files: new Map(files) });
};

/** The clinic that an import goes to, open and writable, as it was when the plan was made. */
const openTarget = async (
  bench: Workbench,
  { header, body }: KeptClinic,
  step: LongStep,
): Promise<Result<KeptClinic, AppError>> => {
  if (header.revision === 0) return ok({ header, body });
  if (bench.here()?.id !== header.id) {
    const shown = await bench.show(header.id, step);
    if (!shown.ok && shown.error.code !== errors.emptyClinic.code) return shown;
  }
  const kept = await bench.writable();
  return kept.ok && kept.value.header.revision !== header.revision ? err(errors.planIsStale) : kept;
};

const commit = async (bench: Workbench, planned: PlannedImport, draft: ImportDraft, step: LongStep): Outcome => {
  const target = await openTarget(bench, planned.target, step);
  if (!target.ok) return target;
  const { header, body } = target.value;
  // A clinic's first files: from now on there is something to lose. Nothing waits for the answer, a browser may ask.
  if (body.state.imports.length === 0) void bench.parts.store.persist();
  const { settings } = draft;
  const here = bench.here();
  const shown = here?.id === header.id ? here.built : undefined;
  const before = shown && (await standingOf(shown.cohort, settings, step.signal));
  const entry = bench.sign('imported', {
    files: planned.draft.record.files.map(({ name }) => name).join(', '),
    rows: planned.draft.record.files.reduce((sum, { tables }) => sum + tables.reduce((n, { rows }) => n + rows, 0), 0),
  });
  const toKeep = await filesToKeep(planned, settings, entry.at, step);
  if (!toKeep.ok) return toKeep;
  const record = withoutKept(toKeep.value.record, body.state);
  const doubles = record.files.length === 0;
  const state = stateWith(body.state, record, settings);
  const done = await keepBlobs(bench, header, doubles ? new Map() : toKeep.value.files, step, () =>
    bench.enact(target.value, sameValue(state, body.state) ? body : changed(body, state, entry), {
      step,
      check: ({ plan }) => (isAsPlanned(planned.plan, plan, doubles) ? undefined : errors.planDiffers),
      ...(before === undefined
        ? {}
        : {
            difference: async ({ cohort }) => importDifference(before, await standingOf(cohort, settings, step.signal)),
          }),
    }),
  );
  if (!done.ok && done.error.code === errors.notKept.code)
    return err((await changedFile(planned.draft, step)) ?? done.error);
  return done;
};

/**
 * Executes an import as it was previewed: files kept and verified, the clinic built from them, compared with the plan,
 * and only then named by the manifest. Where any of it fails or is stopped, everything is as it was.
 */
export const commitImport = async (
  bench: Workbench,
  planned: PlannedImport,
  draft: ImportDraft,
  step: LongStep,
): Outcome => {
  const before = bench.here()?.id;
  const goBack = async (): Promise<void> => {
    if (before !== undefined && bench.here()?.id !== before) await bench.show(before);
  };
  const done = await commit(bench, planned, draft, step).catch(async (reason: unknown) => {
    await goBack();
    throw reason;
  });
  if (!done.ok) await goBack();
  return done;
};
