'use client';

import {
  createColumnHelper,
  createSortedRowModel,
  rowSortingFeature,
  tableFeatures,
  useTable,
  type Row as TableRow,
  type RowData,
} from '@tanstack/react-table';
import { useMemo } from 'react';
import { useFormatters } from '../_state/language-provider';
import type { DataColumn } from './data-column';

const features = tableFeatures({ rowSortingFeature, sortedRowModel: createSortedRowModel() });

export interface InitialSort {
  readonly column: string;
  readonly descending: boolean;
}

interface Holder<Row> {
  readonly row: Row;
}

/** Rows in the order a person chose; empty values last in both directions, names in the language's own order. */
export const useSortedRows = <Row>(
  rows: readonly Row[],
  columns: readonly DataColumn<Row>[],
  initial: InitialSort | undefined,
) => {
  const { locale } = useFormatters();
  const data = useMemo(() => rows.map((row): Holder<Row> => ({ row })), [rows]);
  const definitions = useMemo(() => {
    const helper = createColumnHelper<typeof features, Holder<Row>>();
    const collator = new Intl.Collator(locale, { numeric: true });
    const compare = (left: unknown, right: unknown): number =>
      typeof left === 'number' && typeof right === 'number'
        ? left - right
        : collator.compare(String(left), String(right));
    return helper.columns(
      columns.map((column) =>
        helper.accessor(({ row }) => column.value(row) ?? undefined, {
          id: column.id,
          header: column.title,
          sortUndefined: 'last',
          sortDescFirst: column.kind === 'number' || column.kind === 'date',
          sortFn: <F extends typeof features, D extends RowData>(
            left: TableRow<F, D>,
            right: TableRow<F, D>,
            id: string,
          ) => compare(left.getValue(id), right.getValue(id)),
        }),
      ),
    );
  }, [columns, locale]);
  const table = useTable({
    features,
    columns: definitions,
    data,
    enableMultiSort: false,
    initialState: {
      sorting: initial === undefined ? [] : [{ id: initial.column, desc: initial.descending }],
    },
  });
  const sorted = table.getRowModel().rows.map(({ original }) => original.row);
  const directionOf = (id: string): 'ascending' | 'descending' | 'none' => {
    const direction = table.getColumn(id)?.getIsSorted() ?? false;
    if (direction === false) return 'none';
    return direction === 'asc' ? 'ascending' : 'descending';
  };
  const toggle = (id: string): void => {
    table.getColumn(id)?.toggleSorting();
  };
  return { sorted, directionOf, toggle };
};
