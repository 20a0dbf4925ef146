export type Sex = 'M' | 'F';

/** What the equation reads. Height in cm, R and Xc in Ω at 50 kHz, weight in kg. */
export interface KyleInput {
  readonly heightCm: number;
  readonly rOhm: number;
  readonly xcOhm: number;
  readonly weightKg: number;
  readonly sex: Sex;
}

const INTERCEPT = -4.104;
const RESISTANCE_INDEX = 0.518;
const WEIGHT = 0.231;
const REACTANCE = 0.13;
const MALE = 4.229;

/** The part of the equation without the weight term and the constants, kg. */
export const kyleElectricalPart = ({ heightCm, rOhm, xcOhm }: KyleInput): number =>
  (RESISTANCE_INDEX * heightCm * heightCm) / rOhm + REACTANCE * xcOhm;

/**
 * Fat-free mass, kg.
 * Kyle UG, Genton L, Karsegard L, Slosman DO, Pichard C. Nutrition 2001;17(3):248–253, doi 10.1016/S0899-9007(00)00553-0.
 */
export const kyleFfm = (input: KyleInput): number =>
  INTERCEPT + kyleElectricalPart(input) + WEIGHT * input.weightKg + (input.sex === 'M' ? MALE : 0);

/**
 * The resistance, Ω, at which the equation gives `ffmKg` when Xc = R·tan φ: the smaller root of
 * 0.130·tan φ·R² − k·R + 0.518·H² = 0 with k = FFM + 4.104 − 0.231·W − 4.229·sex (the larger root is no body's resistance).
 */
export const resistanceForFfm = (
  ffmKg: number,
  weightKg: number,
  heightCm: number,
  sex: Sex,
  phaseDegrees: number,
): number => {
  const a = REACTANCE * Math.tan((phaseDegrees * Math.PI) / 180);
  const k = ffmKg - INTERCEPT - WEIGHT * weightKg - (sex === 'M' ? MALE : 0);
  const c = RESISTANCE_INDEX * heightCm * heightCm;
  return (2 * c) / (k + Math.sqrt(k * k - 4 * a * c));
};

/**
 * Skeletal muscle mass, kg; age in years.
 * Janssen I, Heymsfield SB, Baumgartner RN, Ross R. J Appl Physiol 2000;89:465–471.
 */
export const janssenSmm = ({ heightCm, rOhm, sex }: KyleInput, ageYears: number): number =>
  (0.401 * heightCm * heightCm) / rOhm + (sex === 'M' ? 3.825 : 0) - 0.071 * ageYears + 5.102;
