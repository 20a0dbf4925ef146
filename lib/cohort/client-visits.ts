import type { IsoDate } from '../core/iso-date';
import type { Row } from '../engine/types';
import type { Catalogue } from '../measures/catalogue';
import type { Equation } from '../measures/equation';
import { guardBit } from '../measures/guard';
import type { Measure } from '../measures/measure';
import { outsideConditions } from './sql/outside-equation-sql';
import type { RuleId } from '../measures/comparability-rule';
import { DEFAULT_RULES } from '../measures/default-rules';
import type { CohortModel } from './model';
import { guardsIn } from './reasons';
import { ruleBit } from './rules-in-force';
import type { ClientVisit, ConditionState } from './types/client-detail';

const regressed = ({ all }: Catalogue): readonly (Measure & { readonly equation: Equation })[] =>
  all.filter((measure): measure is Measure & { readonly equation: Equation } => measure.equation !== undefined);

/** Per equation in force: the guards that say a visit lies outside its group, as a mask. */
const outsideColumns = (catalogue: Catalogue): string =>
  [...new Map(regressed(catalogue).map(({ equation }) => [equation.quantity, equation])).values()]
    .map(
      (equation) =>
        `${
          outsideConditions(equation, 'v')
            .map(({ code, when }) => `(CASE WHEN ${when} THEN ${String(guardBit(code))} ELSE 0 END)`)
            .join(' | ') || '0'
        } AS outside_${equation.quantity}`,
    )
    .join(', ');

/** All visits of the filter's client, each graded against the baseline of the enrolment that counts now. */
export const clientVisitsQuery = ({ catalogue, bases }: CohortModel): string => `WITH current_enrolment AS (
  SELECT e.client_key, e.enrolment_no, e.baseline_no, ROW_NUMBER() OVER (
    PARTITION BY e.client_key ORDER BY e.active DESC, e.program_start DESC NULLS LAST, e.enrolment_no) AS place
  FROM enrolments AS e
)
SELECT v.visit_no, v.visit_date, v.visit_purpose, v.site, v.device, v.electrode_position, v.posture, v.side, v.readings,
  v.broken, v.unknown, v.by_procedure, v.not_recorded, v.guards, v.in_series, g.grade_rank, e.baseline_no,
  ${bases.list.map((basis) => `v.${basis.column}`).join(', ')}, ${outsideColumns(catalogue)}, ${catalogue.all.map((measure) => `v.${measure.id}`).join(', ')}
FROM visits AS v
CROSS JOIN filter AS f
JOIN current_enrolment AS e ON e.client_key = v.client_key AND e.place = 1
LEFT JOIN baseline_grades AS g ON g.enrolment_no = e.enrolment_no AND g.visit_no = v.visit_no
WHERE v.client_key = f.client_key
ORDER BY v.visit_no`;

const GRADES = ['comparable', 'by-procedure', 'caution', 'no'] as const;
const CONDITIONS = DEFAULT_RULES.filter((rule) => rule.procedure);

const text = (row: Row, name: string): string | null =>
  row[name] === null || row[name] === undefined || row[name] === '' ? null : String(row[name]);

const stateOf = (row: Row, rule: RuleId): ConditionState => {
  const has = (mask: string): boolean => (Number(row[mask]) & ruleBit(rule)) !== 0;
  if (has('broken')) return 'not-met';
  if (has('unknown')) return 'unknown';
  if (has('by_procedure')) return 'by-procedure';
  return has('not_recorded') ? 'not-recorded' : 'met';
};

/** One row of `clientVisitsQuery` as the typed answer. */
export const clientVisitFrom = (row: Row, { catalogue }: CohortModel): ClientVisit => {
  const graded = row['grade_rank'] !== null && Number(row['visit_no']) > Number(row['baseline_no'] ?? Infinity);
  return {
    visit: Number(row['visit_no']),
    date: String(row['visit_date']) as IsoDate,
    purpose: String(row['visit_purpose']),
    site: text(row, 'site'),
    device: text(row, 'device'),
    position: text(row, 'electrode_position'),
    posture: text(row, 'posture'),
    readings: Number(row['readings']),
    values: Object.fromEntries(
      catalogue.all.flatMap(({ id }) => (row[id] === null || row[id] === undefined ? [] : [[id, Number(row[id])]])),
    ),
    conditions: Object.fromEntries(CONDITIONS.map((rule) => [rule.id, stateOf(row, rule.id)])),
    guards: guardsIn(Number(row['guards'])),
    outsideEquation: Object.fromEntries(
      regressed(catalogue).map(({ id, equation }) => [id, guardsIn(Number(row[`outside_${equation.quantity}`] ?? 0))]),
    ),
    ...(graded ? { comparableWithBaseline: GRADES[Number(row['grade_rank'])] ?? 'no' } : {}),
  };
};
