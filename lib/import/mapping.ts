import { z } from 'zod';

/** Units that a source column may be in; a canonical column lists which of them it takes (lib/import/units.ts). */
export const SOURCE_UNITS = [
  'kg',
  'g',
  'lb',
  'st',
  'st-lb',
  'cm',
  'm',
  'mm',
  'in',
  'ft-in',
  'Ohm',
  'kOhm',
  'kHz',
  'Hz',
  'h',
  'min',
  'd',
  'deg',
  'rad',
  'L',
  'mL',
  's',
  'm/s',
  'a',
  'wk',
  '1',
] as const;
export type SourceUnit = (typeof SOURCE_UNITS)[number];

export const DATE_ORDERS = ['ymd', 'dmy', 'mdy', 'serial-1900', 'serial-1904'] as const;
export type DateOrder = (typeof DATE_ORDERS)[number];

const columnMappingSchema = z.strictObject({
  /** The canonical column that is filled. */
  to: z.string(),
  /** Places of the source columns (0 = first), joined by a space where there are several (date + time, given + family name). */
  from: z.array(z.number().int().min(0)).min(1),
  /** Wide shape: this source column belongs to the visit's reading number n (R1, R2, …). */
  reading: z.number().int().min(1).optional(),
  /** Default: the canonical column's own unit. */
  unit: z.enum(SOURCE_UNITS).optional(),
  dateOrder: z.enum(DATE_ORDERS).optional(),
  /**
   * The decimal mark of text cells. The other of . and , (and apostrophe, space, no-break space) is a thousands mark.
   * Left out: plain numbers with a decimal point, nothing else is read.
   */
  decimal: z.enum(['.', ',']).optional(),
  /**
   * Source word (trimmed, lower-case) → canonical word; '' makes it unknown. Default: the canonical words themselves. In
   * columns of numbers, dates, times and ids only '' counts.
   */
  words: z.record(z.string(), z.string()).optional(),
});

/**
 * How one table's columns become the canonical ones. Everything a person decided about a file stands here, so that the
 * same file with the same mapping gives the same rows. Exported and imported as JSON.
 */
export const mappingSchema = z.strictObject({
  version: z.literal(1).default(1),
  /** What the table holds: readings, or one enrolment a row, joined on client_id. */
  role: z.enum(['visits', 'enrolment']).default('visits'),
  /** The header's cells, trimmed, in order: a mapping is remembered for exactly these. */
  header: z.array(z.string()),
  /** Line of the header row; null = the table's first row. Lines before it are preamble. */
  headerLine: z.number().int().min(1).nullable().default(null),
  columns: z.array(columnMappingSchema),
  /** Canonical columns that the file does not have, with one value for every row (canonical spelling). */
  constants: z.array(z.strictObject({ to: z.string(), value: z.string() })).default([]),
});

export type Mapping = z.infer<typeof mappingSchema>;
export type ColumnMapping = z.infer<typeof columnMappingSchema>;

/** What is known of one source column after a pass over the whole table. */
export interface ColumnProfile {
  readonly place: number;
  /** The header cell as it stands, trimmed. */
  readonly name: string;
  /** Cells that hold something; words for a missing value (`N/A`, `-`) are none of them. */
  readonly filled: number;
  /** First distinct non-empty cells, at most 5, as text. */
  readonly samples: readonly string[];
  /** All distinct non-empty cells (trimmed) with their counts, where there are at most 40; else null. */
  readonly words: readonly { readonly word: string; readonly count: number }[] | null;
  /**
   * Cells that are numbers by type or hold no mark at all / read as a number with a decimal point alone / with a decimal
   * comma alone / either way (`1,234`). A single point before three digits counts as a decimal point.
   */
  readonly numbers: { readonly typed: number; readonly point: number; readonly comma: number; readonly either: number };
  /** Least and largest number, zero and codes for a missing one left out. */
  readonly range: { readonly low: number; readonly high: number } | null;
  /** Cells that can be read as a date in each order; `all` = non-empty cells. A cell may count for several orders. */
  readonly dates: {
    readonly ymd: number;
    readonly dmy: number;
    readonly mdy: number;
    readonly serial: number;
    /** Dates whose year has two digits: read in no order. */
    readonly short?: number;
  };
  /** Units that its numbers name themselves (`70.5 kg`), at most 4; "" stands for numbers without one. */
  readonly units?: readonly string[];
  /** Words for a missing value as they stand, with their counts. */
  readonly missing?: readonly { readonly word: string; readonly count: number }[];
  /** Numbers that often stand for a missing value (`-99`, `999`), as they stand; they are left out of the range. */
  readonly codes?: readonly { readonly word: string; readonly count: number }[];
}

/** One table as it was understood before any mapping. */
export interface TableProfile {
  readonly headerLine: number;
  readonly header: readonly string[];
  /** Rows after the header. */
  readonly rows: number;
  /** Lines before the header, as text, at most 10. */
  readonly preamble: readonly string[];
  readonly columns: readonly ColumnProfile[];
}

/** Why a source column was suggested for a canonical one. 1 = the canonical name itself, 0 = a guess from the values alone. */
export interface ColumnSuggestion {
  readonly to: string;
  readonly from: readonly number[];
  readonly confidence: number;
}

/** What a person has to decide before a mapping can be used; answered by changing the mapping. */
export type MappingQuestion =
  | { readonly kind: 'missing-column'; readonly to: string }
  | {
      readonly kind: 'date-order';
      readonly to: string;
      readonly place: number;
      readonly orders: readonly DateOrder[];
      readonly samples: readonly string[];
    }
  | { readonly kind: 'decimal'; readonly to: string; readonly place: number; readonly samples: readonly string[] }
  | {
      readonly kind: 'words';
      readonly to: string;
      readonly place: number;
      readonly words: readonly { readonly word: string; readonly count: number }[];
      readonly choices: readonly string[];
    }
  | {
      readonly kind: 'unit';
      readonly to: string;
      readonly place: number;
      readonly units: readonly SourceUnit[];
      readonly samples: readonly string[];
    }
  | { readonly kind: 'several-columns'; readonly to: string; readonly places: readonly number[] }
  | { readonly kind: 'same-header'; readonly places: readonly number[]; readonly name: string };
