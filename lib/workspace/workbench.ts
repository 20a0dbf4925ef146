import type { AppError } from '../core/app-error';
import { workspaceErrors } from '../core/messages/en/workspace-errors';
import type { LongStep } from '../core/progress';
import { err, ok, type Result } from '../core/result';
import type { Engine } from '../engine/types';
import { StorageError } from '../storage/clinic-store';
import { keptNames } from '../storage/sealed-store';
import type { TabEvent, TabSeat } from '../storage/tab-lock';
import { buildClinic, sameData, type BuiltClinic } from './build-clinic';
import { clinicKeeper, type ClinicKeeper, type KeptClinic } from './clinic-keeper';
import type { BlobOf } from './clinic-inputs';
import type { ClinicBody, LogEntry } from './clinic-state';
import { keepingState } from './keeping-state';
import { keptBlobs } from './kept-blobs';
import { removeUnnamed } from './remove-unnamed';
import { EngineDied, livingEngine } from './living-engine';
import { sessionOf } from './session-of';
import { tidyStore } from './tidy-store';
import { createTurns, type InTurn } from './turns';
import type { ImportDifference, Outcome } from './workspace';
import type { WorkspaceParts } from './workspace-parts';

/** The clinic at which this tab is. `kept` is missing while it is locked, `built` where it cannot be shown. */
export interface OpenClinic {
  readonly id: string;
  readonly seat: TabSeat;
  readonly kept: KeptClinic | undefined;
  readonly built: BuiltClinic | undefined;
}

export interface EnactOptions {
  readonly step?: LongStep | undefined;
  /** Where the files of the next state come from; default: the store. */
  readonly blobOf?: BlobOf;
  /** Builds even where the next body says the same as the one before. */
  readonly anew?: boolean;
  /** Keeps the body even where no row of it can be shown. */
  readonly evenIfNothing?: boolean;
  /** Looks at what was built before it is kept; an error leaves everything as it was. */
  readonly check?: (built: BuiltClinic) => AppError | undefined;
  readonly difference?: (built: BuiltClinic) => Promise<ImportDifference>;
  /** How the body is kept; default: swapped in for the one before. */
  readonly keep?: (from: KeptClinic, body: ClinicBody) => Promise<Result<KeptClinic, AppError>>;
}

/** What every use case works with: the open clinic, the engine filled with it, and the one way of changing it. */
export interface Workbench {
  readonly parts: WorkspaceParts;
  readonly keeper: ClinicKeeper;
  readonly inTurn: InTurn;
  engine(): Promise<Engine>;
  here(): OpenClinic | undefined;
  setInitials(initials: string): void;
  sign(code: LogEntry['code'], details?: LogEntry['details']): LogEntry;
  /** Opens a clinic; where that fails for good, the one before stays open. */
  show(id: string, step?: LongStep): Outcome;
  /** The open clinic as the screens see it. */
  session(difference?: ImportDifference | null): Outcome;
  /** The open clinic as it is kept, if this tab may write and knows its last change. */
  writable(): Promise<Result<KeptClinic, AppError>>;
  /** Builds the next body of a clinic and keeps it; where that fails, the clinic before stays open. */
  enact(from: KeptClinic, body: ClinicBody, options?: EnactOptions): Outcome;
  /** Leaves the open clinic without opening another. */
  leave(): Promise<void>;
  /** Forgets what the engine holds. */
  empty(): Promise<void>;
  /** Removes kept files that no clinic names once the use case is over: these in any case, for they were given up. */
  tidyLater(givenUp?: readonly string[]): void;
  onChangedElsewhere(listener: () => void): () => void;
}

/** States of a clinic at which a tab can stand without showing it. */
const STANDING: ReadonlySet<string> = new Set(['file_missing', 'empty_clinic']);

/** A clinic that holds files and shows nothing is as good as empty, once it is the open one. */
const asStanding = (built: Result<BuiltClinic, AppError>): Result<BuiltClinic, AppError> =>
  !built.ok && built.error.code === workspaceErrors.nothingUsable.code ? err(workspaceErrors.nothingToShow) : built;

const namesOf = ({ header, body }: KeptClinic): readonly string[] => keptNames(header, [...keptBlobs(body)]);

export const createWorkbench = (parts: WorkspaceParts): Workbench => {
  const keeper = clinicKeeper(parts.store, parts.now);
  const listeners = new Set<() => void>();
  let initials = '';
  let open: OpenClinic | undefined;
  let dead: Engine | undefined;
  let untidy = true;
  const givenUp = new Set<string>();

  const tell = (): void => {
    for (const listener of listeners) listener();
  };

  const onDeath = (engine: Engine): void => {
    if (engine === dead) return;
    dead = engine;
    void parts.forgetEngine();
    tell();
  };

  const engine = async (): Promise<Engine> => livingEngine((await parts.engine()).dialect, parts.engine, onDeath);

  const build = async ({ header, body }: KeptClinic, step: LongStep, blobOf?: BlobOf) =>
    buildClinic(parts, engine, body, blobOf ?? ((file) => keeper.blobsOf(header).getBlob(file.sha256)), step);

  /** Fills the engine with the open clinic again, after another one was built and not kept. */
  const refill = async (): Promise<void> => {
    if (open?.kept === undefined || open.built === undefined) return;
    const again = await build(open.kept, {});
    open = { ...open, built: again.ok ? open.built : undefined };
  };

  const onTabEvent = (id: string) => (event: TabEvent) => {
    if (open?.id !== id) return;
    if (event.kind === 'changed' && event.revision === open.kept?.header.revision) return;
    tell();
  };

  const moveTo = async (id: string): Promise<TabSeat> => {
    if (open?.id === id) return open.seat;
    const seat = await parts.tabs.join(id, onTabEvent(id));
    await open?.seat.leave();
    await parts.store.setLastOpen(id).catch((reason: unknown) => {
      // What was just kept is kept, whether or not the next start finds it first.
      if (!(reason instanceof StorageError)) throw reason;
    });
    return seat;
  };

  const session: Workbench['session'] = async (difference = null) => {
    if (open === undefined) return err(workspaceErrors.noClinic);
    const { kept, built, seat } = open;
    if (kept === undefined || built === undefined) return show(open.id);
    const keeping = keepingState(kept, {
      writer: seat.isWriter(),
      room: await parts.store.room(),
      lastVisit: built.plan.lastVisit,
      today: parts.today(),
    });
    return ok(sessionOf(kept, built, keeping, difference));
  };

  const show: Workbench['show'] = async (id, step = {}) => {
    const kept = await keeper.read(id);
    if (!kept.ok) {
      if (kept.error.code !== 'locked') return kept;
      // It may be this clinic that was sealed in another tab: what the database holds of it goes.
      if (open?.built !== undefined) await parts.forgetEngine();
      open = { id, seat: await moveTo(id), kept: undefined, built: undefined };
      return kept;
    }
    const elsewhere = open !== undefined && open.id !== id;
    const built = asStanding(
      await build(kept.value, step).catch(async (reason: unknown) => {
        if (!(reason instanceof EngineDied)) await refill();
        throw reason;
      }),
    );
    if (!built.ok && elsewhere && !STANDING.has(built.error.code)) {
      await refill();
      return built;
    }
    open = { id, seat: await moveTo(id), kept: kept.value, built: built.ok ? built.value : undefined };
    return built.ok ? session() : built;
  };

  const writable: Workbench['writable'] = async () => {
    if (open === undefined) return err(workspaceErrors.noClinic);
    const kept = await keeper.read(open.id);
    if (!kept.ok) return kept;
    if (!open.seat.isWriter()) return err(workspaceErrors.readerTab);
    return kept.value.header.revision === open.kept?.header.revision ? kept : err(workspaceErrors.otherTab);
  };

  const enact: Workbench['enact'] = async (from, body, options = {}) => {
    const { step = {}, blobOf, anew = false, evenIfNothing = false, check, difference } = options;
    const keep = options.keep ?? ((before, next) => keeper.swap(before, next));
    const { id } = from.header;
    const same = open?.id === id && !anew && blobOf === undefined && sameData(from.body, body);
    const shown = same ? open?.built : undefined;
    const attempt = async (): Promise<
      Result<readonly [KeptClinic, Result<BuiltClinic, AppError>, ImportDifference | null], AppError>
    > => {
      const result = shown === undefined ? await build({ ...from, body }, step, blobOf) : ok(shown);
      const built = evenIfNothing ? asStanding(result) : result;
      if (!built.ok && built.error.code !== 'empty_clinic') return built;
      const wrong = built.ok ? check?.(built.value) : undefined;
      if (wrong !== undefined) return err(wrong);
      const changes = built.ok ? ((await difference?.(built.value)) ?? null) : null;
      step.signal?.throwIfAborted();
      const kept = await keep(from, body);
      return kept.ok ? ok([kept.value, built, changes]) : kept;
    };
    const done = await attempt().catch(async (reason: unknown) => {
      if (shown === undefined && !(reason instanceof EngineDied)) await refill();
      throw reason;
    });
    if (!done.ok) {
      if (shown === undefined) await refill();
      return done;
    }
    const [kept, built, changes] = done.value;
    open = { id, seat: await moveTo(id), kept, built: built.ok ? built.value : undefined };
    open.seat.announceChanged(kept.header.revision);
    const needed = new Set(namesOf(kept));
    for (const name of namesOf(from)) if (!needed.has(name)) givenUp.add(name);
    return built.ok ? session(changes) : built;
  };

  const tidy = async (): Promise<void> => {
    if (givenUp.size > 0 && (await removeUnnamed(parts, keeper, [...givenUp]))) givenUp.clear();
    if (untidy && open?.seat.isWriter() === true) untidy = !(await tidyStore(parts, keeper));
  };

  /** A clinic that is not open any more is locked again. */
  const forgetKeys = (): void => {
    for (const id of keeper.keys.keys()) if (id !== open?.id) keeper.keys.delete(id);
  };

  return {
    parts,
    keeper,
    engine,
    inTurn: createTurns({ refill, after: () => tidy().finally(forgetKeys) }),
    here: () => open,
    setInitials: (next) => {
      initials = next;
    },
    sign: (code, details = {}) => ({ at: parts.now(), initials, code, details }),
    show,
    session,
    writable,
    enact,
    leave: async () => {
      await open?.seat.leave();
      open = undefined;
    },
    empty: async () => {
      if (open !== undefined) open = { ...open, kept: undefined, built: undefined };
      await parts.forgetEngine();
    },
    tidyLater: (names = []) => {
      untidy = true;
      for (const name of names) givenUp.add(name);
    },
    onChangedElsewhere: (listener) => {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
  };
};
