interface Spanning {
  readonly from: string;
  readonly to: string;
}

const isLater = (row: Spanning, than: Spanning): boolean =>
  row.to === than.to ? row.from > than.from : row.to > than.to;

/** The change that ends last; of several, as with several programs, the one that began last. */
export const newestChange = <Row extends Spanning>(rows: readonly Row[]): Row | undefined =>
  rows.reduce<Row | undefined>((best, row) => (best === undefined || isLater(row, best) ? row : best), undefined);
