import type { Cohort } from '../cohort/types/cohort';
import type { CoverageRow, SettingRow } from '../cohort/types/comparability';
import type { CohortFilter, Purpose } from '../cohort/types/filter';
import type { ComparabilityRule } from '../measures/comparability-rule';
import { limitOf } from '../measures/own-rules';
import { DEFAULT_RULES } from '../measures/default-rules';

/** A rule as it is in force, beside its default. Limits in hours, or cm for recorded heights. */
const rulePart = (rule: ComparabilityRule) => {
  const before = DEFAULT_RULES.find(({ id }) => id === rule.id) ?? rule;
  return {
    rule: rule.id,
    grade: rule.grade,
    limit: limitOf(rule) ?? null,
    default_grade: before.grade,
    default_limit: limitOf(before) ?? null,
    only_exported: rule.onlyExported === true,
    by_procedure: rule.procedure,
  };
};

const settingPart = (row: SettingRow) => ({
  measure: row.measure,
  purpose: row.purpose,
  setting: row.setting,
  n_pairs: row.nPairs,
  n_comparable: row.nComparable,
  up: row.up,
  down: row.down,
  within: row.within,
  cannot_compare: row.cannotCompare,
  no_threshold: row.noThreshold,
  held: row.held,
  stopped: row.stopped,
});

const coveragePart = (row: CoverageRow) => ({
  group: row.group,
  rule: row.rule,
  readings: row.readings,
  met: row.met,
  not_met: row.notMet,
  by_procedure: row.byProcedure,
  unknown: row.unknown,
  not_recorded: row.notRecorded,
});

/** The document's part on which visits may be compared: rules, settings side by side, completeness of the record. */
export const comparabilityPart = async (
  cohort: Cohort,
  filters: readonly CohortFilter[],
  purposes: readonly Purpose[],
) => {
  const [first] = filters;
  const settings: SettingRow[] = [];
  for (const filter of filters)
    for (const purpose of purposes) settings.push(...(await cohort.comparedSettings(filter, purpose)));
  const coverage = async (by: 'site' | 'operator' | 'month') =>
    first === undefined ? [] : (await cohort.coverage(by, first)).map(coveragePart);
  return {
    opening_setting: cohort.summary.openingSetting,
    by_procedure: cohort.summary.byProcedure,
    rules: cohort.rules.map(rulePart),
    settings: settings.map(settingPart),
    coverage: { site: await coverage('site'), operator: await coverage('operator'), month: await coverage('month') },
  };
};
