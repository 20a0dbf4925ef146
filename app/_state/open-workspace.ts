import type { Workspace } from '../../lib/workspace/workspace';

let started: Promise<Workspace> | undefined;

/**
 * The one workspace of this page, started at the first call. One module-level promise: React's strict mode mounts twice
 * and must not start two engines. A failed start is forgotten, so that another try begins anew.
 */
export const openWorkspace = (): Promise<Workspace> => {
  started ??= import('./browser-workspace')
    .then(({ createBrowserWorkspace }) => createBrowserWorkspace())
    .catch((reason: unknown) => {
      started = undefined;
      throw reason;
    });
  return started;
};
