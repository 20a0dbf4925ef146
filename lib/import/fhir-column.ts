import type { Coding, FhirValue } from '../formats/fhir/observation';
import type { RawCell } from '../formats/raw-table';
import type { Column } from './column';
import { COLUMN_BY_NAME } from './columns';
import { convertNumber } from './convert-number';
import type { SourceUnit } from './mapping';
import { unitFactor } from './units';

/** Our own codes, for what LOINC has none: the names of the canonical columns. */
export const LOCAL_SYSTEM = 'urn:driftline:code';
const LOINC = 'http://loinc.org';

/** LOINC terms of the canonical columns: body weight (and measured), height, waist, fat mass and muscle mass calculated. */
const LOINC_COLUMNS: ReadonlyMap<string, string> = new Map([
  ['29463-7', 'weight_kg'],
  ['3141-9', 'weight_kg'],
  ['8302-2', 'height_cm'],
  ['8280-0', 'waist_cm'],
  ['73708-0', 'fm_kg'],
  ['73964-9', 'smm_kg'],
]);

/** UCUM codes of the units that a column may come in. Source: The Unified Code for Units of Measure, version 2.1. */
const UCUM: ReadonlyMap<string, SourceUnit> = new Map<string, SourceUnit>([
  ['kg', 'kg'],
  ['g', 'g'],
  ['[lb_av]', 'lb'],
  ['[stone_av]', 'st'],
  ['cm', 'cm'],
  ['m', 'm'],
  ['mm', 'mm'],
  ['[in_i]', 'in'],
  ['Ohm', 'Ohm'],
  ['kOhm', 'kOhm'],
  ['kHz', 'kHz'],
  ['Hz', 'Hz'],
  ['h', 'h'],
  ['min', 'min'],
  ['d', 'd'],
  ['deg', 'deg'],
  ['rad', 'rad'],
  ['L', 'L'],
  ['l', 'L'],
  ['mL', 'mL'],
  ['ml', 'mL'],
  ['s', 's'],
  ['m/s', 'm/s'],
  ['a', 'a'],
  ['wk', 'wk'],
  ['1', '1'],
]);

const canonicalName = ({ system, code }: Coding): string | undefined => {
  if (system === LOINC) return LOINC_COLUMNS.get(code);
  return system === LOCAL_SYSTEM && COLUMN_BY_NAME.has(code) ? code : undefined;
};

/** The canonical column that a value belongs to; undefined where its codes are not known. */
export const fhirColumn = ({ codings }: FhirValue): Column | undefined =>
  codings.map((coding) => COLUMN_BY_NAME.get(canonicalName(coding) ?? '')).find((column) => column !== undefined);

/** The name under which a value of an unknown code is kept: its code, with the system where it would be mistaken. */
export const extraName = ({ codings, text }: FhirValue): string => {
  const coding = codings.find(({ code }) => code !== '');
  if (coding === undefined) return text === '' ? 'uncoded' : text;
  return COLUMN_BY_NAME.has(coding.code) ? `${coding.system}|${coding.code}` : coding.code;
};

/** A value in the unit of its column; null where its unit is none of the column's. */
export const fhirCell = ({ value, unit }: FhirValue, column: Column): RawCell | null => {
  if (typeof value === 'boolean') return value ? 'y' : 'n';
  if (column.unit === undefined || typeof value !== 'number') return value;
  const source = column.unit === '1' && unit === '' ? '1' : UCUM.get(unit);
  const factor = source === undefined ? undefined : unitFactor(column, source);
  return factor === undefined ? null : Number(convertNumber(String(value), factor));
};
