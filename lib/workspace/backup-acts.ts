import type { AppError } from '../core/app-error';
import { err, ok, type Result } from '../core/result';
import type { LongStep } from '../core/progress';
import { isSealed } from '../storage/seal';
import { sha256OfBlob } from '../storage/sha256-of-blob';
import { packClinic, readClinicFile, type ClinicFile } from './clinic-file';
import type { KeptClinic } from './clinic-keeper';
import type { ClinicBody, LogEntry } from './clinic-state';
import { tombstoneUnion } from './erased-people';
import { changed, logged } from './history';
import { keepBlobs } from './keep-blobs';
import { keptBlobs } from './kept-blobs';
import { withoutSharedBase } from './shared-base';
import { filesOf, takeIn, type TakenIn } from './take-in';
import type { Outcome, Workspace } from './workspace';
import type { Workbench } from './workbench';

/** Log lines of both, in the order of their time. */
const logUnion = (mine: readonly LogEntry[], theirs: readonly LogEntry[]): LogEntry[] => {
  const known = new Set(mine.map((entry) => JSON.stringify(entry)));
  return [...mine, ...theirs.filter((entry) => !known.has(JSON.stringify(entry)))].sort((a, b) =>
    a.at < b.at ? -1 : a.at > b.at ? 1 : 0,
  );
};

/** Backing a clinic up into one file, and restoring it. */
export const backupActs = (bench: Workbench): Pick<Workspace, 'backUp' | 'isSealed' | 'restore'> => {
  const { parts, keeper } = bench;
  const sealing = (passphrase: string | null) => ({
    passphrase,
    ...(parts.workFactor === undefined ? {} : { workFactor: parts.workFactor }),
  });

  const backUp: Workspace['backUp'] = async (passphrase, step = {}) => {
    const kept = await bench.writable();
    if (!kept.ok) return kept;
    const { initials, at } = bench.sign('backed-up');
    const about = { kind: 'backup', writer: initials, at, versions: [] } as const;
    const made = await packClinic(keeper, kept.value, about, sealing(passphrase), step);
    if (!made.ok) return made;
    const { name, blob } = made.value;
    const entry: LogEntry = { at, initials, code: 'backed-up', details: { files: name, bytes: blob.size } };
    const backup = {
      at,
      initials,
      name,
      sha256: await sha256OfBlob(blob, step.signal),
      sealed: passphrase !== null,
      bytes: blob.size,
      rows: bench.here()?.built?.plan.accepted ?? null,
    };
    const { body } = kept.value;
    const session = await bench.enact(kept.value, logged({ ...body, backups: [...body.backups, backup] }, entry));
    return session.ok ? ok({ made: made.value, session: session.value }) : session;
  };

  const takenFrom = async (
    file: ClinicFile,
    people: Pick<ClinicBody, 'tombstones' | 'tombstoneKey'>,
    at: string,
    step: LongStep,
  ): Promise<Result<TakenIn, AppError>> => {
    const came = await filesOf(file, keptBlobs(file.body), step);
    return came.ok ? takeIn(file.body.state, came.value, () => Promise.resolve(undefined), people, at, step) : came;
  };

  const signRestored = ({ writtenAt }: ClinicFile): LogEntry =>
    bench.sign('restored', { files: writtenAt.slice(0, 10) });

  const asNew = async (file: ClinicFile, step: LongStep): Outcome => {
    const header = keeper.blank(parts.randomId());
    const entry = signRestored(file);
    const before: ClinicBody = { ...file.body, kind: 'own', past: [], future: [], shared: null };
    const taken = await takenFrom(file, before, entry.at, step);
    if (!taken.ok) return taken;
    const body = logged({ ...before, state: taken.value.state }, entry);
    return keepBlobs(bench, header, taken.value.files, step, () =>
      bench.enact({ header, body: before }, body, { step, anew: true }),
    );
  };

  const inPlace = async (file: ClinicFile, kept: KeptClinic, step: LongStep): Outcome => {
    const mine = kept.body;
    const entry = signRestored(file);
    const tombstones = [...tombstoneUnion(mine, file.body)];
    const people = { tombstones, tombstoneKey: mine.tombstoneKey };
    const taken = await takenFrom(file, people, entry.at, step);
    if (!taken.ok) return taken;
    const next = changed(withoutSharedBase({ ...mine, tombstones }), taken.value.state, entry);
    const body = { ...next, log: logUnion(next.log, file.body.log) };
    const keep = (files: TakenIn['files'], restored: ClinicBody): Outcome =>
      keepBlobs(bench, kept.header, files, step, () => bench.enact(kept, restored, { step, anew: true }));
    if (tombstones.length === mine.tombstones.length) return keep(taken.value.files, body);
    // The backup says of somebody that they were erased: the one state that undo brings back is without them too.
    const blobs = keeper.blobsOf(kept.header);
    const back = await takeIn(mine.state, new Map(), ({ sha256 }) => blobs.getBlob(sha256), people, entry.at, step);
    if (!back.ok) return back;
    const past = [{ state: back.value.state, undoes: entry }];
    return keep(new Map([...back.value.files, ...taken.value.files]), { ...body, past });
  };

  const restore: Workspace['restore'] = async (blob, { passphrase, as }, step = {}) => {
    const file = await readClinicFile(blob, passphrase, step);
    if (!file.ok) return file;
    if (as === 'new') return asNew(file.value, step);
    const kept = await bench.writable();
    if (!kept.ok) return err(kept.error);
    // The demo comes from the site: what is restored over it becomes a clinic beside it.
    return kept.value.body.kind === 'demo' ? asNew(file.value, step) : inPlace(file.value, kept.value, step);
  };

  return {
    backUp: (passphrase, step) => bench.inTurn(() => backUp(passphrase, step)),
    isSealed,
    restore: (file, options, step) => bench.inTurn(() => restore(file, options, step)),
  };
};
