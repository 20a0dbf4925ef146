import { workspaceErrors as errors } from '../core/messages/en/workspace-errors';
import type { LongStep } from '../core/progress';
import { err, ok } from '../core/result';
import { sha256OfBlob } from '../storage/sha256-of-blob';
import { packClinic, readClinicFile, type ClinicFile } from './clinic-file';
import type { KeptClinic } from './clinic-keeper';
import type { ClinicBody, LogEntry } from './clinic-state';
import { conflictWords } from './conflict-words';
import { tombstoneUnion } from './erased-people';
import { changed, logged } from './history';
import { keepBlobs } from './keep-blobs';
import { mergeStates, type MergedStates } from './merge-states';
import { sharedBase, versionsUnion } from './shared-base';
import { stateDifference } from './state-difference';
import { stateWithout } from './state-without';
import { erasedIn, filesOf, takeIn } from './take-in';
import type { Outcome, Workspace } from './workspace';
import type { Workbench } from './workbench';

type Choices = Parameters<Workspace['merge']>[1]['choices'];

const merged = (mine: ClinicBody, { versions, body }: ClinicFile, choices: Choices): MergedStates =>
  mergeStates(sharedBase(mine, versions), mine.state, body.state, choices);

/** The workspace file in a shared folder: saved for others, and merged in. */
export const sharedActs = (bench: Workbench): Pick<Workspace, 'saveShared' | 'previewMerge' | 'merge'> => {
  const { parts, keeper } = bench;

  const saveShared: Workspace['saveShared'] = async (passphrase, step = {}) => {
    const kept = await bench.writable();
    if (!kept.ok) return kept;
    const { body } = kept.value;
    const rows = bench.here()?.built?.plan.accepted ?? 0;
    const { initials, at } = bench.sign('shared-saved');
    const sealing = { passphrase, ...(parts.workFactor === undefined ? {} : { workFactor: parts.workFactor }) };
    const versions = versionsUnion(body.shared?.versions ?? [], [parts.randomId()]);
    const about = { kind: 'workspace', writer: initials, at, versions } as const;
    const made = await packClinic(keeper, kept.value, about, sealing, step);
    if (!made.ok) return made;
    const { blob } = made.value;
    const name = body.shared?.name ?? made.value.name;
    const shared = { name, at, lastWriter: initials, base: body.state, versions };
    const noted = { at, initials, what: 'workspace', name, rows, sha256: await sha256OfBlob(blob, step.signal) };
    const next = { ...body, shared, exports: [...body.exports, noted] };
    const entry: LogEntry = { at, initials, code: 'shared-saved', details: { files: name, rows } };
    const session = await bench.enact(kept.value, logged(next, entry));
    return session.ok ? ok({ made: made.value, session: session.value }) : session;
  };

  const previewMerge: Workspace['previewMerge'] = async (blob, passphrase) => {
    const kept = bench.here()?.kept;
    if (kept === undefined) return err(errors.noClinic);
    const file = await readClinicFile(blob, passphrase, {});
    if (!file.ok) return file;
    const { state, conflicts } = merged(kept.body, file.value, {});
    return ok({
      lastWriter: file.value.writer,
      writtenAt: file.value.writtenAt,
      incoming: stateDifference(kept.body.state, state),
      outgoing: stateDifference(file.value.body.state, state),
      conflicts: conflicts.map(({ path, base, mine, theirs }) => ({
        path,
        base: conflictWords(base),
        mine: conflictWords(mine),
        theirs: conflictWords(theirs),
      })),
    });
  };

  const mergeIn = async (
    kept: KeptClinic,
    file: ClinicFile,
    name: string,
    choices: Choices,
    step: LongStep,
  ): Outcome => {
    const mine = kept.body;
    const { state, conflicts } = merged(mine, file, choices);
    if (conflicts.some(({ path }) => choices[path] === undefined)) return err(errors.mergeConflicts);
    const wanted = new Set(state.imports.flatMap((entry) => entry.files.map(({ sha256 }) => sha256)));
    const came = await filesOf(file, wanted, step);
    if (!came.ok) return came;
    const entry = bench.sign('merged', { files: name });
    const tombstones = [...tombstoneUnion(mine, file.body)];
    const people = { tombstones, tombstoneKey: mine.tombstoneKey };
    const blobs = keeper.blobsOf(kept.header);
    const taken = await takeIn(state, came.value, ({ sha256 }) => blobs.getBlob(sha256), people, entry.at, step);
    if (!taken.ok) return taken;
    const base = stateWithout(file.body.state, erasedIn(people, file.body.state));
    // A backup has no name that others could know it by: nothing is in common after it.
    const versions = file.versions.length === 0 ? [] : versionsUnion(mine.shared?.versions ?? [], file.versions);
    const shared = { name, at: file.writtenAt, lastWriter: file.writer, base, versions };
    const next = changed({ ...mine, tombstones, shared }, taken.value.state, entry);
    // Who was erased elsewhere is erased here: no state before may bring the person back.
    const body = tombstones.length > mine.tombstones.length ? { ...next, past: [], future: [] } : next;
    if (body !== next) bench.tidyLater();
    return keepBlobs(bench, kept.header, taken.value.files, step, () => bench.enact(kept, body, { step }));
  };

  return {
    saveShared: (passphrase, step) => bench.inTurn(() => saveShared(passphrase, step)),
    previewMerge: (file, passphrase) => bench.inTurn(() => previewMerge(file, passphrase)),
    merge: (blob, { name, passphrase, choices }, step = {}) =>
      bench.inTurn(async () => {
        const kept = await bench.writable();
        if (!kept.ok) return kept;
        if (kept.value.body.kind === 'demo') return err(errors.unknownClinic);
        const file = await readClinicFile(blob, passphrase, step);
        return file.ok ? mergeIn(kept.value, file.value, name, choices, step) : file;
      }),
  };
};
