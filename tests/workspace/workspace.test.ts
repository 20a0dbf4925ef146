import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { settingsSchema, type Settings } from '../../lib/cohort/settings';
import type { IsoDate } from '../../lib/core/iso-date';
import type { Result } from '../../lib/core/result';
import type { AppError } from '../../lib/core/app-error';
import { openNodeEngine } from '../../lib/engine/node';
import type { Engine } from '../../lib/engine/types';
import type { ClinicStorage } from '../../lib/storage/clinic-storage';
import { memoryStorage } from '../../lib/storage/memory';
import { createWorkspace } from '../../lib/workspace/create-workspace';
import type { GivenFile, Session, Workspace } from '../../lib/workspace/session';
import { exportBytes, filterFor, latestOf, reading, without, type Cells } from '../cohort/small-clinic';

let engine: Engine;
beforeAll(async () => {
  engine = await openNodeEngine();
});
afterAll(() => engine.close());

const TODAY = '2025-12-31' as IsoDate;
const SETTINGS = settingsSchema.parse({ clinic: { name: 'North Clinic', invented: false } });
const DEMO_SETTINGS = {
  clinic: { name: 'Demo', invented: true },
  procedures: [{ site: null, from: null, to: null, conditions: ['fasting'], initials: 'AB' }],
};
const DEMO_ROWS = [reading('d', '2025-01-06'), reading('d', '2025-06-06')];

const workspaceOn = (storage: ClinicStorage): Workspace =>
  createWorkspace({
    engine: () => Promise.resolve(engine),
    storage,
    demo: () => Promise.resolve({ visits: exportBytes(DEMO_ROWS), settings: DEMO_SETTINGS }),
    today: () => TODAY,
  });

const value = <T>(result: Result<T, AppError>): T => {
  if (!result.ok) throw new Error(`${result.error.code}: ${result.error.message}`);
  return result.value;
};
const codeOf = (result: Result<unknown, AppError>): string | undefined => (result.ok ? undefined : result.error.code);

const file = (name: string, rows: readonly Cells[]): GivenFile => ({ name, bytes: exportBytes(rows) });
const FIRST = file('first.csv', [reading('a', '2025-01-06'), reading('a', '2025-06-06')]);
const SECOND = file('second.csv', [reading('a', '2025-08-06'), reading('b', '2025-08-06')]);

const importInto = async (workspace: Workspace, files: readonly GivenFile[], settings: Settings = SETTINGS) =>
  workspace.commit(value(await workspace.plan(files, settings)), settings);

const clients = async (session: Session): Promise<readonly string[]> =>
  (await session.cohort.clients(filterFor('weight'))).map((row) => row.client);

let storage: ClinicStorage;
let workspace: Workspace;
beforeEach(() => {
  storage = memoryStorage();
  workspace = workspaceOn(storage);
});

describe('opening and importing', () => {
  test('the first start opens the demo clinic and keeps nothing', async () => {
    const session = value(await workspace.open());
    expect(session.clinic).toEqual({ id: 'demo', name: 'Demo', invented: true });
    expect(await clients(session)).toEqual(['d']);
    expect([await workspace.hasOwn(), await storage.readManifest()]).toEqual([false, undefined]);
  });

  test('a plan changes nothing, a commit keeps the clinic, a new start shows it', async () => {
    const demo = value(await workspace.open());
    const plan = value(await workspace.plan([FIRST], SETTINGS));
    expect([plan.rows, plan.accepted]).toEqual([2, 2]);
    expect([await clients(demo), await workspace.hasOwn()]).toEqual([['d'], false]);
    const session = value(await workspace.commit(plan, SETTINGS));
    expect(session).toMatchObject({ clinic: { id: 'own', name: 'North Clinic' }, waiting: 0 });
    const again = value(await workspaceOn(storage).open());
    expect(again.clinic.id).toBe('own');
    expect(again.dataVersion).toBe(session.dataVersion);
    expect(again.files).toEqual([{ name: 'first.csv', importedOn: TODAY, rows: 2 }]);
    expect(await clients(again)).toEqual(['a']);
  });

  test('a second file joins the first; the same file twice brings no new rows', async () => {
    value(await importInto(workspace, [FIRST]));
    const both = value(await importInto(workspace, [SECOND]));
    expect([both.cohort.summary.readings, await clients(both)]).toEqual([4, ['a', 'b']]);
    const plan = value(await workspace.plan([FIRST], SETTINGS));
    expect([plan.accepted, plan.duplicates]).toEqual([4, 2]);
    const same = value(await workspace.commit(plan, SETTINGS));
    expect([same.cohort.summary.readings, same.files.length]).toEqual([4, 2]);
    expect(same.dataVersion).toBe(both.dataVersion);
  });

  test('data and settings each change the data version', async () => {
    const one = value(await importInto(workspace, [FIRST]));
    const two = value(await importInto(workspace, [SECOND]));
    const three = value(await workspace.saveSettings({ ...SETTINGS, level: 80 }));
    expect(new Set([one.dataVersion, two.dataVersion, three.dataVersion]).size).toBe(3);
  });

  test('no file, and files that are not at hand any more, are said', async () => {
    expect(codeOf(await workspace.plan([], SETTINGS))).toBe('no_files');
    const plan = value(await workspace.plan([FIRST], SETTINGS));
    expect(codeOf(await workspaceOn(storage).commit(plan, SETTINGS))).toBe('plan_is_stale');
  });
});

describe('what goes wrong', () => {
  test('a damaged file is reported and the demo still opens', async () => {
    value(await importInto(workspace, [FIRST]));
    const damaged = workspaceOn({ ...storage, getBlob: () => Promise.resolve(undefined) });
    expect(codeOf(await damaged.open())).toBe('file_missing');
    expect(value(await damaged.switchTo('demo')).clinic.id).toBe('demo');
  });

  test('another tab’s change is not overwritten: refused, and nothing changed', async () => {
    const session = value(await importInto(workspace, [FIRST]));
    const late = workspaceOn({ ...storage, swapManifest: () => Promise.resolve(false) });
    const before = await storage.readManifest();
    const plan = value(await late.plan([SECOND], SETTINGS));
    expect(codeOf(await late.commit(plan, SETTINGS))).toBe('other_tab');
    expect(codeOf(await late.saveSettings({ ...SETTINGS, level: 80 }))).toBe('other_tab');
    expect(await storage.readManifest()).toEqual(before);
    expect(await clients(session)).toEqual(['a']);
  });

  test('of two tabs that read the same revision the second is refused', async () => {
    value(await importInto(workspace, [FIRST]));
    let slow: () => void = () => undefined;
    const waiting = new Promise<void>((resolve) => {
      slow = resolve;
    });
    const late = workspaceOn({
      ...storage,
      swapManifest: async (revision, manifest) => {
        await waiting;
        return storage.swapManifest(revision, manifest);
      },
    });
    const saved = late.saveSettings({ ...SETTINGS, level: 80 });
    await storage.readManifest();
    const kept = (await storage.readManifest()) as { readonly revision: number };
    await storage.swapManifest(kept.revision, { ...kept, revision: kept.revision + 1 });
    slow();
    expect(codeOf(await saved)).toBe('other_tab');
  });

  test('a commit whose files hold nothing usable leaves the open clinic working', async () => {
    const session = value(await importInto(workspace, [FIRST]));
    const other = workspaceOn(memoryStorage());
    const refused = file('refused.csv', [reading('x', '2025-01-06', { r_ohm: '0' })]);
    expect(codeOf(await importInto(other, [refused]))).toBe('nothing_usable');
    const full = workspaceOn({ ...storage, putBlob: () => Promise.reject(new Error('full')) });
    expect(codeOf(await importInto(full, [SECOND]))).toBe('not_kept');
    value(await workspace.open());
    expect(await clients(session)).toEqual(['a']);
    expect((await latestOf(session.cohort, 'a', 'weight')).to).toBe('2025-06-06');
  });

  test('a manifest of a newer app, and one that cannot be read, are left alone', async () => {
    const newer = { version: 2, revision: 7, more: true };
    await storage.swapManifest(0, newer);
    expect(codeOf(await workspace.open())).toBe('newer_manifest');
    expect(codeOf(await workspace.saveSettings(SETTINGS))).toBe('newer_manifest');
    expect(codeOf(await workspace.plan([FIRST], SETTINGS))).toBe('newer_manifest');
    expect(await storage.readManifest()).toEqual(newer);
    const broken = memoryStorage();
    await broken.swapManifest(0, { revision: 1 });
    expect(codeOf(await workspaceOn(broken).open())).toBe('unreadable_manifest');
  });

  test('a demo that cannot be fetched is said', async () => {
    const bare = createWorkspace({
      engine: () => Promise.resolve(engine),
      storage,
      demo: () => Promise.reject(new Error('404')),
      today: () => TODAY,
    });
    expect(codeOf(await bare.open())).toBe('demo_missing');
  });
});

describe('settings and switching', () => {
  test('saving a procedure grades the pairs anew, and a new start knows it', async () => {
    const rows = [
      reading('a', '2025-01-06'),
      without(reading('a', '2025-06-06'), 'fasted_h'),
      reading('b', '2025-06-06'),
    ];
    const session = value(await importInto(workspace, [file('first.csv', rows)]));
    expect((await latestOf(session.cohort, 'a', 'ffm')).comparable).toBe('caution');
    const procedure = { site: 'North', from: null, to: null, conditions: ['fasting' as const], initials: 'AB' };
    const saved = value(await workspace.saveSettings({ ...SETTINGS, procedures: [procedure] }));
    expect((await latestOf(saved.cohort, 'a', 'ffm')).comparable).toBe('by-procedure');
    const again = value(await workspaceOn(storage).open());
    expect(again.settings.procedures).toEqual([procedure]);
    expect((await latestOf(again.cohort, 'a', 'ffm')).comparable).toBe('by-procedure');
  });

  test('switching goes to the demo and back, and the own clinic stays as it was', async () => {
    const own = value(await importInto(workspace, [FIRST]));
    expect(value(await workspace.switchTo('demo')).clinic.id).toBe('demo');
    expect(value(await workspaceOn(storage).open()).clinic.id).toBe('demo');
    expect(await workspace.hasOwn()).toBe(true);
    const back = value(await workspace.switchTo('own'));
    expect([back.clinic.id, back.dataVersion]).toEqual(['own', own.dataVersion]);
  });

  test('without an own clinic switching to it opens the demo', async () => {
    expect(value(await workspace.switchTo('own')).clinic.id).toBe('demo');
  });

  test('the demo without conditions knows none, still holds pairs, and takes a procedure', async () => {
    const bare = value(await workspace.openDemoWithoutConditions());
    expect(bare.cohort.summary).toMatchObject({ conditionsKnown: false, pairsBySetting: { strict: 1 } });
    expect((await latestOf(bare.cohort, 'd', 'ffm')).comparable).toBe('comparable');
    const procedure = { site: null, from: null, to: null, conditions: ['fasting' as const], initials: 'AB' };
    const declared = value(await workspace.saveSettings({ ...bare.settings, procedures: [procedure] }));
    expect(declared.cohort.summary.conditionsKnown).toBe(true);
    expect((await latestOf(declared.cohort, 'd', 'ffm')).comparable).toBe('by-procedure');
    const full = value(await workspace.switchTo('demo'));
    expect((await latestOf(full.cohort, 'd', 'ffm')).comparable).toBe('comparable');
  });
});
