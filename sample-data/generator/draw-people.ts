import { LAST_DAY, nearestWeekday, weekOf } from './calendar';
import { clientVisits } from './checks/client-visit';
import { comparableLater } from './checks/loss-surfaces';
import { programVisits } from './checks/program-visits';
import { usableReadings } from './checks/usable-reading';
import { drawEnrolment } from './draw-enrolment';
import { drawPerson } from './draw-person';
import { errorFreeBody } from './error-free-body';
import { ageOn, type Person } from './person';
import { programNamed, PROGRAMS, WEEKS_AFTER_OPERATION, type Program, type ProgramName } from './programs';
import { randomSource, type RandomSource } from './random-source';
import { routineRows } from './routine-visits';

const CLIENTS = 600;
const IN_TWO_PROGRAMS = 24;
const ON_HAEMODIALYSIS = 14;
const LOSERS: readonly { readonly program: ProgramName; readonly count: number }[] = [
  { program: 'Strength, 65 and over', count: 6 },
  { program: 'Kidney nutrition', count: 4 },
  { program: 'Weight management', count: 8 },
];

const clientId = (number: number): string => `OM-${String(number).padStart(4, '0')}`;

const bmi = (person: Person, day: number): number => {
  const { weightKg } = errorFreeBody(person, day);
  return weightKg / (person.body.heightCm / 100) ** 2;
};

/** Room for error: the recorded BMI has to stay within 20–33 too. */
const couldLose = (person: Person): boolean => {
  const [enrolment] = person.enrolments;
  if (enrolment === undefined || weekOf(enrolment.start) >= 60 || person.body.phaseDegrees < 4.4) return false;
  // Where a baseline's conditions are not recorded, a loss could not be told from a meal.
  if (person.site === 'Hill' && weekOf(enrolment.start) < 22) return false;
  const { start, own } = enrolment;
  return (
    !own.medicine && [start, start + 280, LAST_DAY].every((day) => bmi(person, day) > 20.4 && bmi(person, day) < 32.5)
  );
};

const SEEN_LATE_DAYS = 250;
const RECENT_DAYS = 42;

/**
 * By attendance and conditions, not by the values: a late visit can be compared with the baseline. Outside weight management,
 * where all of the loss counts as unexpected, not among those seen last, so that the planted OM-0023 can head the list.
 */
const canBeSeenLosing = (seed: number, person: Person): boolean => {
  const rows = routineRows(seed, person).map(({ row }) => row);
  return programVisits(clientVisits(usableReadings(rows))).every((enrolment) => {
    const recent = (enrolment.visits.at(-1)?.day ?? LAST_DAY) >= LAST_DAY - RECENT_DAYS;
    const allowed = enrolment.program.name === 'Weight management' || !recent;
    return allowed && comparableLater(enrolment, SEEN_LATE_DAYS);
  });
};

const withLosers = (random: RandomSource, seed: number, people: readonly Person[]): Person[] => {
  const redrawn = new Map<string, Person>();
  for (const { program, count } of LOSERS) {
    const candidates = random
      .shuffled(people.filter((person) => person.enrolments[0]?.program.name === program && !person.haemodialysis))
      .map((person) => drawPerson(seed, person.id, programNamed(program), { loser: true, haemo: false }))
      .filter((person) => couldLose(person) && canBeSeenLosing(seed, person));
    for (const person of candidates.slice(0, count)) redrawn.set(person.id, person);
  }
  return people.map((person) => redrawn.get(person.id) ?? person);
};

const thenStrength = (random: RandomSource, person: Person): Person => {
  const operation = person.enrolments[0]?.left ?? LAST_DAY;
  const start = nearestWeekday(operation + 7 * WEEKS_AFTER_OPERATION + random.integer(35, 60));
  const strength = drawEnrolment(random, programNamed('Strength, 65 and over'), start, ageOn(person, start), false);
  return { ...person, enrolments: [...person.enrolments, strength] };
};

const withSecondProgram = (random: RandomSource, people: readonly Person[]): Person[] => {
  const able = people.filter(({ birth, enrolments: [first] }) => {
    if (first === undefined || first.program.name !== 'Before surgery') return false;
    return ageOn({ birth }, first.start) >= 65 && weekOf(first.start) <= 66;
  });
  const chosen = new Set(
    random
      .shuffled(able)
      .slice(0, IN_TWO_PROGRAMS)
      .map(({ id }) => id),
  );
  return people.map((person) => (chosen.has(person.id) ? thenStrength(random, person) : person));
};

/** All simulated clients: every id up to OM-0600 that is not taken by a planted client. */
export const drawPeople = (seed: number, planted: ReadonlyMap<string, ProgramName>): Person[] => {
  const random = randomSource(seed, 'people');
  const places: Program[] = PROGRAMS.flatMap((program) => {
    const taken = [...planted.values()].filter((name) => name === program.name).length;
    return Array.from({ length: program.size - taken }, () => program);
  });
  const programs = random.shuffled(places);
  const ids = Array.from({ length: CLIENTS }, (_, index) => clientId(index + 1)).filter((id) => !planted.has(id));
  const kidney = ids.filter((_, index) => programs[index]?.name === 'Kidney nutrition');
  const haemo = new Set(random.shuffled(kidney).slice(0, ON_HAEMODIALYSIS - 1));
  const people = ids.map((id, index) => {
    const program = programs[index];
    if (program === undefined) throw new Error('More ids than places in the programs.');
    return drawPerson(seed, id, program, { loser: false, haemo: haemo.has(id) });
  });
  return withSecondProgram(random, withLosers(random, seed, people));
};
