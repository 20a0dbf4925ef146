import type { SourceUnit } from './mapping';

const SHORT: Readonly<Record<string, string>> = {
  kg: 'kg kgs kilo',
  g: 'g',
  lb: 'lb lbs #',
  st: 'st',
  'st-lb': 'stlb',
  cm: 'cm cms',
  m: 'm',
  mm: 'mm',
  in: 'in "',
  'ft-in': 'ft ftin',
  Ohm: 'ω ohm ohms',
  kOhm: 'kω kohm',
  kHz: 'khz',
  Hz: 'hz',
  h: 'h hr hrs std',
  min: 'min mins',
  d: 'd',
  deg: '° deg',
  rad: 'rad',
  L: 'l lt',
  mL: 'ml',
  s: 's sec secs sek',
  'm/s': 'm/s ms',
  a: 'a y yr yrs',
  wk: 'wk wks w',
  '%': '% percent prozent',
};

const LONG: Readonly<Record<string, string>> = {
  kg: 'kilogram kilograms kilogramm kilogrammes kilogramos',
  g: 'grams',
  lb: 'pound pounds libras',
  st: 'stone stones',
  cm: 'centimeter centimeters centimetre centimetres zentimeter',
  m: 'meter meters metre metres',
  mm: 'millimeter millimeters millimetre millimetres',
  in: 'inch inches zoll',
  'ft-in': 'feet foot',
  kHz: 'kilohertz',
  Hz: 'hertz',
  h: 'hour hours stunden heures horas ore uur',
  min: 'minute minutes minuten minutos minuti',
  d: 'day days tage tagen jours días giorni dagen dias',
  deg: 'degree degrees',
  rad: 'radian radians',
  L: 'liter liters litre litres litros litri',
  mL: 'milliliter milliliters millilitre millilitres',
  s: 'seconds sekunden secondes segundos secondi',
  a: 'years year jahre jahren ans años anni jaar anos',
  wk: 'weeks week wochen semaines semanas settimane weken',
  '%': '%',
};

/** A unit as a heading names it; `%` stands for shares, which no column takes. */
export type HeaderUnit = SourceUnit | '%';

const unitsBy = (table: Readonly<Record<string, string>>): ReadonlyMap<string, HeaderUnit> =>
  new Map(
    Object.entries(table).flatMap(([unit, words]) =>
      words.split(' ').map((word) => [word.normalize('NFKD').replace(/\p{M}/gu, ''), unit as HeaderUnit] as const),
    ),
  );

const LONG_WORDS = unitsBy(LONG);
const ALL_WORDS: ReadonlyMap<string, HeaderUnit> = new Map([...unitsBy(SHORT), ...LONG_WORDS]);

/** The unit that a word written out stands for wherever it is in a heading (`hours since exercise`). */
export const unitOfLongWord = (word: string): HeaderUnit | undefined => LONG_WORDS.get(word);

/** The unit of a word that stands where a unit is expected: in brackets, at the end of a heading, behind a number. */
export const unitOfWord = (word: string): HeaderUnit | undefined =>
  ALL_WORDS.get(word.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase().replace(/[.\s]/g, ''));
