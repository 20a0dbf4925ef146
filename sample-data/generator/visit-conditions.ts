import { weekOf } from './calendar';
import { addShifts, NO_SHIFT, type Shift } from './measurement-error';
import { ageOn, type Enrolment, type Person } from './person';
import { type RandomSource } from './random-source';
import { HILL_RECORDS_FROM_WEEK, type Site } from './sites';
import { type VisitRow } from './visit-row';

/** The state of one visit's conditions as recorded, and what they do to the readings. */
export interface Conditions {
  readonly cells: Partial<VisitRow>;
  readonly shift: Shift;
}

const CONDITION_COLUMNS = [
  'fasted_h',
  'since_exercise_h',
  'since_alcohol_h',
  'large_drink',
  'bladder_emptied',
  'rested',
  'contact_ok',
  'acute_illness',
  'oedema',
  'medication_changed',
  'menstrual_phase',
] as const;

type ConditionCells = Partial<Record<(typeof CONDITION_COLUMNS)[number], string>>;

const yesNo = (value: boolean): string => (value ? 'y' : 'n');

const hasCycle = (person: Person, day: number): boolean => person.sex === 'F' && ageOn(person, day) < 50;

const standardCells = (random: RandomSource, person: Person, day: number): ConditionCells => ({
  fasted_h: String(random.integer(8, 13)),
  since_exercise_h: String(random.integer(14, 72)),
  since_alcohol_h: String(random.integer(14, 96)),
  large_drink: 'n',
  bladder_emptied: 'y',
  rested: 'y',
  contact_ok: 'y',
  acute_illness: 'n',
  oedema: 'n',
  medication_changed: 'n',
  menstrual_phase: hasCycle(person, day) ? (person.withoutCycle ? 'none' : 'other') : '',
});

/** A visit at which everything is as the procedure wants it. */
export const standardConditions = (random: RandomSource, person: Person, day: number): Conditions => ({
  cells: standardCells(random, person, day),
  shift: NO_SHIFT,
});

interface Departure {
  readonly rate: number;
  readonly draw: (random: RandomSource) => { readonly cells: ConditionCells; readonly shift: Shift };
}

const DEPARTURES: readonly Departure[] = [
  {
    rate: 0.04,
    draw: (random) => ({ cells: { fasted_h: String(random.integer(1, 5)) }, shift: { r: -22, xc: -1.5, weight: 0.4 } }),
  },
  {
    rate: 0.025,
    draw: (random) => ({
      cells: { since_exercise_h: String(random.integer(1, 10)) },
      shift: { r: -11, xc: 0, weight: -0.3 },
    }),
  },
  {
    rate: 0.015,
    draw: (random) => ({
      cells: { since_alcohol_h: String(random.integer(6, 11)) },
      shift: { r: 6, xc: 0, weight: -0.2 },
    }),
  },
  { rate: 0.03, draw: () => ({ cells: { large_drink: 'y' }, shift: { r: 0, xc: 0, weight: 0.6 } }) },
  { rate: 0.025, draw: () => ({ cells: { bladder_emptied: 'n' }, shift: { r: 0, xc: 0, weight: 0.3 } }) },
  { rate: 0.03, draw: () => ({ cells: { rested: 'n' }, shift: { r: -7, xc: -1.4, weight: 0 } }) },
  {
    rate: 0.025,
    draw: (random) => {
      const litres = random.normal(0.6, 0.6);
      return { cells: { acute_illness: 'y' }, shift: { r: -24 * litres, xc: 0, weight: litres } };
    },
  },
];

const PREMENSTRUAL_RATE = 0.22;
const SCATTERED_UNKNOWN_RATE = 0.03;

/** Draws the conditions of a routine visit; at Hill they are not recorded before week 20. */
export const drawConditions = (
  random: RandomSource,
  person: Person,
  enrolment: Enrolment,
  day: number,
  site: Site,
  medicationChanged: boolean,
): Conditions => {
  let cells: ConditionCells = standardCells(random, person, day);
  const shifts: Shift[] = [];
  for (const { rate, draw } of DEPARTURES) {
    const found = random.chance(rate);
    const departure = draw(random);
    if (!found) continue;
    cells = { ...cells, ...departure.cells };
    shifts.push(departure.shift);
  }
  const oedema = random.chance(enrolment.program.oedemaRate) && !person.loser;
  if (oedema) shifts.push({ r: -31, xc: 0, weight: 1.3 });
  const premenstrual = random.chance(PREMENSTRUAL_RATE) && cells.menstrual_phase === 'other';
  if (premenstrual) shifts.push({ r: -7, xc: 0, weight: 0.3 });
  cells = {
    ...cells,
    oedema: yesNo(oedema),
    medication_changed: yesNo(medicationChanged),
    ...(premenstrual ? { menstrual_phase: 'premenstrual' } : {}),
  };
  if (random.chance(SCATTERED_UNKNOWN_RATE)) cells = { ...cells, [random.pick(CONDITION_COLUMNS.slice(0, 8))]: '' };
  const recorded = site === 'Quay' || weekOf(day) >= HILL_RECORDS_FROM_WEEK;
  return { cells: recorded ? cells : {}, shift: addShifts(...shifts) };
};
