import type { AppError } from '../core/app-error';
import { workspaceErrors as errors } from '../core/messages/en/workspace-errors';
import type { LongStep } from '../core/progress';
import { err, ok, type Result } from '../core/result';
import { sameValue } from '../core/same-value';
import { judge } from '../import/judge';
import { mappingQuestions } from '../import/mapping-questions';
import type { ImportPlan } from '../import/plan';
import { bodyInputs, judgeOptions } from './build-clinic';
import { clinicInputs } from './clinic-inputs';
import type { KeptClinic } from './clinic-keeper';
import { commitImport, type PlannedImport } from './commit-import';
import { draftImport } from './draft-import';
import { importAnswers } from './import-answers';
import { newClinic } from './new-clinic';
import { readGiven, readTableAgain } from './read-given';
import { roomForBytes } from './room-for';
import type { ImportDraft, ReadFiles, Workspace } from './workspace';
import type { Workbench } from './workbench';

/** Prefix of the tables of a preview: the open clinic's stay as they are. */
export const PLAN_PREFIX = 'plan_';

/** Reading, planning and committing an import. */
export const importActs = (
  bench: Workbench,
): Pick<Workspace, 'read' | 'readAgain' | 'questionsOf' | 'plan' | 'commit'> & {
  readonly lastPlan: () => PlannedImport | undefined;
  readonly forgetPlan: () => void;
} => {
  const { parts, keeper } = bench;
  const importIds = new WeakMap<ReadFiles, string>();
  let last: PlannedImport | undefined;

  /** One id for all plans of the same files, so that what was said of a row stays with it. */
  const importIdOf = (read: ReadFiles): string => {
    const id = importIds.get(read) ?? parts.randomId();
    importIds.set(read, id);
    return id;
  };

  const targetOf = async (draft: Pick<ImportDraft, 'into' | 'settings'>): Promise<Result<KeptClinic, AppError>> => {
    if (draft.into === 'new') {
      const id = parts.randomId();
      return ok({ header: keeper.blank(id), body: newClinic('own', draft.settings, bench.sign('started')) });
    }
    const kept = await keeper.read(draft.into);
    return kept.ok && kept.value.body.kind === 'demo' ? err(errors.unknownClinic) : kept;
  };

  const remembered = async (into: string): Promise<KeptClinic['body']['state']['mappings']> => {
    const kept = into === 'new' ? bench.here()?.kept : undefined;
    if (into === 'new') return kept?.body.state.mappings ?? [];
    const target = await keeper.read(into);
    return target.ok ? target.value.body.state.mappings : [];
  };

  const plan = async (draft: ImportDraft, step: LongStep): Promise<Result<ImportPlan, AppError>> => {
    if (draft.given.length === 0) return err(errors.noFiles);
    const target = await targetOf(draft);
    if (!target.ok) return target;
    const { header, body } = target.value;
    const today = parts.today();
    const about = { id: importIdOf(draft.read), on: today, initials: bench.sign('imported').initials };
    const drafted = draftImport(draft, about);
    if (!drafted.ok) return drafted;
    const { record, given } = drafted.value;
    const blobs = keeper.blobsOf(header);
    const earlier = await bodyInputs(parts, body, (file) => blobs.getBlob(file.sha256), step);
    if (!earlier.ok) return earlier;
    const fresh = await clinicInputs(
      [record],
      (file) => Promise.resolve(given[record.files.indexOf(file)]?.blob),
      true,
      step,
    );
    if (!fresh.ok) return fresh;
    const judged = await judge(await bench.engine(), [...earlier.value, ...fresh.value], {
      ...judgeOptions(body, today),
      answers: importAnswers(draft.settings),
      prefix: PLAN_PREFIX,
      failedFiles: draft.read.files.flatMap(({ name, error }) => (error === null ? [] : [{ name, error }])),
      ...step,
    });
    if (judged.ok) last = { plan: judged.value, target: target.value, draft: drafted.value };
    return judged;
  };

  return {
    lastPlan: () => last,
    forgetPlan: () => {
      last = undefined;
    },
    read: (given, into, step = {}) =>
      bench.inTurn(async () => {
        // Nobody should wait until a gigabyte is read to hear that it cannot be kept.
        const full = await roomForBytes(
          parts.store,
          given.reduce((sum, { blob }) => sum + blob.size, 0),
        );
        return full === undefined ? readGiven(given, await remembered(into), step) : err(full);
      }),
    readAgain: (given, table, headerLine, step = {}) =>
      bench.inTurn(async () =>
        readTableAgain(given, table, headerLine, bench.here()?.kept?.body.state.mappings ?? [], step),
      ),
    questionsOf: (table, mapping) => mappingQuestions(mapping, table.profile),
    plan: (draft, step = {}) => bench.inTurn(() => plan(draft, step)),
    commit: (committed, draft, step = {}) =>
      bench.inTurn(async () => {
        if (last === undefined || last.plan.fingerprint !== committed.fingerprint) return err(errors.planIsStale);
        const { record } = last.draft;
        const again = draftImport(draft, { id: record.id, on: last.plan.today, initials: record.initials });
        if (!again.ok) return again;
        if (!sameValue(again.value.record, record)) return err(errors.planIsStale);
        const done = await commitImport(bench, { ...last, draft: again.value }, draft, step);
        if (done.ok) last = undefined;
        return done;
      }),
  };
};
