import { settingsSchema, type Settings } from '../../lib/cohort/settings';
import type { AppError } from '../../lib/core/app-error';
import type { IsoDate } from '../../lib/core/iso-date';
import type { LongStep } from '../../lib/core/progress';
import type { Result } from '../../lib/core/result';
import type { Engine } from '../../lib/engine/types';
import type { ImportPlan } from '../../lib/import/plan';
import type { ClinicStore } from '../../lib/storage/clinic-store';
import { memoryStore } from '../../lib/storage/memory/memory-store';
import { createTabBus, type TabBus } from '../../lib/storage/memory/memory-tabs';
import type { TabLock } from '../../lib/storage/tab-lock';
import { createWorkspace } from '../../lib/workspace/create-workspace';
import type { GivenFile, ImportDraft, Outcome, Session, Workspace } from '../../lib/workspace/workspace';
import type { WorkspaceParts } from '../../lib/workspace/workspace-parts';
import { exportBytes, filterFor, reading, type Cells } from '../cohort/small-clinic';

export const TODAY = '2025-12-31' as IsoDate;

export const SETTINGS: Settings = settingsSchema.parse({ clinic: { name: 'North Clinic', invented: false } });

const DEMO_SETTINGS = {
  clinic: { name: 'Demo', invented: true },
  procedures: [{ site: null, from: null, to: null, conditions: ['fasting'], initials: 'AB' }],
};

const DEMO_ROWS = [reading('d', '2025-01-06'), reading('d', '2025-06-06')];

const blobOf = (rows: readonly Cells[]): Blob => new Blob([exportBytes(rows) as Uint8Array<ArrayBuffer>]);

export const file = (name: string, rows: readonly Cells[]): GivenFile => ({ name, blob: blobOf(rows) });

export const FIRST = file('first.csv', [reading('a', '2025-01-06'), reading('a', '2025-06-06')]);
export const SECOND = file('second.csv', [reading('a', '2025-08-06'), reading('b', '2025-08-06')]);

/** A clock that goes on by a second at every look. */
export const ticking = (): { readonly now: () => string; readonly millis: () => number } => {
  let at = Date.UTC(2025, 11, 31, 8);
  const millis = (): number => {
    at += 1000;
    return at;
  };
  return { millis, now: () => new Date(millis()).toISOString() };
};

/** Where clinics are kept in a test, with the tabs at them. */
export interface Place {
  readonly store: ClinicStore;
  readonly bus: TabBus;
  readonly clock: ReturnType<typeof ticking>;
}

export const newPlace = (): Place => {
  const clock = ticking();
  return { store: memoryStore(clock.millis), bus: createTabBus(), clock };
};

/** The same clinics and files in another place. */
export const copyOf = async (from: Place): Promise<Place> => {
  const to = newPlace();
  for (const { name } of await from.store.blobs()) {
    const blob = await from.store.getBlob(name);
    if (blob !== undefined) await to.store.putBlob(name, blob);
  }
  for (const { id } of await from.store.list()) {
    const clinic = await from.store.read(id);
    if (clinic !== undefined) await to.store.swap(0, clinic);
  }
  await to.store.setLastOpen((await from.store.lastOpen()) ?? '');
  return to;
};

let ids = 0;

/** A workspace in one tab of a place, with the given parts changed. */
export const workspaceOn = (
  engine: Engine,
  place: Place,
  parts: Partial<WorkspaceParts> & { readonly tabs?: TabLock } = {},
): Workspace => {
  const workspace = createWorkspace({
    engine: () => Promise.resolve(engine),
    forgetEngine: () => Promise.resolve(),
    store: place.store,
    tabs: place.bus.open().tabs,
    demo: () => Promise.resolve({ visits: blobOf(DEMO_ROWS), settings: DEMO_SETTINGS }),
    today: () => TODAY,
    now: place.clock.now,
    randomId: () => {
      ids += 1;
      return `id-${String(ids)}`;
    },
    workFactor: 4,
    ...parts,
  });
  workspace.setInitials('AB');
  return workspace;
};

export const value = <T>(result: Result<T, AppError>): T => {
  if (!result.ok) throw new Error(`${result.error.code}: ${result.error.message}`);
  return result.value;
};

export const codeOf = (result: Result<unknown, AppError>): string | undefined =>
  result.ok ? undefined : result.error.code;

/** What a person decides who takes every suggestion. */
export const draftOf = async (
  workspace: Workspace,
  given: readonly GivenFile[],
  into: string = 'new',
  settings: Settings = SETTINGS,
): Promise<ImportDraft> => {
  const read = value(await workspace.read(given, into));
  const tables = read.files.flatMap((entry, index) =>
    entry.tables.map(({ table, mapping }) => ({ file: index, table, mapping })),
  );
  return { given, read, tables, settings, into };
};

/** A planned import, ready to be committed. */
export const planOf = async (
  workspace: Workspace,
  given: readonly GivenFile[],
  into: string = 'new',
  settings: Settings = SETTINGS,
): Promise<{ readonly plan: ImportPlan; readonly commit: (step?: LongStep) => Outcome }> => {
  const draft = await draftOf(workspace, given, into, settings);
  const plan = value(await workspace.plan(draft));
  return { plan, commit: (step) => workspace.commit(plan, draft, step) };
};

/** Imports files with all that is suggested. */
export const imported = async (
  workspace: Workspace,
  given: readonly GivenFile[],
  into: string = 'new',
  settings: Settings = SETTINGS,
): Outcome => (await planOf(workspace, given, into, settings)).commit();

/** The clients of the open clinic. */
export const clientsOf = async (session: Session): Promise<readonly string[]> =>
  (await session.cohort.clients(filterFor('weight'))).map((row) => row.client).sort();
