import type { Column, Limits } from './column';
import { convertNumber } from './convert-number';
import type { ColumnProfile, SourceUnit } from './mapping';
import { settledDecimal, type DecimalEvidence } from './settled-decimal';
import { acceptedUnits, unitFactor, MIXED_UNITS } from './units';

const fits = (column: Column, unit: SourceUnit, profile: ColumnProfile, limits: readonly [number, number]): boolean => {
  const factor = unitFactor(column, unit);
  if (factor === undefined || profile.range === null || MIXED_UNITS.has(unit)) return false;
  const [low, high] = [profile.range.low, profile.range.high].map((value) =>
    Number(convertNumber(String(value), factor)),
  );
  return low !== undefined && high !== undefined && low >= limits[0] && high <= limits[1];
};

/** Weights and masses: another unit is offered, never taken from the figures alone. */
const isMass = (column: Column): boolean => column.unit === 'kg';

const impliedUnit = (column: Column, profile: ColumnProfile, { ask, warn }: Limits): SourceUnit | undefined => {
  for (const limits of [warn, ask]) {
    if (limits === undefined) continue;
    const fitting = acceptedUnits(column).filter((unit) => fits(column, unit, profile, limits));
    const [only] = fitting;
    if (fitting.length > 1) return undefined;
    if (only !== undefined) return only === column.unit || (limits === warn && !isMass(column)) ? only : undefined;
  }
  return undefined;
};

/**
 * The unit that a source column is in without doubt: the only one it can be, the one its heading or its cells name, or
 * the only one in which all its figures lie within the column's limits of plausibility. Undefined: a person is asked.
 */
export const settledUnit = (
  column: Column,
  profile: ColumnProfile,
  fromHeader: SourceUnit | null,
  table: DecimalEvidence,
): SourceUnit | undefined => {
  const units = acceptedUnits(column);
  const [own] = units;
  const inCells = profile.units ?? [];
  const named = inCells.filter((unit) => unit !== '');
  if (fromHeader !== null) return fromHeader;
  if (units.length < 2 || profile.filled === 0) return own;
  if (named.length === 1) return units.find((unit) => unit === named[0]);
  if (named.length > 1) return inCells.length === named.length ? own : undefined;
  // Where a mark can be read both ways the figures' range says nothing.
  const isSure = profile.numbers.either === 0 && settledDecimal(profile, table) !== undefined;
  return isSure ? impliedUnit(column, profile, column.limits ?? {}) : undefined;
};
