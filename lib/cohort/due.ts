import { addDays, type IsoDate } from '../core/iso-date';
import type { Row } from '../engine/types';
import { DEFAULT_RULES } from '../measures/default-rules';
import type { CohortModel } from './model';
import type { GuardCode } from '../measures/guard';
import type { Ask } from './question';
import { guardsIn } from './reasons';
import { ruleBit } from './rules-in-force';
import type { Settings } from './settings';
import { dueQuery } from './sql/due-sql';
import type { DueLists, DueRow, LastVisit, NotSeenRow, TwiceReason, WayMeasured } from './types/due-lists';
import type { CohortFilter } from './types/filter';

/** A change whose size lies within this factor of its threshold, on either side, is near it. */
const NEAR_THRESHOLD = 1.15;
const WEEK = 7;

/** The standard conditions of a visit; a menstrual phase is never printed. */
const CONDITIONS = DEFAULT_RULES.filter(({ test, id }) => test.kind !== 'differs' && id !== 'menstrual_phase');

/** Those of them that a clinic's procedure can stand for: where one was not recorded, it can be asked. */
const ASKED = CONDITIONS.filter(({ procedure }) => procedure);

const isPrinted = (code: GuardCode): boolean => code !== 'pregnancy';

const text = (row: Row, name: string): string | null =>
  row[name] === null || row[name] === undefined || row[name] === '' ? null : String(row[name]);
const date = (row: Row, name: string): IsoDate | null => text(row, name) as IsoDate | null;
const number = (row: Row, name: string): number | null =>
  row[name] === null || row[name] === undefined ? null : Number(row[name]);

const lastVisit = (row: Row): LastVisit | null => {
  const on = date(row, 'last_date');
  if (on === null) return null;
  const [broken, unknown] = [number(row, 'broken') ?? 0, number(row, 'unknown') ?? 0];
  return {
    date: on,
    site: text(row, 'site'),
    device: text(row, 'device'),
    position: text(row, 'electrode_position'),
    posture: text(row, 'posture'),
    side: text(row, 'side'),
    notMet: CONDITIONS.filter(({ id }) => (broken & ruleBit(id)) !== 0).map(({ id }) => id),
    unknown: ASKED.filter(({ id }) => (broken & ruleBit(id)) === 0 && (unknown & ruleBit(id)) !== 0).map(
      ({ id }) => id,
    ),
    guards: guardsIn(number(row, 'guards') ?? 0).filter(isPrinted),
    ...(row['on_dialysis'] === 1 ? { hoursSinceDialysis: number(row, 'hours_since_dialysis') } : {}),
  };
};

/** How the baseline was taken, where the last visit is known to have been taken in another way. */
const otherBaseline = (row: Row, last: LastVisit | null): WayMeasured | null => {
  if (last === null || row['baseline_no'] === null) return null;
  const baseline: WayMeasured = {
    device: text(row, 'baseline_device'),
    position: text(row, 'baseline_position'),
    posture: text(row, 'baseline_posture'),
    side: text(row, 'baseline_side'),
  };
  const differs = (['device', 'position', 'posture', 'side'] as const).some(
    (part) => baseline[part] !== null && last[part] !== null && baseline[part] !== last[part],
  );
  return differs ? baseline : null;
};

const twiceReason = (row: Row): TwiceReason | null => {
  const [change, lsc, result] = [number(row, 'change'), number(row, 'lsc'), number(row, 'result_code')];
  if (change === null || lsc === null || lsc === 0 || result === null || Math.abs(result) > 1) return null;
  const [perKg, weight] = [number(row, 'per_kg') ?? 0, number(row, 'weight_change')];
  if (perKg !== 0 && weight === null) return null;
  const size = Math.abs(change - perKg * (weight ?? 0) - (number(row, 'over_time') ?? 0)) / lsc;
  if (size > NEAR_THRESHOLD) return 'unexpected';
  return size * NEAR_THRESHOLD >= 1 ? 'near-threshold' : null;
};

const person = (row: Row) => ({
  clientKey: Number(row['client_key']),
  client: String(row['client_id']),
  familyName: text(row, 'family_name'),
  givenName: text(row, 'given_name'),
  program: String(row['program']),
});

const dueRow = (row: Row, monday: IsoDate): DueRow => {
  const due = String(row['due_date']) as IsoDate;
  const missed = String(row['missed_from']) as IsoDate;
  const last = lastVisit(row);
  return {
    ...person(row),
    week: Number(row['week']),
    due,
    when: due < monday ? 'overdue' : due < addDays(monday, WEEK) ? 'this-week' : 'next-week',
    windowTo: date(row, 'window_to'),
    missedSince: missed < due ? missed : null,
    last,
    baseline: otherBaseline(row, last),
    seriesHeightCm: number(row, 'series_height_cm'),
    implant: row['implant'] === 1,
    twice: twiceReason(row),
  };
};

const notSeenRow = (row: Row): NotSeenRow => ({
  ...person(row),
  last: date(row, 'last_date'),
  missedSince: String(row['missed_from']) as IsoDate,
});

/**
 * Who of the active programs is to be invited: a planned visit or review falls due this week or next, or is overdue;
 * and who is not seen since: a planned time was missed twelve weeks ago or longer and no visit came after it.
 */
export const dueListsOf = async (
  ask: Ask,
  filter: CohortFilter,
  context: {
    readonly asOf: IsoDate;
    readonly monday: IsoDate;
    readonly model: CohortModel;
    readonly settings: Settings;
  },
  signal?: AbortSignal,
): Promise<DueLists> => {
  const { asOf, monday, model, settings } = context;
  const rows = await ask(dueQuery(model), filter, { signal });
  const never = '';
  return {
    asOf,
    monday,
    planned: settings.programs.some(({ plannedVisitWeeks, reviews }) => plannedVisitWeeks.length + reviews.length > 0),
    invite: rows.filter((row) => row['gone'] === 0).map((row) => dueRow(row, monday)),
    notSeen: rows
      .filter((row) => row['gone'] === 1)
      .map(notSeenRow)
      .sort((a, b) => ((a.last ?? never) < (b.last ?? never) ? -1 : (a.last ?? never) > (b.last ?? never) ? 1 : 0)),
  };
};
