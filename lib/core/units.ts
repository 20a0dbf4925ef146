/** UCUM codes used by the project. UCUM's ohm is `Ohm`; a year is `a`. */
export type Ucum =
  | 'kg'
  | 'kg/m2'
  | 'cm'
  | 'm'
  | 'Ohm'
  | 'Ohm/m'
  | 'cm2/Ohm'
  | 'Ohm.cm'
  | 'm2'
  | 'deg'
  | '%'
  | 'L'
  | 'kcal/d'
  | 'a'
  | 'nF'
  | 'MJ'
  | 'm/s'
  | 's'
  | '1';

/** What a person wants to read; files and exports always keep SI and UCUM. */
export interface UnitPreference {
  readonly mass: 'kg' | 'lb';
  readonly length: 'cm' | 'ft-in';
  readonly energy: 'kcal' | 'kJ';
}

export const SI_UNITS: UnitPreference = { mass: 'kg', length: 'cm', energy: 'kcal' };

/** Pounds in a kilogram: 1 lb = 0.45359237 kg exactly (international yard and pound agreement, 1959). */
const POUNDS_PER_KILOGRAM = 1 / 0.45359237;

/** kJ in one kcal (thermochemical calorie, by definition). */
export const KILOJOULES_PER_KILOCALORIE = 4.184;

/** How a unit is shown: the label that stands in a header or behind a number, and the factor from the UCUM unit. */
export interface ShownUnit {
  readonly label: string;
  readonly factor: number;
}

const SHOWN: Readonly<Record<Ucum, string>> = {
  kg: 'kg',
  'kg/m2': 'kg/m²',
  cm: 'cm',
  m: 'm',
  Ohm: 'Ω',
  'Ohm/m': 'Ω/m',
  'cm2/Ohm': 'cm²/Ω',
  'Ohm.cm': 'Ω·cm',
  m2: 'm²',
  deg: '°',
  '%': '%',
  L: 'L',
  'kcal/d': 'kcal/d',
  a: 'years',
  nF: 'nF',
  MJ: 'MJ',
  'm/s': 'm/s',
  s: 's',
  '1': '',
};

/**
 * The unit as a person prefers it. Lengths in ft-in are shown as inches where a difference is meant;
 * a height itself is formatted by `formatHeight`.
 */
export const shownUnit = (unit: Ucum, preference: UnitPreference): ShownUnit => {
  if (unit === 'kg' && preference.mass === 'lb') return { label: 'lb', factor: POUNDS_PER_KILOGRAM };
  if (unit === 'cm' && preference.length === 'ft-in') return { label: 'in', factor: 1 / 2.54 };
  if (unit === 'kcal/d' && preference.energy === 'kJ') return { label: 'kJ/d', factor: KILOJOULES_PER_KILOCALORIE };
  if (unit === 'MJ')
    return preference.energy === 'kJ'
      ? { label: 'kJ', factor: 1000 }
      : { label: 'kcal', factor: 1000 / KILOJOULES_PER_KILOCALORIE };
  return { label: SHOWN[unit], factor: 1 };
};
