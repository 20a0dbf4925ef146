import { mondayOf, type IsoDate } from '../core/iso-date';
import type { Cell, Engine } from '../engine/types';
import { deviceErasOf } from './device-eras';
import { enrolmentKey, expectedChangeRows, keptEnrolmentRows, plannedReviewRows, plannedTimeRows } from './plan-rows';
import { ruleBit } from './rules-in-force';
import type { Answer, Settings } from './settings';
import { settingsTables } from './sql/settings-sql';

/** Sexes and birth dates that were answered, one row a client. */
const answerRows = (answers: readonly Answer[]): readonly (readonly Cell[])[] => {
  const answered = new Map<string, { sex: string | null; birth: string | null }>();
  for (const answer of answers) {
    if (answer.kind !== 'sex-for-equations' && answer.kind !== 'birth-date') continue;
    const known = answered.get(answer.client) ?? { sex: null, birth: null };
    answered.set(
      answer.client,
      answer.kind === 'birth-date' ? { ...known, birth: answer.date } : { ...known, sex: answer.sex },
    );
  }
  return [...answered].map(([client, { sex, birth }]) => [client, sex, birth]);
};

/** Baselines that a person chose, one row an enrolment: the last word. */
const chosenBaselineRows = (answers: readonly Answer[]): readonly (readonly Cell[])[] => {
  const chosen = new Map<string, readonly Cell[]>();
  for (const answer of answers) {
    if (answer.kind !== 'baseline') continue;
    const { client, program, start, visitDate } = answer;
    chosen.set(enrolmentKey({ client, program, start }), [client, program, start, visitDate]);
  }
  return [...chosen.values()];
};

/** Makes the tables that carry the settings' values and fills them. */
export const fillSettings = async (engine: Engine, settings: Settings, asOf: IsoDate): Promise<void> => {
  const { programs, procedures, checkUpsProgram } = settings;
  for (const statement of settingsTables) await engine.run(statement);
  await engine.insert('params', ['as_of', 'monday', 'check_ups'], [[asOf, mondayOf(asOf), checkUpsProgram]]);
  await engine.insert(
    'procedures',
    ['site', 'from_date', 'to_date', 'mask'],
    procedures.map(({ site, from, to, conditions }) => [
      site,
      from,
      to,
      conditions.reduce((mask, id) => mask | ruleBit(id), 0),
    ]),
  );
  await engine.insert('client_answers', ['client_id', 'sex', 'birth_date'], answerRows(settings.answers));
  await engine.insert(
    'chosen_baselines',
    ['client_id', 'program', 'program_start', 'visit_date'],
    chosenBaselineRows(settings.answers),
  );
  await engine.insert(
    'expected_change',
    ['program', 'measure', 'from_day', 'to_day', 'per_kg', 'per_month'],
    expectedChangeRows(programs),
  );
  await engine.insert(
    'planned_reviews',
    ['program', 'review_week', 'window_weeks', 'target_day', 'window_days'],
    plannedReviewRows(programs),
  );
  await engine.insert('planned_times', ['program', 'week', 'due_day', 'window_days'], plannedTimeRows(programs));
  await engine.insert(
    'kept_enrolments',
    ['client_id', 'program', 'program_start', 'program_end', 'end_reason'],
    keptEnrolmentRows(settings),
  );
  await engine.insert(
    'device_eras',
    ['device', 'from_date', 'to_date', 'label'],
    deviceErasOf(settings.devices.steps).map(({ device, from, to, label }) => [device, from, to, label]),
  );
};
