import type { Column } from './column';
import type { SourceUnit } from './mapping';

/** A value in the column's own unit is the source's value × times ÷ per. */
export interface UnitFactor {
  readonly times: string;
  readonly per: number;
}

const same: UnitFactor = { times: '1', per: 1 };

/**
 * Units that may stand for a column's own, with their exact factors. Pound 0.45359237 kg and inch 2.54 cm: International
 * yard and pound agreement, 1959; stone 14 lb. Those of mixed units count feet in inches, stones in pounds.
 */
const FACTORS: Readonly<Record<string, Readonly<Partial<Record<SourceUnit, UnitFactor>>>>> = {
  kg: {
    kg: same,
    lb: { times: '0.45359237', per: 1 },
    st: { times: '6.35029318', per: 1 },
    'st-lb': { times: '0.45359237', per: 1 },
    g: { times: '0.001', per: 1 },
  },
  cm: {
    cm: same,
    m: { times: '100', per: 1 },
    mm: { times: '0.1', per: 1 },
    in: { times: '2.54', per: 1 },
    'ft-in': { times: '2.54', per: 1 },
  },
  Ohm: { Ohm: same, kOhm: { times: '1000', per: 1 } },
  kHz: { kHz: same, Hz: { times: '0.001', per: 1 } },
  h: { h: same, min: { times: '1', per: 60 }, d: { times: '24', per: 1 } },
  deg: { deg: same, rad: { times: String(180 / Math.PI), per: 1 } },
  L: { L: same, mL: { times: '0.001', per: 1 } },
  s: { s: same },
  'm/s': { 'm/s': same },
  a: { a: same },
  wk: { wk: same, d: { times: '1', per: 7 } },
  '1': { '1': same },
};

/** Units that a cell writes in two parts. */
export const MIXED_UNITS: ReadonlySet<SourceUnit> = new Set<SourceUnit>(['ft-in', 'st-lb']);

const ONLY_FOR: Readonly<Partial<Record<SourceUnit, string>>> = {
  'ft-in': 'height_cm',
  st: 'weight_kg',
  'st-lb': 'weight_kg',
};

/** The units in which a source may give a column, its own first; empty for a column without unit. */
export const acceptedUnits = (column: Column): readonly SourceUnit[] =>
  (Object.keys(FACTORS[column.unit ?? ''] ?? {}) as SourceUnit[]).filter(
    (unit) => ONLY_FOR[unit] === undefined || ONLY_FOR[unit] === column.name,
  );

/** The factor from a unit to the column's own; undefined where the column does not take it. */
export const unitFactor = (column: Column, unit: SourceUnit): UnitFactor | undefined =>
  acceptedUnits(column).includes(unit) ? FACTORS[column.unit ?? '']?.[unit] : undefined;
