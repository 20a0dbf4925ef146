import type { ComparabilityRule } from '../../measures/comparability-rule';
import { ruleBit } from '../rules-in-force';
import type { CoverageBy } from '../types/comparability';

const GROUP: Readonly<Record<CoverageBy, string>> = {
  site: "NULLIF(v.site, '')",
  operator: 'r.operator',
  month: 'CAST(EXTRACT(YEAR FROM v.visit_date) * 100 + EXTRACT(MONTH FROM v.visit_date) AS INTEGER)',
};

const COUNTS: readonly (readonly [name: string, when: (bit: string) => string])[] = [
  ['not_met', (bit) => `v.broken & ${bit} <> 0`],
  ['met', (bit) => `v.recorded & ${bit} <> 0 AND v.broken & ${bit} = 0`],
  ['by_procedure', (bit) => `v.by_procedure & ${bit} <> 0`],
  ['unknown', (bit) => `v.unknown & ${bit} <> 0`],
  ['not_recorded', (bit) => `v.not_recorded & ${bit} <> 0`],
];

/**
 * Readings by state of each rule, one row per site, operator or month (year · 100 + month) in order of its name. Filtered
 * by people and site; a program means the readings of its people.
 */
export const coverageQuery = (rules: readonly ComparabilityRule[], by: CoverageBy): string => {
  const columns = rules.flatMap(({ id }) =>
    COUNTS.map(([name, when]) => `COUNT(*) FILTER (WHERE ${when(String(ruleBit(id)))}) AS ${name}_${id}`),
  );
  return `SELECT ${GROUP[by]} AS group_name, COUNT(*) AS readings,
  ${columns.join(',\n  ')}
FROM reading_values AS v
JOIN readings AS r ON r.reading_key = v.reading_key
CROSS JOIN filter AS f
WHERE (f.site IS NULL OR v.site = f.site) AND (f.sex IS NULL OR v.sex = f.sex)
  AND (f.age_from IS NULL OR v.completed_age >= f.age_from) AND (f.age_to IS NULL OR v.completed_age <= f.age_to)
  AND (f.program IS NULL OR EXISTS (
    SELECT 1 FROM enrolments AS e WHERE e.client_key = v.client_key AND e.program = f.program))
GROUP BY ${GROUP[by]}
ORDER BY ${GROUP[by]} NULLS LAST`;
};
