import { type Sex } from './kyle-ffm';
import { type Program } from './programs';
import { type RandomSource } from './random-source';

/** A body on the day its program starts, free of error, as Unit Q would read it. */
export interface FirstBody {
  readonly heightCm: number;
  readonly weightKg: number;
  readonly rOhm: number;
  readonly phaseDegrees: number;
}

const PHASE_FLOOR = 3.3;

const drawHeight = (random: RandomSource, sex: Sex, age: number): number => {
  const adult = sex === 'M' ? random.normal(177.0, 6.8, 158, 198) : random.normal(163.5, 6.5, 146, 183);
  return adult - 0.05 * Math.max(0, age - 50);
};

const drawResistance = (random: RandomSource, program: Program, sex: Sex, age: number, bmi: number, height: number) => {
  const mean = sex === 'M' ? 298 - 3.5 * (bmi - 25) + 0.35 * (age - 50) : 372 - 3.8 * (bmi - 23) + 0.3 * (age - 50);
  const perMetre = random.normal(mean, sex === 'M' ? 28 : 34) + (program.name === 'Before surgery' ? 8 : 0);
  return (perMetre * height) / 100;
};

const drawPhase = (random: RandomSource, program: Program, sex: Sex, age: number, bmi: number): number => {
  const illness = program.name === 'Kidney nutrition' ? 0.3 : program.name === 'Before surgery' ? 0.15 : 0;
  const mean = (sex === 'M' ? 6.3 : 5.6) - 0.022 * Math.max(0, age - 40) + 0.02 * Math.max(0, bmi - 25) - illness;
  return Math.max(PHASE_FLOOR, random.normal(mean, 0.5));
};

/** Height, weight, R and phase angle of a new client; drawn again until R is 330–800 Ω, Xc 30–80 Ω. */
export const drawFirstBody = (random: RandomSource, program: Program, sex: Sex, age: number): FirstBody => {
  const heightCm = drawHeight(random, sex, age);
  const { mean, sd, low, high } = program.bmi;
  const bmi = random.normal(mean, sd, low, high);
  for (;;) {
    const rOhm = drawResistance(random, program, sex, age, bmi, heightCm);
    const phaseDegrees = drawPhase(random, program, sex, age, bmi);
    const xcOhm = rOhm * Math.tan((phaseDegrees * Math.PI) / 180);
    if (rOhm >= 330 && rOhm <= 800 && xcOhm >= 30 && xcOhm <= 80) {
      return { heightCm, weightKg: (bmi * heightCm * heightCm) / 10_000, rOhm, phaseDegrees };
    }
  }
};
