import { KILOJOULES_PER_KILOCALORIE } from '../core/units';
import type { EquationUnit, Verification } from './equation';

/** A figure with where it comes from and how far that was verified. */
export interface Sourced<T> {
  readonly value: T;
  readonly source: string;
  readonly verification: Verification;
}

export type EnergyUnit = Extract<EquationUnit, 'kcal/d' | 'kJ/d' | 'MJ/d'>;

const KILOCALORIES_IN: Readonly<Record<EnergyUnit, number>> = {
  'kcal/d': 1,
  'kJ/d': 1 / KILOJOULES_PER_KILOCALORIE,
  'MJ/d': 1000 / KILOJOULES_PER_KILOCALORIE,
};

/** kcal/d in one of a unit: what an equation's result is multiplied by; undefined for mass and volume. */
export const kilocaloriesIn = (unit: EquationUnit): number | undefined =>
  unit === 'kg' || unit === 'L' ? undefined : KILOCALORIES_IN[unit];

/** Energy per day from one unit to another. */
export const convertEnergy = (value: number, from: EnergyUnit, to: EnergyUnit): number =>
  (value * KILOCALORIES_IN[from]) / KILOCALORIES_IN[to];

/** Total energy expenditure, in the unit of the resting energy expenditure: TEE = REE × PAL (definition). */
export const totalEnergyExpenditure = (restingExpenditure: number, physicalActivityLevel: number): number =>
  restingExpenditure * physicalActivityLevel;

export type PhysicalActivity = 'light' | 'moderate' | 'vigorous' | 'hard_to_sustain';

/** A range of physical activity levels as printed, both ends included; open above where `to` is missing. */
export interface ActivityBand {
  readonly activity: PhysicalActivity;
  readonly from: number;
  readonly to?: number;
}

/** Lifestyles by physical activity level; the levels are printed to two decimals. */
export const ACTIVITY_BANDS: Sourced<readonly ActivityBand[]> = {
  value: [
    { activity: 'light', from: 1.4, to: 1.69 },
    { activity: 'moderate', from: 1.7, to: 1.99 },
    { activity: 'vigorous', from: 2, to: 2.4 },
    { activity: 'hard_to_sustain', from: 2.41 },
  ],
  source: 'FAO/WHO/UNU 2004, Human energy requirements, read in several texts that cite it',
  verification: 'read-in-secondary-text',
};

/** The band of a physical activity level rounded to two decimals; undefined below 1.40. */
export const activityBandOf = (physicalActivityLevel: number): PhysicalActivity | undefined => {
  const level = Math.round(physicalActivityLevel * 100) / 100;
  return ACTIVITY_BANDS.value.find(({ from, to }) => level >= from && (to === undefined || level <= to))?.activity;
};

/** Metabolisable energy of tissue gained or lost, in MJ/kg. */
export const TISSUE_ENERGY: Sourced<{ readonly fat: number; readonly fatFree: number }> = {
  value: { fat: 39.5, fatFree: 7.6 },
  source: 'Hall KD. Int J Obes 2008;32:573–576, read in several later texts',
  verification: 'read-in-secondary-text',
};

/** The rule of thumb for a change of weight, in kcal/kg. */
export const WEIGHT_CHANGE_RULE: Sourced<number> = {
  value: 7700,
  source:
    'a rule of thumb of the trade (3500 kcal a pound, 32.2 MJ a kilogram), read in a secondary text; its author is not known here',
  verification: 'read-in-secondary-text',
};

/** Forbes' constant in kg. */
export const FORBES_CONSTANT: Sourced<number> = {
  value: 10.4,
  source: 'Forbes GB. Nutr Rev 1987;45:225–231, read in later texts (the citation is from memory)',
  verification: 'read-in-secondary-text',
};
