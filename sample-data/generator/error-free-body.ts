import { kyleFfm, resistanceForFfm } from './kyle-ffm';
import { type Person } from './person';
import { plannedChange } from './planned-change';

/** A body without any error of measurement: kg, kg, degrees, Ω, Ω. */
export interface ErrorFreeBody {
  readonly ffmKg: number;
  readonly weightKg: number;
  readonly phaseDegrees: number;
  readonly rOhm: number;
  readonly xcOhm: number;
}

const tangent = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

/** The body of a simulated client on a day: the first body, moved by the planned change of each program it has been in. */
export const errorFreeBody = (person: Person, day: number): ErrorFreeBody => {
  const { body, sex } = person;
  const ffm = kyleFfm({ ...body, xcOhm: body.rOhm * tangent(body.phaseDegrees), sex });
  let ffmKg = ffm;
  let fmKg = body.weightKg - ffm;
  let phaseDegrees = body.phaseDegrees;
  for (const { program, own, start, left } of person.enrolments) {
    const operation = program.name === 'Before surgery' ? left - start : undefined;
    const change = plannedChange(program.name, own, day - start, person.loser, operation);
    ffmKg += change.ffm;
    fmKg += change.fm;
    phaseDegrees += change.phase;
  }
  const weightKg = ffmKg + fmKg;
  const rOhm = resistanceForFfm(ffmKg, weightKg, body.heightCm, sex, phaseDegrees);
  return { ffmKg, weightKg, phaseDegrees, rOhm, xcOhm: rOhm * tangent(phaseDegrees) };
};
