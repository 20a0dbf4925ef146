import type { Settings } from '../cohort/settings';

/** All ids in the files that stand for one client: its own, and those that were answered to be the same person. */
export const clientIds = (settings: Settings, client: string): ReadonlySet<string> =>
  new Set([
    client,
    ...settings.answers.flatMap((answer) =>
      answer.kind === 'same-client' && answer.client === client ? answer.ids : [],
    ),
  ]);
