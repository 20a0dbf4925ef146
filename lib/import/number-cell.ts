import type { Column } from './column';
import { convertNumber } from './convert-number';
import type { ColumnMapping, SourceUnit } from './mapping';
import { readMixedUnits } from './read-mixed-units';
import { PLAIN_NUMBER, readNumber } from './read-number';
import { MIXED_UNITS, unitFactor } from './units';
import { unitOfWord } from './unit-words';

const WITH_UNIT = /^([-+]?\d(?:.*\d)?)\s*([^\d\s.,]+)\.?$/;

/** Reads one cell's text as the column's number; the text itself where it cannot be read. */
export type NumberCell = (text: string) => string;

/** The unit that a cell's text names where it is another one than its column's: it counts for that cell alone. */
export const otherUnit = (text: string, column: Column, mapping: ColumnMapping): SourceUnit | undefined => {
  if (/\d$/.test(text) || MIXED_UNITS.has(mapping.unit ?? 'kg')) return undefined;
  const [, , word = ''] = WITH_UNIT.exec(text) ?? [];
  const named = word === '' ? undefined : unitOfWord(word);
  return named === '%' || named === (mapping.unit ?? column.unit) ? undefined : named;
};

/**
 * How a number column's cells are read. Without a decimal mark in the mapping: plain numbers with a point alone. With
 * one: decimal and thousands marks, the mapping's unit, or the unit that the cell
 * itself names (`70.5 kg`), which counts for that cell. A cell that cannot be read in its column's unit never stays a
 * bare number: it keeps the unit's name and is refused for it.
 */
export const numberCell = (column: Column, mapping: ColumnMapping): NumberCell => {
  const decimal = mapping.decimal ?? '.';
  const strict = mapping.decimal === undefined;
  const unit = mapping.unit;
  const inUnit = (text: string, source: SourceUnit | undefined): string | undefined => {
    if (source !== undefined && MIXED_UNITS.has(source)) {
      const whole = readMixedUnits(text, source, decimal);
      const factor = unitFactor(column, source);
      return whole === undefined || factor === undefined ? undefined : convertNumber(whole, factor);
    }
    const read = PLAIN_NUMBER.test(text) && decimal === '.' ? text : strict ? undefined : readNumber(text, decimal);
    if (read === undefined || source === undefined) return read;
    const factor = unitFactor(column, source);
    return factor === undefined ? undefined : convertNumber(read, factor);
  };
  const withOwnUnit = (text: string): string | undefined => {
    if (strict) return undefined;
    const [, number = '', word = ''] = WITH_UNIT.exec(text) ?? [];
    const named = word === '' ? undefined : unitOfWord(word);
    return named === undefined || named === '%' || unitFactor(column, named) === undefined
      ? undefined
      : inUnit(number, named);
  };
  return (text) => {
    const read = inUnit(text, unit) ?? withOwnUnit(text);
    if (read !== undefined) return read;
    return unit !== undefined && unit !== column.unit && PLAIN_NUMBER.test(text) ? `${text} ${unit}` : text;
  };
};
