import { createCohort } from '../cohort/create-cohort';
import type { Settings } from '../cohort/settings';
import { addDays, type IsoDate } from '../core/iso-date';
import type { Engine } from '../engine/types';
import { openGiven } from './open-given';
import type { GivenFile } from './workspace';

/** Talk to as it would have stood on one day. */
export interface ReplayDay {
  readonly asOf: IsoDate;
  /** Rules by client, in the list's order. */
  readonly talkTo: Readonly<Record<string, readonly string[]>>;
  readonly measureAgain: number;
  readonly checked: number;
}

/**
 * Talk to as of each of these days: the files are read once, then looked at as if the later visits had not come yet. With
 * the settings' own level and comparability.
 */
export async function* replayContacts(
  engine: Engine,
  files: readonly GivenFile[],
  settings: Settings,
  { days, today }: { readonly days: readonly IsoDate[]; readonly today: IsoDate },
): AsyncGenerator<ReplayDay> {
  const { cohort } = await openGiven(engine, files, settings, { today, mappings: [], acceptQuestions: false });
  if (cohort === undefined) return;
  const { level, comparable = 'strict' } = settings;
  for (const asOf of days) {
    const then = await createCohort(engine, settings, asOf);
    const lists = await then.contacts({ measure: then.lean, level, comparable });
    yield {
      asOf,
      talkTo: Object.fromEntries(lists.talkTo.map(({ client, reasons }) => [client, reasons.map(({ rule }) => rule)])),
      measureAgain: lists.measureAgain.length,
      checked: lists.checked,
    };
  }
}

/** The last day and the same weekday of so many weeks before it, earliest first. */
export const weeklyUntil = (last: IsoDate, weeks: number): readonly IsoDate[] =>
  Array.from({ length: weeks + 1 }, (_, index) => addDays(last, -7 * (weeks - index)));
