import { parseIsoDate, type IsoDate } from '../../lib/core/iso-date';
import { openBrowserEngine } from '../../lib/engine/browser';
import type { Engine } from '../../lib/engine/types';
import { browserStorage } from '../../lib/storage/browser';
import { createWorkspace } from '../../lib/workspace/create-workspace';
import type { Workspace } from '../../lib/workspace/session';

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

const load = async (path: string): Promise<Response> => {
  const response = await fetch(path);
  if (!response.ok) throw new Error(`${path} answered ${String(response.status)}`);
  return response;
};

/** The calendar day on this machine. */
const localToday = (): IsoDate => {
  const now = new Date();
  const two = (value: number): string => String(value).padStart(2, '0');
  const text = `${String(now.getFullYear())}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  const date = parseIsoDate(text);
  if (date === undefined) throw new Error('the clock gives no date');
  return date;
};

/** The workspace of this browser profile. */
export const createBrowserWorkspace = (): Workspace =>
  createWorkspace({
    engine: sharedEngine,
    storage: browserStorage(),
    demo: async () => {
      const [visits, settings] = await Promise.all([load('/demo/visits.csv'), load('/demo/settings.json')]);
      return { visits: new Uint8Array(await visits.arrayBuffer()), settings: (await settings.json()) as unknown };
    },
    today: localToday,
  });
