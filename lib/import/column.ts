/** How a column's text is read. `flag` is y or n. Dates are `YYYY-MM-DD`, times `HH:MM`. */
export type ColumnType = 'text' | 'date' | 'time' | 'integer' | 'number' | 'flag' | 'choice';

/** What a column is for: listed so in the codebook. */
export type ColumnRole =
  'identity' | 'enrolment' | 'visit' | 'body' | 'impedance' | 'condition' | 'caution' | 'exported' | 'other';

/** Plausibility of a number. Outside `warn` it is accepted with a warning, outside `ask` set aside with a question. */
export interface Limits {
  readonly positive?: boolean;
  readonly ask?: readonly [number, number];
  readonly warn?: readonly [number, number];
  /** Values above are accepted with the warning that they are rare. */
  readonly rareAbove?: number;
}

/** One column of the visit export. */
export interface Column {
  readonly name: string;
  readonly type: ColumnType;
  /** UCUM code. */
  readonly unit?: string;
  readonly choices?: readonly string[];
  readonly role: ColumnRole;
  readonly limits?: Limits;
  /** A word outside `choices` is read as unknown, with a warning, instead of refusing the row. */
  readonly lenient?: boolean;
  readonly notes: string;
}
