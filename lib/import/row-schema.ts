import { z } from 'zod';
import { parseIsoDate } from '../core/iso-date';
import type { Column, ColumnType } from './column';
import { COLUMNS } from './columns';

const DECIMAL = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;
const TIME = /^([01]?\d|2[0-3]):[0-5]\d(:[0-5]\d)?$/;

const READABLE: Readonly<Record<ColumnType, (cell: string, column: Column) => boolean>> = {
  text: () => true,
  date: (cell) => cell >= '1800' && parseIsoDate(cell) !== undefined,
  time: (cell) => TIME.test(cell),
  integer: (cell) => /^\d{1,4}$/.test(cell),
  number: (cell) => DECIMAL.test(cell) && Number.isFinite(Number(cell)),
  flag: (cell) => /^[yn]$/i.test(cell),
  choice: (cell, { choices = [], lenient }) =>
    lenient === true || choices.some((choice) => choice.toLowerCase() === cell.toLowerCase()),
};

const cellSchema = (column: Column): z.ZodType<string> =>
  z
    .string()
    .transform((cell) => cell.replace(/^ +| +$/g, ''))
    .refine((cell) => cell === '' || READABLE[column.type](cell, column), { error: `unreadable_${column.type}` })
    .refine(
      (cell) =>
        cell === '' || column.limits?.positive !== true || !(Number(cell) <= 0 && Number.isFinite(Number(cell))),
      {
        error: 'not_positive',
      },
    );

/**
 * One row of a visit export, cell by cell as text ('' where unknown), for programs that write such a file. Import itself
 * judges by SQL; a property test holds that the two refuse the same cells. What concerns more than one cell (a visit
 * before birth, no value at all) and questions and warnings are import's alone.
 */
export const rowSchema = z.object(Object.fromEntries(COLUMNS.map((column) => [column.name, cellSchema(column)])));
