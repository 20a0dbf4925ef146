import { weekOf } from './calendar';
import { NO_SHIFT, type Shift } from './measurement-error';
import { type Enrolment, type Person } from './person';
import { randomSource, type RandomSource } from './random-source';
import { DEVICE_OF_SITE, HILL_RECORDS_FROM_WEEK, otherSite } from './sites';
import { drawConditions } from './visit-conditions';
import { drawVisitDays } from './visit-days';
import { type PlacedRow } from './visit-row';
import { visitRows, type PlannedReading } from './visit-rows';

const SECOND_READING = 0.15;
const OTHER_DEVICE = 0.04;
const OTHER_POSITION = 0.04;

/** Hand-electrode positions: A is usual; B reads R higher, C lower. */
const POSITION_SHIFTS: Readonly<Record<string, Shift>> = {
  A: NO_SHIFT,
  B: { ...NO_SHIFT, r: 14 },
  C: { ...NO_SHIFT, r: -14 },
};

/** A time of the morning in steps of ten minutes, from 07:30 on. */
export const drawTime = (random: RandomSource): string => {
  const minutes = 450 + 10 * random.integer(0, 24);
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
};

const drawVisit = (
  random: RandomSource,
  person: Person,
  enrolment: Enrolment,
  day: number,
  index: number,
): PlannedReading => {
  const later = index > 0;
  const elsewhere = random.chance(OTHER_DEVICE) && later;
  const moved = random.chance(OTHER_POSITION) && later;
  const position = random.pick(['B', 'C']);
  const site = elsewhere ? otherSite(person.site) : person.site;
  const medicationChanged = enrolment.own.medicine && index === 1;
  return {
    day,
    time: drawTime(random),
    purpose: site === 'Hill' && weekOf(day) < HILL_RECORDS_FROM_WEEK ? '' : 'routine',
    site,
    device: DEVICE_OF_SITE[site],
    position: moved ? position : 'A',
    readings: random.chance(SECOND_READING) ? 2 : 1,
    conditions: drawConditions(random, person, enrolment, day, site, medicationChanged),
    extraShift: POSITION_SHIFTS[moved ? position : 'A'] ?? NO_SHIFT,
  };
};

/** Every routine row of one simulated client. */
export const routineRows = (seed: number, person: Person): PlacedRow[] => {
  const random = randomSource(seed, `visits ${person.id}`);
  let index = 0;
  return person.enrolments.flatMap((enrolment) =>
    drawVisitDays(random, enrolment).flatMap((day) => {
      const visit = drawVisit(random, person, enrolment, day, index);
      index += 1;
      return visitRows(random, person, enrolment, visit);
    }),
  );
};
