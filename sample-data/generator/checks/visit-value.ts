import { janssenSmm, kyleElectricalPart, kyleFfm } from '../kyle-ffm';
import { type ClientVisit } from './client-visit';
import { type Reading } from './usable-reading';

/** The values whose error the generator looks at. */
export type ValueName =
  | 'ffm'
  | 'ffm without weight'
  | 'smm'
  | 'phase angle'
  | 'impedance per height'
  | 'r'
  | 'xc'
  | 'weight'
  | 'exported ffm';

/** Value, unit and decimals, for the readme. */
export const VALUES: readonly { readonly name: ValueName; readonly unit: string }[] = [
  { name: 'ffm', unit: 'kg' },
  { name: 'ffm without weight', unit: 'kg' },
  { name: 'smm', unit: 'kg' },
  { name: 'phase angle', unit: '°' },
  { name: 'impedance per height', unit: 'Ω/m' },
  { name: 'r', unit: 'Ω' },
  { name: 'xc', unit: 'Ω' },
  { name: 'weight', unit: 'kg' },
  { name: 'exported ffm', unit: 'kg' },
];

/** One reading's value with the client's height; NaN where the row does not hold what it needs. */
const readingValue = (name: ValueName, reading: Reading, heightCm: number): number => {
  const input = { ...reading, heightCm };
  switch (name) {
    case 'ffm':
      return kyleFfm(input);
    case 'ffm without weight':
      return kyleElectricalPart(input);
    case 'smm':
      return janssenSmm(input, (reading.day - reading.birth) / 365.25);
    case 'phase angle':
      return (Math.atan2(reading.xcOhm, reading.rOhm) * 180) / Math.PI;
    case 'impedance per height':
      return Math.sqrt(reading.rOhm ** 2 + reading.xcOhm ** 2) / (heightCm / 100);
    case 'r':
      return reading.rOhm;
    case 'xc':
      return reading.xcOhm;
    case 'weight':
      return reading.weightKg;
    case 'exported ffm':
      return reading.exportedFfmKg;
  }
};

/** The values of a visit's readings that exist. */
export const readingValues = (name: ValueName, visit: ClientVisit): number[] =>
  visit.readings.map((reading) => readingValue(name, reading, visit.heightCm)).filter((value) => !Number.isNaN(value));

export const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** A visit's value: the mean over its readings. */
export const visitValue = (name: ValueName, visit: ClientVisit): number => meanOf(readingValues(name, visit));
