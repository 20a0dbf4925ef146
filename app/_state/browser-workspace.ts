import { openBrowserEngine } from '../../lib/engine/browser';
import type { Engine } from '../../lib/engine/types';
import { browserTabs } from '../../lib/storage/browser/browser-tabs';
import { createWorkspace } from '../../lib/workspace/create-workspace';
import type { Workspace } from '../../lib/workspace/workspace';
import { keptClinics, signsAtStart } from './browser-kept';
import { localToday } from './local-today';

const ENGINE_FOLDER = '/duckdb-1.32.0/';

let engine: Promise<Engine> | undefined;

/** One engine for the page; a failed start is forgotten, so that the next attempt starts anew. */
const sharedEngine = (): Promise<Engine> => {
  engine ??= openBrowserEngine(new URL(ENGINE_FOLDER, location.origin).href).catch((error: unknown) => {
    engine = undefined;
    throw error;
  });
  return engine;
};

/** Ends the engine of the page; the next question starts another. One that died may not answer its own end. */
const forgetEngine = async (): Promise<void> => {
  const ending = engine;
  engine = undefined;
  await ending?.then((started) => started.close()).catch(() => undefined);
};

const load = async (path: string): Promise<Response> => {
  const response = await fetch(path);
  if (!response.ok) throw new Error(`${path} answered ${String(response.status)}`);
  return response;
};

const now = (): string => new Date().toISOString();

const ID_BYTES = 12;

const randomId = (): string =>
  [...crypto.getRandomValues(new Uint8Array(ID_BYTES))].map((byte) => byte.toString(16).padStart(2, '0')).join('');

/** The workspace of this browser profile, once what an earlier visit left was looked at. */
export const createBrowserWorkspace = async (): Promise<Workspace> => {
  // It takes a second or two: it starts while the kept clinics are looked at. Whoever needs it hears of a failed start.
  void sharedEngine().catch(() => undefined);
  await signsAtStart;
  return createWorkspace({
    engine: sharedEngine,
    forgetEngine,
    store: keptClinics,
    tabs: browserTabs(),
    demo: async () => {
      const [visits, settings] = await Promise.all([load('/demo/visits.csv'), load('/demo/settings.json')]);
      return { visits: await visits.blob(), settings: (await settings.json()) as unknown };
    },
    today: localToday,
    now,
    randomId,
  });
};
