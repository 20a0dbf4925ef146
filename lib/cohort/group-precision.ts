import type { Engine, Row } from '../engine/types';
import type { Measure } from '../measures/measure';
import { CONVENTIONAL_DF } from '../stats/threshold-factor';
import type { CohortModel } from './model';
import { precisionRows, type PrecisionInput } from './precision';
import type { Settings } from './settings';
import { logSumsQuery } from './sql/log-sums-sql';
import { betweenSumsQuery, withinSumsQuery } from './sql/precision-sql';
import { visitGroupsStatement } from './sql/visit-groups-sql';
import type { Level } from './types/filter';
import type { CohortErrors, PrecisionRow } from './types/precision-row';

/** The error study's sums of every group that has visits, by the group's name. */
export type GroupInputs = ReadonlyMap<string, PrecisionInput>;

const NOTHING: Row = {};

const byGroup = (rows: readonly Row[]): ReadonlyMap<string, Row> =>
  new Map(rows.map((row) => [String(row['group_name']), row]));

const hasOwn = (row: Row, name: string): boolean => Number(row[name] ?? 0) >= CONVENTIONAL_DF;

/** The repositioning sums that a group is judged by: its own where they have 30 degrees of freedom, else everyone's. */
const withinOf = (measures: readonly Measure[], own: Row, everyone: Row): Row =>
  Object.fromEntries(
    measures.flatMap(({ id }) => {
      const from = hasOwn(own, `df_${id}`) ? own : everyone;
      return ['ss', 'df', 'people'].map((part) => [`${part}_${id}`, from[`${part}_${id}`] ?? null] as const);
    }),
  );

const logsOf = (own: Row, everyone: Row): Row => {
  const from = hasOwn(own, 'within_df') ? own : everyone;
  const within = ['within_ss', 'within_df', 'within_people'].map((name) => [name, from[name] ?? null] as const);
  return { ...own, ...Object.fromEntries(within) };
};

/** Names the groups of the visits (`visit_groups`) and reads the sums of each. */
export const readGroupInputs = async (
  engine: Engine,
  model: CohortModel,
  everyone: PrecisionInput,
): Promise<GroupInputs> => {
  const { errorFrom } = model.study;
  if (errorFrom === 'everyone') return new Map();
  await engine.run(visitGroupsStatement(errorFrom));
  const within = byGroup(await engine.query(withinSumsQuery(model, 'groups')));
  const between = byGroup(await engine.query(betweenSumsQuery(model, 'groups')));
  const logs = new Map<string, ReadonlyMap<string, Row>>();
  for (const id of everyone.logs.keys()) {
    const { measure } = model.study.logForm.find((one) => one.measure === id) ?? {};
    if (measure === undefined) continue;
    logs.set(measure, byGroup(await engine.query(logSumsQuery(model.catalogue.measure(measure), model, 'groups'))));
  }
  return new Map(
    [...between].map(([name, row]) => [
      name,
      {
        within: withinOf(model.catalogue.all, within.get(name) ?? NOTHING, everyone.within),
        between: row,
        decimals: everyone.decimals,
        logs: new Map(
          [...everyone.logs].map(([id, all]) => [id, logsOf(logs.get(id)?.get(name) ?? NOTHING, all)] as const),
        ),
      },
    ]),
  );
};

/** Whether a group's own study is enough: 30 degrees of freedom between days of 15 people, in everyone's form. */
const isOwn = (row: PrecisionRow, everyone: PrecisionRow | undefined): boolean =>
  row.tier === 1 && !row.provisional && row.form === everyone?.form;

/** The errors that groups have of their own at one level: for each value and group with enough of it, by group. */
export const groupPrecisionRows = (
  measures: readonly Measure[],
  inputs: GroupInputs,
  everyone: readonly PrecisionRow[],
  settings: Settings,
  level: Level,
): readonly PrecisionRow[] =>
  [...inputs].flatMap(([group, input]) =>
    precisionRows(measures, input, settings, level)
      .filter((row) =>
        isOwn(
          row,
          everyone.find(({ measure }) => measure === row.measure),
        ),
      )
      .map((row) => ({ ...row, group })),
  );

/** The error that a pair of a group is judged by: the group's own, else everyone's. */
export const precisionFor = (
  rows: CohortErrors,
  measure: PrecisionRow['measure'],
  group: string | null,
): PrecisionRow | undefined =>
  rows.groups.find((row) => row.measure === measure && row.group === group) ??
  rows.everyone.find((row) => row.measure === measure);
