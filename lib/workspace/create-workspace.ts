import { settingsSchema, type Settings } from '../cohort/settings';
import type { AppError } from '../core/app-error';
import type { IsoDate } from '../core/iso-date';
import { workspaceErrors as errors } from '../core/messages/en/workspace-errors';
import { err, ok, type Result } from '../core/result';
import { createSerial } from '../core/serial';
import { sha256 } from '../core/sha256';
import type { Engine } from '../engine/types';
import { CONDITION_COLUMNS } from '../import/columns';
import { judge } from '../import/judge';
import type { ImportPlan } from '../import/plan';
import type { ClinicStorage } from '../storage/clinic-storage';
import { importAnswers } from './import-answers';
import { keptFiles } from './kept-files';
import { EMPTY_MANIFEST, type ImportedFile, type Manifest } from './manifest';
import { readManifest, swapManifest } from './manifest-store';
import { nothingUsable, openFiles } from './open-files';
import type { GivenFile, Session, Workspace } from './session';

/** What a workspace is given by whoever starts it. */
export interface WorkspaceParts {
  readonly engine: () => Promise<Engine>;
  readonly storage: ClinicStorage;
  /** The demo clinic's export and settings, from the site itself. */
  readonly demo: () => Promise<{ readonly visits: Uint8Array; readonly settings: unknown }>;
  readonly today: () => IsoDate;
}

const DEMO_TODAY = '2026-01-02' as IsoDate;

const CONDITIONS_HIDDEN: ReadonlySet<string> = new Set([...CONDITION_COLUMNS, 'menstrual_phase']);

interface Source {
  readonly files: readonly GivenFile[];
  readonly settings: Settings;
  readonly today: IsoDate;
  readonly ignoredColumns: ReadonlySet<string>;
}

const versionOf = async (plan: ImportPlan, settings: Settings): Promise<string> => {
  const text = JSON.stringify([plan.files.map((file) => file.sha256), settings]);
  return (await sha256(new TextEncoder().encode(text))).slice(0, 6);
};

/** Opens, imports, changes and switches clinics. The database is a cache: rebuilt from the kept files each time. */
export const createWorkspace = (parts: WorkspaceParts): Workspace => {
  const { storage } = parts;
  let given: readonly GivenFile[] = [];

  const demoSource = async (manifest: Manifest): Promise<Result<Source, AppError>> => {
    const demo = await parts.demo().catch(() => undefined);
    if (demo === undefined) return err(errors.demoMissing);
    const stored = manifest.demo.settings ?? settingsSchema.parse(demo.settings);
    const settings =
      manifest.demo.withoutConditions && manifest.demo.settings === undefined ? { ...stored, procedures: [] } : stored;
    return ok({
      files: [{ name: 'visits.csv', bytes: demo.visits }],
      settings,
      today: DEMO_TODAY,
      ignoredColumns: manifest.demo.withoutConditions ? CONDITIONS_HIDDEN : new Set<string>(),
    });
  };

  const ownSource = async (own: NonNullable<Manifest['own']>): Promise<Result<Source, AppError>> => {
    const files = await keptFiles(storage, own.files);
    if (!files.ok) return files;
    const today =
      own.files
        .map((file) => file.importedOn)
        .sort()
        .at(-1) ?? parts.today();
    return ok({ files: files.value, settings: own.settings, today: today as IsoDate, ignoredColumns: new Set() });
  };

  const sourceOf = (manifest: Manifest): Promise<Result<Source, AppError>> =>
    manifest.open === 'own' && manifest.own !== undefined ? ownSource(manifest.own) : demoSource(manifest);

  const build = async (manifest: Manifest): Promise<Result<Session, AppError>> => {
    const source = await sourceOf(manifest);
    if (!source.ok) return source;
    const { files, settings, today, ignoredColumns } = source.value;
    const opened = await openFiles(await parts.engine(), files, settings, { today, ignoredColumns });
    if (!opened.ok) return opened;
    const { plan, cohort } = opened.value;
    if (cohort === undefined) return nothingUsable();
    const isOwn = manifest.open === 'own' && manifest.own !== undefined;
    const importedOn = new Map(manifest.own?.files.map((file) => [file.sha256, file.importedOn]));
    return ok({
      clinic: { id: isOwn ? 'own' : 'demo', name: settings.clinic.name, invented: settings.clinic.invented },
      settings,
      dataVersion: await versionOf(plan, settings),
      files: plan.files.map((file) => ({
        name: file.name,
        importedOn: (isOwn ? importedOn.get(file.sha256) : undefined) ?? today,
        rows: file.rows,
      })),
      waiting: plan.held,
      cohort,
      plan,
    });
  };

  /** Builds what the next manifest describes and keeps it only when that worked. */
  const change = async (make: (manifest: Manifest) => Manifest): Promise<Result<Session, AppError>> => {
    const kept = await readManifest(storage);
    if (!kept.ok) return kept;
    const next = make(kept.value);
    const session = await build(next);
    const swapped = session.ok ? await swapManifest(storage, kept.value, next) : session;
    if (session.ok && swapped.ok) return session;
    await build(kept.value);
    return swapped.ok ? session : swapped;
  };

  const workspace: Workspace = {
    open: async () => {
      const manifest = await readManifest(storage);
      return manifest.ok ? build(manifest.value) : manifest;
    },
    plan: async (files, settings) => {
      if (files.length === 0) return err(errors.noFiles);
      given = files;
      const manifest = await readManifest(storage);
      if (!manifest.ok) return manifest;
      const earlier = await keptFiles(storage, manifest.value.own?.files ?? []);
      if (!earlier.ok) return earlier;
      return judge(await parts.engine(), [...earlier.value, ...files], {
        today: parts.today(),
        answers: importAnswers(settings),
        prefix: 'plan_',
      });
    },
    commit: async (plan, settings) => {
      const planned = new Map(plan.files.map((file) => [file.sha256, file]));
      const files: ImportedFile[] = [];
      for (const file of given) {
        const name = await sha256(file.bytes);
        const known = planned.get(name);
        if (known === undefined) continue;
        try {
          await storage.putBlob(name, file.bytes);
        } catch {
          return err(errors.notKept);
        }
        files.push({ name: file.name, sha256: name, bytes: known.bytes, rows: known.rows, importedOn: plan.today });
      }
      if (files.length === 0) return err(errors.planIsStale);
      return change((manifest) => {
        const earlier = manifest.own?.files ?? [];
        const fresh = files.filter((file) => !earlier.some((other) => other.sha256 === file.sha256));
        return { ...manifest, open: 'own', own: { settings, files: [...earlier, ...fresh] } };
      });
    },
    saveSettings: (settings) =>
      change((manifest) =>
        manifest.open === 'own' && manifest.own !== undefined
          ? { ...manifest, own: { ...manifest.own, settings } }
          : { ...manifest, demo: { ...manifest.demo, settings } },
      ),
    switchTo: (clinic) => change((manifest) => ({ ...manifest, open: clinic, demo: { ...EMPTY_MANIFEST.demo } })),
    hasOwn: async () => {
      const manifest = await readManifest(storage);
      return manifest.ok && manifest.value.own !== undefined;
    },
    openDemoWithoutConditions: () =>
      change((manifest) => ({ ...manifest, open: 'demo', demo: { withoutConditions: true } })),
  };

  // Every step fills the same tables: two at once would read each other's half-built ones.
  const serial = createSerial();
  return {
    open: () => serial(() => workspace.open()),
    plan: (files, settings) => serial(() => workspace.plan(files, settings)),
    commit: (plan, settings) => serial(() => workspace.commit(plan, settings)),
    saveSettings: (settings) => serial(() => workspace.saveSettings(settings)),
    switchTo: (clinic) => serial(() => workspace.switchTo(clinic)),
    hasOwn: () => workspace.hasOwn(),
    openDemoWithoutConditions: () => serial(() => workspace.openDemoWithoutConditions()),
  };
};
