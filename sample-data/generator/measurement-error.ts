import { dayOfYear, weekStart } from './calendar';
import { type RandomSource } from './random-source';
import { SERVICE_WEEK, type Device } from './sites';

/** What is added to R (Ω), Xc (Ω) and weight (kg). */
export interface Shift {
  readonly r: number;
  readonly xc: number;
  readonly weight: number;
}

export const NO_SHIFT: Shift = { r: 0, xc: 0, weight: 0 };

export const addShifts = (...shifts: readonly Shift[]): Shift =>
  shifts.reduce(
    (sum, next) => ({ r: sum.r + next.r, xc: sum.xc + next.xc, weight: sum.weight + next.weight }),
    NO_SHIFT,
  );

/** Stepping off and on again. */
export const drawRepositioning = (random: RandomSource): Shift => ({
  r: random.normal(0, 3.5),
  xc: random.normal(0, 0.7),
  weight: random.normal(0, 0.05),
});

/** A day: body water (SD in litres; −24 Ω, +1 kg per litre, Xc 0.085 of R) and the rest. */
export const drawDay = (random: RandomSource, waterSd: number): Shift => {
  const litres = random.normal(0, waterSd);
  const rWater = -24 * litres;
  return {
    r: rWater + random.normal(0, 4.0),
    xc: 0.085 * rWater + random.normal(0, 1.0),
    weight: litres + random.normal(0, 0.25),
  };
};

/** Unit H against Unit Q, with the step at its service. */
export const deviceShift = (device: Device, day: number): Shift =>
  device === 'Unit Q' ? NO_SHIFT : { r: -12 + (day >= weekStart(SERVICE_WEEK) ? 3 : 0), xc: -2.5, weight: 0.15 };

/** Warmth of the season, in R. */
export const seasonShift = (day: number): Shift => ({
  ...NO_SHIFT,
  r: -4 * Math.cos((2 * Math.PI * (dayOfYear(day) - 196)) / 365),
});
