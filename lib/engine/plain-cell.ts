import { DuckDBDateValue } from '@duckdb/node-api';
import { fromDayNumber } from '../core/iso-date';
import type { Cell } from './types';

/** A value of the native engine as a plain cell: dates as `YYYY-MM-DD`, whole numbers as numbers. */
export const plainCell = (value: unknown): Cell => {
  if (value === null || value === undefined) return null;
  if (typeof value === 'bigint') return Number(value);
  if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean') return value;
  if (value instanceof DuckDBDateValue) return fromDayNumber(value.days);
  throw new Error('a result column has a type that the pipeline does not use');
};
