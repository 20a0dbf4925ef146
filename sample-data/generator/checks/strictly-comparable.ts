import { dayOf, weekOf } from '../calendar';
import { HILL_RECORDS_FROM_WEEK } from '../sites';
import { type Column, type VisitRow } from '../visit-row';
import { type ClientVisit } from './client-visit';

const SAME: readonly Column[] = [
  'device_id',
  'device_software',
  'electrode_path',
  'posture',
  'side',
  'electrode_position',
];

const LEAST_HOURS: readonly (readonly [Column, number])[] = [
  ['fasted_h', 8],
  ['since_exercise_h', 12],
  ['since_alcohol_h', 12],
];

const STANDARD: readonly (readonly [Column, string])[] = [
  ['large_drink', 'n'],
  ['bladder_emptied', 'y'],
  ['rested', 'y'],
  ['contact_ok', 'y'],
  ['acute_illness', 'n'],
  ['oedema', 'n'],
  ['medication_changed', 'n'],
];

const AFTER_BIRTH_WEEKS = 12;
const ADULT_DAYS = 18 * 365.25;

const stopped = (row: VisitRow): boolean =>
  row.oedema === 'y' ||
  row.dialysis === 'haemo' ||
  row.pregnant === 'y' ||
  (row.weeks_after_birth !== '' && Number(row.weeks_after_birth) < AFTER_BIRTH_WEEKS) ||
  dayOf(row.visit_date) - dayOf(row.birth_date) < ADULT_DAYS;

/** Hill's early weeks count as met: by its written procedure, or not recorded there at all. */
const underProcedure = (row: VisitRow): boolean =>
  row.site === 'Hill' && weekOf(dayOf(row.visit_date)) < HILL_RECORDS_FROM_WEEK;

const standard = (row: VisitRow): boolean =>
  underProcedure(row) ||
  (LEAST_HOURS.every(([column, hours]) => row[column] !== '' && Number(row[column]) >= hours) &&
    STANDARD.every(([column, text]) => row[column] === text));

const HEIGHT_DIFFERENCE_CM = 1.5;

/** Whether two visits are comparable, or comparable by procedure, for a composition value. */
export const strictlyComparable = (a: ClientVisit, b: ClientVisit): boolean => {
  const [first, second] = [a.readings[0]?.row, b.readings[0]?.row];
  if (first === undefined || second === undefined) return false;
  const phases = [first.menstrual_phase, second.menstrual_phase];
  return (
    ![first, second].some(stopped) &&
    [first, second].every(standard) &&
    SAME.every((column) => first[column] === second[column]) &&
    (phases.includes('') || phases[0] === phases[1]) &&
    Math.abs(Number(first.height_cm) - Number(second.height_cm)) <= HEIGHT_DIFFERENCE_CM
  );
};
