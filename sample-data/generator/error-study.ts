import { nearestWeekday, weekStart } from './calendar';
import { errorFreeBody } from './error-free-body';
import { drawDay, NO_SHIFT } from './measurement-error';
import { ageOn, type Enrolment, type Person } from './person';
import { type ProgramName } from './programs';
import { randomSource, type RandomSource } from './random-source';
import { drawTime } from './routine-visits';
import { DEVICE_OF_SITE, type Site } from './sites';
import { standardConditions } from './visit-conditions';
import { type PlacedRow } from './visit-row';
import { visitRows, type PlannedReading } from './visit-rows';

/** How many people the study needs at a site; `pairs` come twice, the others once with two readings. */
interface Quota {
  readonly kidney: boolean;
  readonly site: Site;
  readonly count: number;
}

/** 47 pairs, 27 of them at Quay: fewer than 30, so that Quay's exported values stay provisional. */
const PAIRS: readonly Quota[] = [
  { kidney: false, site: 'Quay', count: 20 },
  { kidney: false, site: 'Hill', count: 15 },
  { kidney: true, site: 'Quay', count: 7 },
  { kidney: true, site: 'Hill', count: 5 },
];
const REPOSITIONED_PER_SITE = 15;
const CROSSCHECKED = 32;
const CROSSCHECK_WEEK = 40;
const FIRST_WEEK = 21;
const LAST_WEEK = 96;
const EQUATION_BMI_LIMIT = 33;

const STUDIED: readonly ProgramName[] = [
  'Strength, 65 and over',
  'Weight management',
  'Kidney nutrition',
  'Check-ups only',
];

/** A simulated client with the days of its routine visits. */
export interface Attendance {
  readonly person: Person;
  readonly days: readonly number[];
}

const onlyEnrolment = ({ enrolments }: Person): Enrolment => {
  const [enrolment] = enrolments;
  if (enrolment === undefined) throw new Error('A client without a program.');
  return enrolment;
};

const suits = ({ person, days }: Attendance): boolean => {
  const { program, start } = onlyEnrolment(person);
  const bmi = errorFreeBody(person, start).weightKg / (person.body.heightCm / 100) ** 2;
  return (
    STUDIED.includes(program.name) &&
    !person.loser &&
    !person.haemodialysis &&
    bmi < EQUATION_BMI_LIMIT &&
    days.length >= 2
  );
};

/** Free of routine visits around [day, day + span], in the program for at least three weeks, and not yet gone. */
const attends = ({ person, days }: Attendance, day: number, span: number): boolean =>
  day >= onlyEnrolment(person).start + 21 &&
  day >= (days[0] ?? Infinity) &&
  day + span <= (days.at(-1) ?? -Infinity) &&
  days.every((visit) => visit < day - 1 || visit > day + span + 1);

const studyDay = (random: RandomSource, attendance: Attendance, span: number): number | undefined => {
  for (let attempt = 0; attempt < 200; attempt += 1) {
    const day = weekStart(random.integer(FIRST_WEEK, LAST_WEEK)) + random.integer(0, 4);
    if (attends(attendance, day, span)) return day;
  }
  return undefined;
};

const standardVisit = (random: RandomSource, person: Person, day: number, readings: number): PlannedReading => ({
  day,
  time: drawTime(random),
  purpose: 'precision',
  site: person.site,
  device: DEVICE_OF_SITE[person.site],
  position: 'A',
  readings,
  conditions: standardConditions(random, person, day),
  extraShift: NO_SHIFT,
});

const crosscheckRows = (random: RandomSource, person: Person, day: number): PlacedRow[] => {
  const enrolment = onlyEnrolment(person);
  const visit = {
    ...standardVisit(random, person, day, 1),
    purpose: 'crosscheck',
    site: 'Quay' as const,
    dayShift: drawDay(random, enrolment.program.waterSd),
  };
  return [
    ...visitRows(random, person, enrolment, { ...visit, device: 'Unit Q' }),
    ...visitRows(random, person, enrolment, { ...visit, device: 'Unit H' }),
  ];
};

/** The rows of the repeatability and the cross-device study; every person is in one part only. */
export const errorStudyRows = (seed: number, attendances: readonly Attendance[]): PlacedRow[] => {
  const random = randomSource(seed, 'error study');
  let waiting = random.shuffled(attendances.filter(suits));
  const rows: PlacedRow[] = [];
  let betweenDayVisits = 0;

  const enrol = (wanted: number, fits: (candidate: Attendance) => boolean, measure: (a: Attendance) => PlacedRow[]) => {
    const left: Attendance[] = [];
    let missing = wanted;
    for (const candidate of waiting) {
      const taken = missing > 0 && fits(candidate) ? measure(candidate) : [];
      if (taken.length === 0) left.push(candidate);
      else missing -= 1;
      rows.push(...taken);
    }
    if (missing > 0) throw new Error(`The error study lacks ${missing} people.`);
    waiting = left;
  };

  const isKidney = ({ person }: Attendance): boolean => onlyEnrolment(person).program.name === 'Kidney nutrition';

  for (const { kidney, site, count } of PAIRS) {
    enrol(
      count,
      (candidate) => candidate.person.site === site && isKidney(candidate) === kidney,
      (candidate) => {
        const { person } = candidate;
        const first = studyDay(random, candidate, 7);
        if (first === undefined) return [];
        const second = Math.min(first + 7, nearestWeekday(first + random.integer(3, 7)));
        const bothUnderFifty = ageOn(person, first) < 50 === ageOn(person, second) < 50;
        if (!bothUnderFifty) return [];
        return [first, second].flatMap((day) => {
          betweenDayVisits += 1;
          const visit = standardVisit(random, person, day, betweenDayVisits % 3 === 0 ? 2 : 1);
          return visitRows(random, person, onlyEnrolment(person), visit);
        });
      },
    );
  }
  enrol(
    CROSSCHECKED,
    (candidate) => !isKidney(candidate),
    (candidate) => {
      const day = weekStart(CROSSCHECK_WEEK) + random.integer(0, 4);
      return attends(candidate, day, 0) ? crosscheckRows(random, candidate.person, day) : [];
    },
  );
  for (const site of ['Quay', 'Hill'] as const) {
    enrol(
      REPOSITIONED_PER_SITE,
      (candidate) => candidate.person.site === site && !isKidney(candidate),
      (candidate) => {
        const day = studyDay(random, candidate, 0);
        if (day === undefined) return [];
        const { person } = candidate;
        return visitRows(random, person, onlyEnrolment(person), standardVisit(random, person, day, 2));
      },
    );
  }
  return rows;
};
