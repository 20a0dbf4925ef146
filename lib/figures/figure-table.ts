/** The table behind a figure: formatted cells, in the order of the figure's points. */
export interface FigureTable {
  readonly columns: readonly FigureColumn[];
  readonly rows: readonly (readonly string[])[];
}

export interface FigureColumn {
  /** Header with its unit. */
  readonly title: string;
  readonly align: 'start' | 'end';
}
