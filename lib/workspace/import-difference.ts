import type { Cohort } from '../cohort/types/cohort';
import type { CohortFilter } from '../cohort/types/filter';
import type { Settings } from '../cohort/settings';
import type { ImportDifference } from './workspace';

/** What a clinic showed at one time, as far as an import can change it. */
export interface Standing {
  readonly visits: number;
  readonly clients: ReadonlySet<string>;
  /** The lean value's result from baseline to latest, by client and program. */
  readonly results: ReadonlyMap<string, { readonly client: string; readonly result: string }>;
  readonly talkTo: readonly { readonly clientKey: number; readonly client: string }[];
}

/** How a clinic's lists stand under its own settings, everybody taken together. */
export const standingOf = async (cohort: Cohort, settings: Settings, signal?: AbortSignal): Promise<Standing> => {
  const filter: CohortFilter = {
    measure: cohort.lean,
    level: settings.level,
    comparable: settings.comparable ?? cohort.summary.openingSetting,
  };
  const clients = await cohort.clients(filter, signal);
  const changes = await cohort.changes(filter, 'baseline-latest', signal);
  const { talkTo } = await cohort.contacts(filter, signal);
  return {
    visits: cohort.summary.visits,
    clients: new Set(clients.map((row) => row.client)),
    results: new Map(
      changes.map(({ client, program, result, guard }) => [
        JSON.stringify([client, program]),
        { client, result: result ?? guard },
      ]),
    ),
    talkTo: talkTo.map(({ clientKey, client }) => ({ clientKey, client })),
  };
};

/**
 * What changed from one standing to the next. A changed result is one of a client and program that had one before; a
 * first result is no change.
 */
export const importDifference = (before: Standing, after: Standing): ImportDifference => {
  const changed = [...after.results].filter(([key, { result }]) => {
    const earlier = before.results.get(key);
    return earlier !== undefined && earlier.result !== result;
  });
  const listed = new Set(before.talkTo.map(({ client }) => client));
  return {
    visits: after.visits - before.visits,
    newClients: [...after.clients].filter((client) => !before.clients.has(client)).length,
    changedResults: new Set(changed.map(([, { client }]) => client)).size,
    toTalkTo: after.talkTo.length,
    newToTalkTo: after.talkTo.filter(({ client }) => !listed.has(client)),
  };
};
