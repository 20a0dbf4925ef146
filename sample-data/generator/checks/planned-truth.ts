import { type Clinic } from '../build-clinic';
import { LAST_DAY, dayOf } from '../calendar';
import { errorFreeBody } from '../error-free-body';
import { kyleFfm } from '../kyle-ffm';
import { type PlantedClient } from '../planted-client';
import { PROGRAMS, type ProgramName } from '../programs';
import { baselineOf, reviewVisit, type ProgramVisits } from './program-visits';
import { meanOf } from './visit-value';

interface TrueBody {
  readonly ffmKg: number;
  readonly weightKg: number;
}

/** Mean and SD of the error-free change of a group. */
export interface TrueChange {
  readonly n: number;
  readonly ffmMean: number;
  readonly ffmSd: number;
  readonly weightMean: number;
  readonly weightSd: number;
}

/** The realised truth of one planned review. */
export interface ReviewTruth {
  readonly program: ProgramName;
  readonly week: number;
  readonly windowWeeks: number;
  /** Changes at the planned day: of all whose window has closed, of those of them who are due, of those seen. */
  readonly started: TrueChange;
  readonly due: TrueChange;
  readonly seen: TrueChange;
  /** Changes from baseline to the day of the visit, of those seen who have a baseline. */
  readonly seenAtVisit: TrueChange;
}

const plantedBody = (client: PlantedClient, day: number): TrueBody => {
  const bodies = client.readings.map(({ date, r, xc, weight, cells }) => ({
    day: dayOf(date),
    weightKg: weight,
    ffmKg:
      r === undefined || xc === undefined
        ? Number(cells?.ffm_kg)
        : kyleFfm({
            heightCm: Number(cells?.height_cm ?? client.heightCm),
            rOhm: r,
            xcOhm: xc,
            weightKg: weight,
            sex: client.sex,
          }),
  }));
  const before = bodies.filter((body) => body.day <= day).at(-1) ?? bodies[0];
  const after = bodies.find((body) => body.day > day);
  if (before === undefined) throw new Error(`${client.id} has no reading.`);
  if (client.body === 'unchanged') return bodies[0] ?? before;
  if (after === undefined || before.day > day) return before;
  const share = (day - before.day) / (after.day - before.day);
  return {
    ffmKg: before.ffmKg + share * (after.ffmKg - before.ffmKg),
    weightKg: before.weightKg + share * (after.weightKg - before.weightKg),
  };
};

const summary = (changes: readonly TrueBody[]): TrueChange => {
  const sd = (values: readonly number[]): number => {
    const mean = meanOf(values);
    return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
  };
  const ffm = changes.map(({ ffmKg }) => ffmKg);
  const weight = changes.map(({ weightKg }) => weightKg);
  return { n: changes.length, ffmMean: meanOf(ffm), ffmSd: sd(ffm), weightMean: meanOf(weight), weightSd: sd(weight) };
};

/** The error-free change at every planned review, of all who started and of those seen. */
export const plannedTruth = (clinic: Clinic, enrolments: readonly ProgramVisits[]): ReviewTruth[] => {
  const people = new Map(clinic.people.map((person) => [person.id, person]));
  const planted = new Map(clinic.planted.map((client) => [client.id, client]));
  const bodyOn = (id: string, day: number): TrueBody => {
    const person = people.get(id);
    if (person !== undefined) return errorFreeBody(person, day);
    const client = planted.get(id);
    if (client === undefined) throw new Error(`${id} is neither simulated nor planted.`);
    return plantedBody(client, day);
  };
  const changeBetween = (id: string, from: number, to: number): TrueBody => {
    const [a, b] = [bodyOn(id, from), bodyOn(id, to)];
    return { ffmKg: b.ffmKg - a.ffmKg, weightKg: b.weightKg - a.weightKg };
  };
  return PROGRAMS.flatMap(({ name, reviews }) =>
    reviews.map((review) => {
      const { week, windowWeeks } = review;
      const started = enrolments.filter(
        ({ program, start }) => program.name === name && start + 7 * (week + windowWeeks) <= LAST_DAY,
      );
      const due = started.filter(({ start, end }) => end >= start + 7 * (week - windowWeeks));
      const seen = due.filter((enrolment) => reviewVisit(enrolment, review) !== undefined);
      const planned = (group: readonly ProgramVisits[]): TrueChange =>
        summary(group.map(({ client, start }) => changeBetween(client, start, start + 7 * week)));
      const visited = seen.flatMap((enrolment) => {
        const [baseline, visit] = [baselineOf(enrolment), reviewVisit(enrolment, review)];
        return baseline === undefined || visit === undefined
          ? []
          : [changeBetween(enrolment.client, baseline.day, visit.day)];
      });
      return {
        program: name,
        week,
        windowWeeks,
        started: planned(started),
        due: planned(due),
        seen: planned(seen),
        seenAtVisit: summary(visited),
      };
    }),
  );
};
